import type { BoundLot } from "../problem/bindHaul.js";
import type { Choice, Part } from "../problem/programme.js";
import { construct } from "./construct.js";
import type { Evaluation } from "./evaluate.js";
import { descend, finish, mend } from "./improve.js";
import type { Prepared } from "./prepare.js";
import { leastGain, lifeThatMatters, Search } from "./search.js";
import { isSmall } from "./smallCase.js";
import { unsortedChoice } from "./unsorted.js";

/** What is done with a lot can be done with it as it is now: it is the same kind in the same form, in whatever amount and ripeness. */
const sameThing = (before: BoundLot, now: BoundLot): boolean =>
  before.commodity === now.commodity &&
  before.form.cut === now.form.cut &&
  before.form.tops === now.form.tops &&
  before.form.wet === now.form.wet;

/** The parts a lot was in, sharing out what there is of it now; the first parts get theirs first, in pieces that may lie apart. */
function sharedOut(lot: BoundLot, was: readonly Part[]): Part[] {
  const before = was.reduce((sum, { portions }) => sum + portions, 0);
  let left = lot.portions;
  const parts: Part[] = [];
  for (const [index, { programme, portions }] of was.entries()) {
    const share = Math.round((portions * lot.portions) / before / lot.splitUnit) * lot.splitUnit;
    const mine = index === was.length - 1 ? left : Math.min(left, Math.max(lot.splitUnit, share));
    if (mine > 0) parts.push({ lot: lot.index, portions: mine, programme });
    left -= mine;
  }
  return parts;
}

/** Where a search goes on after a correction: everything where it lay, in the amount there is now; what is new is placed around it. */
export function startAfter(prepared: Prepared, before: Prepared, { choice }: Evaluation): Choice {
  const { lots } = prepared.problem;
  const byId = new Map(before.problem.lots.map((lot) => [lot.lot.id, lot]));
  const parts = lots.flatMap((lot) => {
    const was = byId.get(lot.lot.id);
    if (!was || !sameThing(was, lot)) return [];
    return sharedOut(
      lot,
      choice.parts.filter((part) => part.lot === was.index),
    );
  });
  return construct(prepared, "regret", { parts, vents: choice.vents });
}

/** Takes as settled all parts of which the same would become as before the correction. */
function settleUnchanged(search: Search, before: Prepared, was: Evaluation): void {
  const { current, prepared } = search;
  const idOf = ({ problem }: Prepared, { lot }: Part): string => problem.lots[lot]!.lot.id;
  for (const [index, part] of current.choice.parts.entries()) {
    const same = was.choice.parts.findIndex(
      (one) =>
        one.programme === part.programme &&
        one.portions === part.portions &&
        idOf(before, one) === idOf(prepared, part),
    );
    if (same < 0) continue;
    const life = was.outcomes[same]!.endDay;
    if (Math.abs(current.outcomes[index]!.endDay - life) <= lifeThatMatters * life) search.settled.add(index);
  }
}

/**
 * Searches on from what was found before a correction: first what the correction touches, then whatever that stirs. Never worse than where it
 * starts, nor than leaving everything unsorted. It looks at less than a search from nothing, and so may find less.
 */
export function searchAgain(prepared: Prepared, before: Prepared, was: Evaluation): Evaluation {
  const search = new Search(prepared, startAfter(prepared, before, was));
  if (isSmall(prepared.problem)) descend(search);
  else {
    settleUnchanged(search, before, was);
    mend(search);
  }
  const found = search.current;
  const unsorted = search.goTo(unsortedChoice(prepared.problem));
  if (found.objective.total <= unsorted.objective.total + leastGain) return found;
  finish(search);
  return search.current;
}
