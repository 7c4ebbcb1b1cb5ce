import { bindProblem, type PlanRequest } from "../../src/problem/problem.js";
import { choiceKey, type Part, programmeKey } from "../../src/problem/programme.js";
import { allProgrammes } from "../../src/search/evaluateChoice.js";
import { planHaul } from "../../src/search/planHaul.js";
import { bestOfAll, countChoices, everyDivision, everyProgramme } from "./exhaustive.js";
import { randomRequest, type Size } from "./randomRequest.js";

export type Ways = readonly (readonly Part[])[];

/** Ways each lot may be dealt with: whole only, or parted in two as well. */
export function waysOf(
  request: PlanRequest,
  divided: boolean,
): { problem: ReturnType<typeof bindProblem>; ways: Ways[] } {
  const problem = bindProblem(request);
  const ways = problem.lots.map(({ index }) => {
    const all = everyDivision(problem, index, everyProgramme(problem, index));
    return divided ? all : all.filter(({ length }) => length === 1);
  });
  return { problem, ways };
}

/** The first seeds whose requests have few enough choices to judge them all (and, if divided, something to divide). */
export function tractable(
  size: Size,
  divided: boolean,
  mostChoices: number,
  count: number,
  from = 0,
): number[] {
  const seeds: number[] = [];
  for (let seed = from; seeds.length < count; seed++) {
    const { problem, ways } = waysOf(randomRequest(seed, size), divided);
    const dividable = ways.some((way) => way.some(({ length }) => length > 1));
    if (countChoices(ways, problem.vents.length) <= mostChoices && (dividable || !divided)) seeds.push(seed);
  }
  return seeds;
}

/** The plan for a request against the best of all choices: relative gap, both objectives, and what differs. */
export function judgedByAll(request: PlanRequest, divided: boolean) {
  const { problem, ways } = waysOf(request, divided);
  const best = bestOfAll(problem, ways);
  const plan = planHaul(request);
  const options = allProgrammes(problem).map((list) => new Set(list.map(programmeKey)));
  const considered = best.choice.parts.every((part) => options[part.lot]!.has(programmeKey(part.programme)));
  const found = plan.lots.map(
    (part) => `${part.id} ${part.stays.map(({ place, wrap }) => `${place}/${wrap}`).join(" > ")}`,
  );
  const difference =
    `best ${best.total}: ${choiceKey(best.choice)}${considered ? "" : " (holds a programme the planner does not consider)"}; ` +
    `plan ${plan.objective.total}: ${found.join("; ")} | ${plan.vents.map(({ setting }) => setting).join(",")}`;
  return {
    gap: plan.objective.total / best.total - 1,
    best: best.total,
    value: plan.objective.total,
    problem,
    considered,
    difference,
  };
}
