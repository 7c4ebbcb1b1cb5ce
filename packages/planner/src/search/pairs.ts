import type { Choice } from "../problem/programme.js";
import type { Evaluation } from "./evaluate.js";
import { withOtherSettings, withProgramme } from "./moves.js";
import type { Option } from "./options.js";
import { partWith } from "./ranked.js";
import { leastGain, type Search } from "./search.js";
import { isSmall } from "./smallCase.js";

/** Pairs of options estimated for each two parts and vent setting, the best one by one first; and judged in full of them. */
const mostEstimated = 30;
const mostTried = 6;

interface Single {
  /** Absent: the part stays as it is. */
  readonly option: Option | undefined;
  /** What the change would gain by itself [g], by estimate. */
  readonly gain: number;
}

const known = new WeakMap<Evaluation, Single[][]>();

/** The same for every part, remembered. */
function singlesOfAll(search: Search, base: Evaluation): Single[][] {
  const all = known.get(base) ?? base.choice.parts.map((_, part) => singles(search, base, part));
  known.set(base, all);
  return all;
}

/** What each option of a part would gain by itself. */
function singles({ prepared, judge }: Search, base: Evaluation, part: number): Single[] {
  const judged = prepared.options(base.choice.parts[part]!.lot).map((option) => {
    const { cost, overflow } = judge.estimate(base, [{ part, like: part, to: partWith(base, part, option) }]);
    // Want of room does not count yet: the other part may make it.
    return { option, gain: -cost - Math.min(0, overflow) };
  });
  return [...judged, { option: undefined, gain: 0 }];
}

interface Pair {
  readonly choice: Choice;
  readonly total: number;
}

/** The pairs of options of two parts that gain most one by one, with their objective estimated together. */
function estimatedPairs(
  search: Search,
  base: Evaluation,
  first: number,
  second: number,
  ofAll: readonly Single[][],
): Pair[] {
  return ofAll[first]!.flatMap((one) =>
    ofAll[second]!.map((other) => ({ one, other, gain: one.gain + other.gain })),
  )
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

const knownPairs = new WeakMap<Evaluation, Pair[]>();

/** The promising pairs of every two parts, remembered. */
function allPairs(search: Search, base: Evaluation): Pair[] {
  const known = knownPairs.get(base);
  if (known) return known;
  const ofAll = singlesOfAll(search, base);
  const pairs = ofAll.flatMap((_, first) =>
    ofAll
      .slice(first + 1)
      .flatMap((_, after) => estimatedPairs(search, base, first, first + 1 + after, ofAll)),
  );
  knownPairs.set(base, pairs);
  return pairs;
}

function improveFrom(search: Search, base: Evaluation): boolean {
  return allPairs(search, base)
    .filter(({ total }) => total < search.current.objective.total - leastGain)
    .sort((a, b) => a.total - b.total)
    .slice(0, mostTried)
    .some(({ choice }) => search.attempt(choice));
}

/** Changes two parts together, with and without turning a vent. Only in small cases: there two can be locked in a worse arrangement. */
export function improvePairs(search: Search): boolean {
  const { prepared, current } = search;
  if (!isSmall(prepared.problem)) return false;
  const turned = current.choice.vents.flatMap((_, vent) => withOtherSettings(current.choice, vent));
  return [current, ...turned.map((choice) => search.evaluated(choice))].some((base) =>
    improveFrom(search, base),
  );
}
