import type { BoundLot } from "../problem/bindHaul.js";
import type { BoundPlace } from "../problem/bindKitchen.js";
import type { Problem } from "../problem/problem.js";
import type { Part } from "../problem/programme.js";
import { safeDaysIn } from "../rules/safeTime.js";
import { isCover, suitableWraps } from "../rules/suitableWraps.js";
import { hasSafeTime } from "../rules/underControl.js";
import type { Evaluation } from "../search/evaluate.js";
import type { ArrangementFinding } from "./judgement.js";

interface Laid {
  readonly problem: Problem;
  readonly part: Part;
  readonly lot: BoundLot;
  readonly places: readonly BoundPlace[];
}

/** What can make people ill: told before anything else. The rules and their sources: rules/cutInRefrigerator, safeTime, suitableWraps. */
function safetyFindings({ problem, part, lot, places }: Laid): ArrangementFinding[] {
  const { id } = lot.lot;
  if (hasSafeTime(lot)) {
    const warm = places.find(({ cold }) => !cold);
    const tooWarm = warm ? undefined : places.find((place) => safeDaysIn(problem, lot, place) < 1);
    const bare = part.programme.stays.some(({ wrap }) => !isCover(wrap));
    return [
      ...(warm ? [{ finding: "cut out of refrigerator" as const, lot: id, place: warm.place.id }] : []),
      ...(tooWarm ? [{ finding: "cut too warm" as const, lot: id, place: tooWarm.place.id }] : []),
      ...(bare ? [{ finding: "cut uncovered" as const, lot: id }] : []),
    ];
  }
  const lit = places.find(({ place }) => place.lit);
  const greens = lot.produce.greensInLightDays !== undefined && lit;
  return greens ? [{ finding: "greens in light", lot: id, place: lit.place.id }] : [];
}

/** Wraps that the planner would not put around it: it stands in water in vain, is shut in though it must breathe, or is damp though it must be dry. */
function wrapFindings({ problem, part, lot }: Laid): ArrangementFinding[] {
  if (hasSafeTime(lot)) return [];
  const { catalogue, kitchen } = problem;
  const unsuitable = [...new Set(part.programme.stays.map(({ wrap }) => wrap))].filter(
    (wrap) =>
      wrap !== "none" && !suitableWraps(lot, { ...kitchen, wraps: [wrap] }, catalogue.wraps).includes(wrap),
  );
  return unsuitable.map((wrap) => ({ finding: "unsuitable wrap", lot: lot.lot.id, wrap }));
}

/** Moves that wait for a ripeness that does not come. */
const vainMoves = ({ lot }: Laid, starts: readonly number[]): ArrangementFinding[] =>
  starts.every(Number.isFinite) ? [] : [{ finding: "never moves", lot: lot.lot.id }];

/** The same said of two parts of a lot is said once. */
function distinct(findings: readonly ArrangementFinding[]): ArrangementFinding[] {
  return [...new Map(findings.map((finding) => [JSON.stringify(finding), finding])).values()];
}

/** What there is to say of how things lie, apart from what it costs: what is unsafe first, then room, then the rest. */
export function arrangementFindings(problem: Problem, evaluation: Evaluation): ArrangementFinding[] {
  const laid = evaluation.choice.parts.map(
    (part): Laid => ({
      problem,
      part,
      lot: problem.lots[part.lot]!,
      places: part.programme.stays.map(({ place }) => problem.places[place]!),
    }),
  );
  const overfull = problem.places.flatMap(({ place, index }): ArrangementFinding[] => {
    const litres = evaluation.over[index]!;
    return litres > 0
      ? [{ finding: "overfull", place: place.id, litresOver: { value: litres, unit: "L" } }]
      : [];
  });
  return distinct([
    ...laid.flatMap(safetyFindings),
    ...overfull,
    ...laid.flatMap(wrapFindings),
    ...laid.flatMap((one, index) => vainMoves(one, evaluation.outcomes[index]!.stayStarts)),
  ]);
}
