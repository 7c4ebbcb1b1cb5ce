import { programmeKey } from "../problem/programme.js";
import type { Option } from "./options.js";
import type { Search } from "./search.js";

/** An option of a part with the estimated change [g] it would bring. */
export interface RankedOption {
  readonly part: number;
  readonly option: Option;
  /** Change apart from want of room, and from want of room. */
  readonly cost: number;
  readonly overflow: number;
}

/** Options of a part other than its own, by estimated change, best first. */
export function rankedOptions(search: Search, part: number): RankedOption[] {
  const { current, prepared, judge } = search;
  const { lot, programme } = current.choice.parts[part]!;
  const own = programmeKey(programme);
  return prepared
    .options(lot)
    .filter((option) => option.key !== own)
    .map((option) => ({ part, option, ...judge.estimate(current, part, option.programme) }))
    .sort((a, b) => a.cost + a.overflow - b.cost - b.overflow || (a.option.key < b.option.key ? -1 : 1));
}
