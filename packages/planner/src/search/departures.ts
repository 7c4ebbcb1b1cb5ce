import { litresInStay } from "../rules/capacity.js";
import { type Going, goings } from "./goings.js";
import { withProgramme } from "./moves.js";
import { partWith } from "./ranked.js";
import type { Search } from "./search.js";
import type { Start } from "./swaps.js";

/** A part that would do better in a place without room for it. */
interface Waiting {
  readonly part: number;
  readonly place: number;
  /** What it would gain there [g], and the litres it would take. */
  readonly gain: number;
  readonly litres: number;
}

/** Parts that would do better in places without room for them, those that gain most for the room first. */
function waitingParts(search: Search): Waiting[] {
  const { current, prepared } = search;
  return current.choice.parts
    .flatMap((_, part) =>
      search.ranked(part).flatMap(({ option, cost, overflow }): Waiting[] => {
        if (cost >= 0 || overflow <= 0) return [];
        const last = option.programme.stays.length - 1;
        const { place } = option.programme.stays[last]!;
        const to = partWith(current, part, option);
        return [{ part, place, gain: -cost, litres: litresInStay(prepared.problem, to, last) }];
      }),
    )
    .sort((a, b) => b.gain / b.litres - a.gain / a.litres);
}

/** What those who wait for a place would gain together [g] if a part made way there: each comes once, as long as room is left. */
function gainOfRoom(waiting: readonly Waiting[], leaving: number, place: number, litres: number): number {
  let left = litres;
  let gain = 0;
  const come = new Set<number>([leaving]);
  for (const one of waiting) {
    if (one.place !== place || come.has(one.part) || one.litres > left) continue;
    come.add(one.part);
    left -= one.litres;
    gain += one.gain;
  }
  return gain;
}

/**
 * Parts that might make way for others, the most promising first: each goes where it is hoped best outside a place for which others wait. Where one takes the
 * room of many, no change of one and no exchange of two finds that.
 */
export function promisingDepartures(search: Search): Start[] {
  const { current, prepared } = search;
  const waiting = waitingParts(search);
  if (waiting.length === 0) return [];
  return current.choice.parts
    .flatMap((part, index): Start[] => {
      const last = part.programme.stays.length - 1;
      const { place } = part.programme.stays[last]!;
      const gain = gainOfRoom(waiting, index, place, litresInStay(prepared.problem, part, last));
      if (gain === 0) return [];
      const away = [...goings(search, index).values()]
        .filter(({ place: to }) => to !== place)
        .reduce<Going | undefined>((best, one) => (best && best.hope <= one.hope ? best : one), undefined);
      if (!away) return [];
      const name = `${part.lot} ${part.portions} ${place} leaves`;
      return [
        {
          name,
          choice: withProgramme(current.choice, index, away.option.programme),
          change: away.hope - gain,
        },
      ];
    })
    .sort((a, b) => a.change - b.change);
}
