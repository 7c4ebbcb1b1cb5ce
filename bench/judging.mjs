// The same search with and without incremental judging: once as it is, once with every tried move judged by simulating the whole kitchen and solving all
// eating days anew. Reads the built planner from inside (npm run build).
import { bindProblem } from "@keepwright/planner";
import { evaluatePrepared } from "../packages/planner/dist/search/evaluate.js";
import { Judge } from "../packages/planner/dist/search/judge.js";
import { prepare } from "../packages/planner/dist/search/prepare.js";
import { searchPlan } from "../packages/planner/dist/search/searchPlan.js";
import { eightPlaces, requestOf, timed } from "./lib/requests.mjs";

const { estimate } = Judge.prototype;

/** The choice after some changes: parts put elsewhere, taken away, or new behind the one they are like. */
function changedChoice({ choice }, changes) {
  const parts = choice.parts.map((part) => [part]);
  for (const { part, like, to } of changes) {
    if (part === "new") parts[like].push(to);
    else parts[part][0] = to;
  }
  return { ...choice, parts: parts.flat().filter((part) => part !== undefined) };
}

function planned(request, judgeInFull) {
  const prepared = prepare(bindProblem(request));
  let moves = 0;
  Judge.prototype.estimate = judgeInFull
    ? (current, changes) => {
        moves++;
        const { objective } = evaluatePrepared(prepared, changedChoice(current, changes));
        const overflow = objective.overflow - current.objective.overflow;
        return { cost: objective.total - current.objective.total - overflow, overflow };
      }
    : function counted(...asked) {
        moves++;
        return estimate.apply(this, asked);
      };
  const { value, cpu } = timed(() => searchPlan(prepared));
  return { cpu, moves, value: value.objective.total };
}

for (let warm = 0; warm < 4; warm++) planned(requestOf(10 + 5 * warm, eightPlaces), warm % 2 === 1);
for (const lots of [12, 20, 30]) {
  const request = requestOf(lots, eightPlaces);
  const [incremental, inFull] = [planned(request, false), planned(request, true)];
  console.log(
    JSON.stringify({
      bench: "the same search, every move judged in full",
      lots,
      places: eightPlaces.places.length,
      incremental,
      inFull,
      unit: "ms of processor time, g",
      ratio: inFull.cpu / incremental.cpu,
      ratioByMove: inFull.cpu / inFull.moves / (incremental.cpu / incremental.moves),
    }),
  );
}
