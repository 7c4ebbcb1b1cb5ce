import type { WrapId } from "@keepwright/catalogue";
import { type Arrangement, arrangementOfPlan, type Kitchen, type Plan } from "@keepwright/planner";
import type { PlannerState } from "./plannerState.js";

/** Where a lot is to lie, and how it is wrapped. */
export interface ChosenAt {
  readonly place: string;
  readonly wrap: WrapId;
}
/** By the parts' ids. */
export type ChosenParts = ReadonlyMap<string, ChosenAt>;

/** All of a lot, or one of its parts, that the person would have elsewhere. */
export interface Chosen {
  /** Key under which it is kept. */
  readonly key: string;
  readonly lot: string;
  readonly parts: readonly string[];
  readonly at: ChosenAt;
}

type Lots = Pick<Plan, "lots">;
type KeyOf = (lot: string) => string;

/** What a person means by a part of the plan: all of its lot where it lies in one place, else that part alone. */
export function meant(plan: Lots, keyOf: KeyOf, lot: string, part?: string): Omit<Chosen, "at"> {
  const parts = plan.lots.filter((each) => each.lot === lot).map(({ id }) => id);
  if (part === undefined || parts.length < 2) return { key: keyOf(lot), lot, parts };
  return { key: keyOf(lot) + (part === lot ? "/1" : part.slice(lot.length)), lot, parts: [part] };
}

/** What the person would have elsewhere; what the text, the plan or the kitchen no longer has is passed over. */
export function chosenOf(
  chosen: PlannerState["chosen"],
  keyOf: KeyOf,
  plan: Lots,
  kitchen: Kitchen,
): readonly Chosen[] {
  const places = new Set(kitchen.places.map(({ id }) => id));
  const found = (one: Omit<Chosen, "at">): Chosen[] => {
    const at = Object.hasOwn(chosen, one.key) ? chosen[one.key] : undefined;
    return at && at !== "as planned" && places.has(at.place) ? [{ ...one, at }] : [];
  };
  return [...new Set(plan.lots.map(({ lot }) => lot))].flatMap((lot) => {
    const whole = found(meant(plan, keyOf, lot));
    if (whole.length > 0) return whole;
    const parts = plan.lots.filter((part) => part.lot === lot);
    return parts.length < 2 ? [] : parts.flatMap(({ id }) => found(meant(plan, keyOf, lot, id)));
  });
}

export const chosenParts = (chosen: readonly Chosen[]): ChosenParts =>
  new Map(chosen.flatMap(({ parts, at }) => parts.map((part) => [part, at] as const)));

const sameAt = (one: ChosenAt | undefined, other: ChosenAt | undefined): boolean =>
  one !== undefined && one.place === other?.place && one.wrap === other.wrap;

/**
 * What a plan decides, but with some parts as the person would have them. Parts of a lot that all come to lie alike are one again; what is to move
 * on later still does, unless it lies already where it would go.
 */
export function withChosen(plan: Plan, chosen: ChosenParts): Arrangement {
  const arrangement = arrangementOfPlan(plan);
  const told = new Set<string>();
  const lots = plan.lots.flatMap(({ id, lot }, index) => {
    const entry = arrangement.lots[index]!;
    const at = chosen.get(id);
    const parts = plan.lots.filter((part) => part.lot === lot);
    const whole = at !== undefined && parts.every((part) => sameAt(at, chosen.get(part.id)));
    if (whole && told.has(lot)) return [];
    told.add(lot);
    if (!at) return [entry];
    const { share, later, ...rest } = entry;
    return [
      {
        ...rest,
        ...at,
        ...(!whole && share !== undefined && { share }),
        ...(later && later.place !== at.place && { later }),
      },
    ];
  });
  return { ...arrangement, lots };
}
