import type { Choice } from "../problem/programme.js";
import { type Evaluation, evaluatePrepared } from "./evaluate.js";
import { withOtherSettings, withProgramme } from "./moves.js";
import type { Option } from "./options.js";
import { costToBeat, hopefulCost, partWith } from "./ranked.js";
import { leastGain, type Search } from "./search.js";

/** Lots up to which two parts are changed together: with few lots two can be locked in a worse arrangement. */
const fewLots = 5;
/** Pairs of options estimated for each two parts and vent setting, the most hopeful first; and judged in full of them. */
const mostEstimated = 24;
const mostTried = 3;

interface Hope {
  /** Absent: the part stays as it is. */
  readonly option: Option | undefined;
  /** The most the part's change could gain [g]. */
  readonly gain: number;
}

/** What each option of a part could gain at most. */
function hopes(search: Search, base: Evaluation, index: number): Hope[] {
  const now = costToBeat(search, base, index);
  const options = search.prepared.options(base.choice.parts[index]!.lot);
  const hoped = options.map((option) => ({
    option,
    gain: now - hopefulCost(search, base, partWith(base, index, option), option),
  }));
  return [...hoped, { option: undefined, gain: 0 }];
}

interface Pair {
  readonly choice: Choice;
  readonly total: number;
}

/** The pairs of options of two parts that could gain enough, with their estimated objective. */
function estimatedPairs(
  search: Search,
  base: Evaluation,
  first: number,
  second: number,
  ofAll: readonly Hope[][],
): Pair[] {
  const needed = base.objective.total - search.current.objective.total;
  return ofAll[first]!.flatMap((one) =>
    ofAll[second]!.map((other) => ({ one, other, gain: one.gain + other.gain })),
  )
    .filter(({ gain }) => gain > needed)
    .sort((a, b) => b.gain - a.gain)
    .slice(0, mostEstimated)
    .map(({ one, other }) => {
      const moves = [[first, one.option] as const, [second, other.option] as const].flatMap(
        ([part, option]) => (option ? [{ part, option }] : []),
      );
      const change = search.judge.estimate(
        base,
        moves.map(({ part, option }) => ({ part, like: part, to: partWith(base, part, option) })),
      );
      const choice = moves.reduce(
        (sum, { part, option }) => withProgramme(sum, part, option.programme),
        base.choice,
      );
      return { choice, total: base.objective.total + change.cost + change.overflow };
    });
}

function improveFrom(search: Search, base: Evaluation): boolean {
  const ofAll = base.choice.parts.map((_, part) => hopes(search, base, part));
  const pairs: Pair[] = [];
  for (let first = 0; first < ofAll.length; first++) {
    for (let second = first + 1; second < ofAll.length; second++) {
      pairs.push(...estimatedPairs(search, base, first, second, ofAll));
    }
  }
  return pairs
    .filter(({ total }) => total < search.current.objective.total - leastGain)
    .sort((a, b) => a.total - b.total)
    .slice(0, mostTried)
    .some(({ choice }) => search.attempt(choice));
}

/** Changes two parts together, with and without turning a vent. Only for small hauls. */
export function improvePairs(search: Search): boolean {
  const { prepared, current } = search;
  if (prepared.problem.lots.length > fewLots) return false;
  const turned = current.choice.vents.flatMap((_, vent) => withOtherSettings(current.choice, vent));
  return [current, ...turned.map((choice) => evaluatePrepared(prepared, choice))].some((base) =>
    improveFrom(search, base),
  );
}
