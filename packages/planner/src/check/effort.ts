import type { Lot } from "../problem/lot.js";
import type { PlannedLot } from "../problem/plan.js";
import { weights } from "../rules/weights.js";
import { aheadOfPace } from "./eating.js";
import { sum } from "./fault.js";
import { lotOf, type Subject } from "./subject.js";

/** Moving or wrapping at once what an earlier plan left somewhere [g]: as a later move where that plan had foreseen it, else as declared for what it had not. */
function disturbed({ carried }: Lot, { place, wrap }: PlannedLot["stays"][number]): number {
  if (carried === undefined) return 0;
  const moved = place !== carried.place;
  const rewrapped = wrap !== carried.wrap;
  if (!moved && !rewrapped) return 0;
  if (carried.foreseen.some((stay) => stay.place === place && stay.wrap === wrap)) return weights.move;
  return (moved ? weights.needlessMove : 0) + (rewrapped ? weights.needlessRewrap : 0);
}

/** Vents that an earlier plan had set and this one turns [g]; those that are fixed are not turned. */
function turned({ plan, haul, kitchen }: Subject): number {
  const free = kitchen.places.filter(({ vent }) => vent === "choose").map(({ id }) => id);
  const before = (haul.standing?.vents ?? []).filter(({ place }) => free.includes(place));
  const now = (id: string) => plan.vents.find(({ place }) => place === id)?.setting;
  return before.filter(({ place, setting }) => now(place) !== setting).length * weights.ventTurned;
}

function effortOf(subject: Subject, part: PlannedLot): number {
  const { stays } = part;
  const lot = lotOf(subject, part);
  const wrapped = stays.filter((stay, index) => stay.wrap !== (stays[index - 1] ?? lot.carried)?.wrap);
  return (
    disturbed(lot, stays[0]!) +
    sum(wrapped.map((stay) => weights.wrap[stay.wrap])) +
    (stays.length - 1) * weights.move +
    (lot.tops && !part.tops ? weights.leavesOff : 0) +
    (lot.washed && part.preparation.includes("dry well") ? weights.drying : 0)
  );
}

/** Effort of a whole plan [g]: wrapping, moving, preparing, disturbing what lies somewhere already, and each further part of a lot. */
export const effort = (subject: Subject): number =>
  sum(subject.plan.lots.map((part) => effortOf(subject, part))) +
  turned(subject) +
  (subject.plan.lots.length - subject.haul.lots.length) * weights.split +
  aheadOfPace(subject) * weights.aheadOfPace;
