import type { Choice } from "../problem/programme.js";
import { type Going, goings, lastPlace } from "./goings.js";
import { withProgramme } from "./moves.js";
import { partWith } from "./ranked.js";
import type { Search } from "./search.js";

/** Swaps estimated together, the most hopeful first. Declared, no source. */
const mostEstimated = 24;

interface Swap {
  readonly one: Going;
  readonly other: Going;
  readonly hope: number;
}

/** A choice to go downhill from, near where a search stands. */
export interface Start {
  /** Equal for the same lots going to the same places. */
  readonly name: string;
  readonly choice: Choice;
  /** Estimated change of the objective [g], before others have followed. */
  readonly change: number;
}

function everySwap(search: Search): Swap[] {
  const { parts } = search.current.choice;
  const ways = parts.map((_, part) => goings(search, part));
  return parts.flatMap((one, first) =>
    parts.slice(first + 1).flatMap((other, after): Swap[] => {
      const [from, to] = [lastPlace(one), lastPlace(other)];
      const [away, back] = [ways[first]!.get(to), ways[first + 1 + after]!.get(from)];
      if (from === to || one.lot === other.lot || !away || !back) return [];
      return [{ one: away, other: back, hope: away.hope + back.hope }];
    }),
  );
}

function estimatedTogether({ current, judge }: Search, { one, other }: Swap): Start {
  const both = [one, other];
  const { cost, overflow } = judge.estimate(
    current,
    both.map(({ part, option }) => ({ part, like: part, to: partWith(current, part, option) })),
  );
  const choice = both.reduce(
    (sum, { part, option }) => withProgramme(sum, part, option.programme),
    current.choice,
  );
  const name = both.map(({ part, place }) => `${current.choice.parts[part]!.lot}>${place}`).join(" ");
  return { name, choice, change: cost + overflow };
}

/**
 * Two parts that change places, each lying there as is hoped best for it: the most promising from where the search stands, best first. None of them may
 * be better at once, since others have to follow; but where two lots are each in the other's place no change of one finds the way.
 */
export const promisingSwaps = (search: Search): Start[] =>
  everySwap(search)
    .sort((a, b) => a.hope - b.hope)
    .slice(0, mostEstimated)
    .map((swap) => estimatedTogether(search, swap))
    .sort((a, b) => a.change - b.change);
