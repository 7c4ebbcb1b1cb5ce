import type { Catalogue, Commodity } from "@keepwright/catalogue";
import { type AloneAnswer, type Kitchen, keptAlone } from "@keepwright/planner";
import type { AnsweredPlace } from "./itemAnswer.js";

/** The lot asked about: the usual amount of the kind, by itself. */
export interface AskedLot {
  readonly commodity: Commodity;
  readonly ripeness: number;
  /** Left out: whole. */
  readonly form?: "whole" | "cut";
}

function usualGrams({ household }: Commodity): number {
  const unit = household.units.find(({ name }) => name === household.bareUnit) ?? household.units[0];
  return unit?.grams ?? household.portion.value;
}

const answered = ({ life, endedBy, ...rest }: AloneAnswer): AnsweredPlace => ({
  ...rest,
  life: { ...life, endedBy },
});

/** Where a kind alone belongs in a kitchen; and one place of each sort the kitchen has, wrapped as well as can be there. */
export function placesFor(
  { commodity, ripeness, form = "whole" }: AskedLot,
  kitchen: Kitchen,
  catalogue: Catalogue,
): { readonly belongs: AnsweredPlace; readonly places: readonly AnsweredPlace[] } {
  const lot = { id: "asked", commodity: commodity.id, grams: usualGrams(commodity), ripeness, form };
  // The day is no date of anybody's: only its distance from the other days is used.
  const { best, inEachKind } = keptAlone({ haul: { lots: [lot] }, kitchen, from: "2000-01-01", catalogue });
  return { belongs: answered(best), places: inEachKind.map(answered) };
}
