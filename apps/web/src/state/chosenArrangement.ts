import type { WrapId } from "@keepwright/catalogue";
import { type Arrangement, arrangementOfPlan, type Kitchen, type Plan } from "@keepwright/planner";
import type { PlannerState } from "./plannerState.js";
import type { ReadLine } from "./readLots.js";

/** Where a lot is to lie, and how it is wrapped. */
export interface ChosenAt {
  readonly place: string;
  readonly wrap: WrapId;
}
export type ChosenLots = ReadonlyMap<string, ChosenAt>;

/** Where the person would have lots lie, by the lots' ids; what the text or the kitchen no longer has is passed over. */
export function chosenLots(
  chosen: PlannerState["chosen"],
  lines: readonly ReadLine[],
  kitchen: Kitchen,
): ChosenLots {
  const places = new Set(kitchen.places.map(({ id }) => id));
  return new Map(
    lines.flatMap(({ key, lot }): [string, ChosenAt][] => {
      const at = Object.hasOwn(chosen, key) ? chosen[key] : undefined;
      return lot && at && at !== "as planned" && places.has(at.place) ? [[lot.id, at]] : [];
    }),
  );
}

/**
 * What a plan decides, but with some lots as the person would have them. All of such a lot lies there, also where the plan parts it; what is
 * to move on later still does, unless it lies already where it would go.
 */
export function withChosen(plan: Plan, chosen: ChosenLots): Arrangement {
  const arrangement = arrangementOfPlan(plan);
  const told = new Set<string>();
  const lots = arrangement.lots.flatMap((entry) => {
    const at = chosen.get(entry.lot);
    if (!at) return [entry];
    if (told.has(entry.lot)) return [];
    told.add(entry.lot);
    const { share: _, later, ...rest } = entry;
    return [{ ...rest, ...at, ...(later && later.place !== at.place && { later }) }];
  });
  return { ...arrangement, lots };
}
