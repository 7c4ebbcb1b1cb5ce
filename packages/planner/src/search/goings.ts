import type { Option } from "./options.js";
import { costToBeat, hopefulCost } from "./ranked.js";
import type { Search } from "./search.js";

/** A part going to a place, with the option hoped best there, and what that would change at best [g]. */
export interface Going {
  readonly part: number;
  readonly place: number;
  readonly option: Option;
  readonly hope: number;
}

/** The place something lies in at last. */
export const lastPlace = ({ programme }: Pick<Option, "programme">): number => programme.stays.at(-1)!.place;

/** For every place a part may lie in at last, the option hoped best there. */
export function goings(search: Search, part: number): Map<number, Going> {
  const { current, prepared } = search;
  const now = current.choice.parts[part]!;
  const costNow = costToBeat(search, current, part);
  const byPlace = new Map<number, Going>();
  for (const option of prepared.options(now.lot)) {
    const hope = hopefulCost(search, current, now, option) - costNow;
    const place = lastPlace(option);
    const known = byPlace.get(place);
    if (!known || hope < known.hope) byPlace.set(place, { part, place, option, hope });
  }
  return byPlace;
}
