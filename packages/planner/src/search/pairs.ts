import { withOtherSettings, withProgramme } from "./moves.js";
import type { Search } from "./search.js";

/** Lots up to which two parts are changed together in every way: with few lots two can be locked in a worse arrangement. */
const fewLots = 5;

/** Tries every two programmes for every two parts, at every setting of one vent. Only for small hauls. */
export function improvePairs(search: Search): boolean {
  const { prepared, current } = search;
  const { choice } = current;
  if (prepared.problem.lots.length > fewLots) return false;
  const bases = [choice, ...choice.vents.flatMap((_, vent) => withOtherSettings(choice, vent))];
  for (const base of bases) {
    for (let first = 0; first < base.parts.length; first++) {
      for (let second = first; second < base.parts.length; second++) {
        for (const one of prepared.options(base.parts[first]!.lot)) {
          const changed = withProgramme(base, first, one.programme);
          for (const other of second === first ? [one] : prepared.options(base.parts[second]!.lot)) {
            if (search.attempt(withProgramme(changed, second, other.programme))) return true;
          }
        }
      }
    }
  }
  return false;
}
