import type { BoundLot } from "../problem/bindHaul.js";
import type { Choice, Part } from "../problem/programme.js";
import type { Evaluation } from "./evaluate.js";
import { descendQuickly } from "./improve.js";
import type { Prepared } from "./prepare.js";
import { Search } from "./search.js";

/** The parts of a lot with as many portions as it now has: the largest part takes what is more or gives what is fewer, and the next where it has too few. */
function refilled(lot: BoundLot, parts: readonly Part[]): Part[] {
  let over = parts.reduce((sum, { portions }) => sum + portions, 0) - lot.portions;
  const bySize = [...parts].sort((one, other) => other.portions - one.portions);
  const portions = new Map<Part, number>();
  for (const part of bySize) {
    const now = Math.max(0, part.portions - over);
    portions.set(part, now);
    over -= part.portions - now;
  }
  return parts.flatMap((part) => {
    const now = portions.get(part)!;
    return now > 0 ? [{ lot: lot.index, portions: now, programme: part.programme }] : [];
  });
}

/** The choice made for other amounts, or without some lots, for the lots there are now. A lot it knows nothing of goes where it is best alone. */
function carriedOver(prepared: Prepared, from: { prepared: Prepared; evaluation: Evaluation }): Choice {
  const { lots } = prepared.problem;
  const before = from.prepared.problem.lots;
  const { parts, vents } = from.evaluation.choice;
  return {
    vents,
    parts: lots.flatMap((lot) => {
      const known = parts.filter((part) => before[part.lot]!.lot.id === lot.lot.id);
      if (known.length > 0) return refilled(lot, known);
      return [
        { lot: lot.index, portions: lot.portions, programme: prepared.options(lot.index)[0]!.programme },
      ];
    }),
  };
}

/** A plan for nearly the same haul in the same kitchen, downhill from the one at hand by the quick moves only. */
export function replanned(
  prepared: Prepared,
  from: { readonly prepared: Prepared; readonly evaluation: Evaluation },
): Evaluation {
  const search = new Search(prepared, carriedOver(prepared, from));
  descendQuickly(search);
  return search.current;
}
