import type { VentSetting } from "../problem/kitchen.js";
import type { Haul, Lot } from "../problem/lot.js";
import { prepare } from "../search/prepare.js";
import type { BoundHappened } from "./bindHappened.js";
import { carriedLot } from "./carriedLot.js";
import type { Happened } from "./happened.js";
import type { Past } from "./past.js";
import type { Previous } from "./previous.js";
import type { Remaining } from "./remaining.js";

/** The new haul, with what became of every part of the plan before. */
export interface CarriedHaul {
  readonly haul: Haul;
  /** By part of the plan before: the id of its lot in the new haul; undefined where nothing is left. */
  readonly lotOfPart: readonly (string | undefined)[];
  /** Ids of what came home. */
  readonly newLots: readonly string[];
}

/** An id nobody has yet: the one wished for, or with the least number behind it. */
function freeId(wished: string, taken: Set<string>): string {
  let id = wished;
  for (let number = 2; taken.has(id); number++) id = `${wished}.${number}`;
  taken.add(id);
  return id;
}

/** “lot-8” after “lot-7”: ids of what comes home go on from those there ever were. */
function idsOfNew(count: number, { problem, plan }: Previous, taken: Set<string>): string[] {
  const ever = [
    ...problem.lots.flatMap(({ lot }) => [lot.id, lot.carried?.origin ?? ""]),
    ...plan.lots.map(({ id }) => id),
  ];
  const last = Math.max(0, ...ever.map((id) => Number(/^lot-(\d+)/.exec(id)?.[1] ?? 0)));
  return Array.from({ length: count }, (_, index) => freeId(`lot-${last + 1 + index}`, taken));
}

function standing(previous: Previous, { vents }: BoundHappened): NonNullable<Haul["standing"]> {
  const { problem, choice, haul, plan } = previous;
  const setting = (vent: number): VentSetting => vents.get(vent) ?? choice.vents[vent]!;
  return {
    vents: problem.vents.map((place, vent) => ({
      place: problem.places[place]!.place.id,
      setting: setting(vent),
    })),
    pace: prepare(problem).pace.portions,
    began: haul.standing?.began ?? plan.from,
  };
}

/** What lies in the kitchen on a day: what is left of every part, a lot of its own each, and what came home. */
export function carriedHaul(
  previous: Previous,
  past: Past,
  remaining: readonly Remaining[],
  bound: BoundHappened,
  { cameHome }: Happened,
  day: number,
): CarriedHaul {
  const taken = new Set<string>();
  const lots: Lot[] = [];
  // Parts named like their lots keep the name; “lot-1/2” would be taken for a part of the new lot-1.
  const lotOfPart = previous.plan.lots.map(({ id }, part) => {
    if (remaining[part]!.portions === 0) return undefined;
    const own = freeId(id.replaceAll("/", "."), taken);
    const said = bound.happenings.filter(({ parts }) => parts.includes(part));
    lots.push(carriedLot({ previous, past, part, remaining: remaining[part]!, said, day }, own));
    return own;
  });
  const newLots = idsOfNew(cameHome.length, previous, taken);
  lots.push(
    ...cameHome.map(({ meant: _, ...lot }, index) => ({
      ...lot,
      extraDays: lot.extraDays ?? 0,
      id: newLots[index]!,
    })),
  );
  return { haul: { lots, standing: standing(previous, bound) }, lotOfPart, newLots };
}
