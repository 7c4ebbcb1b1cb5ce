import type { Commodity } from "@keepwright/catalogue";
import type { Produce } from "@keepwright/physics";
import { trimsMould } from "@keepwright/planner";

/** Safety cautions that hold for a kind in any kitchen, by name: as it comes home, and once it is cut. */
export function cautionsOf(commodity: Commodity, produce: Produce): string[] {
  const holds: readonly (readonly [string, boolean])[] = [
    ["garlic-in-oil", commodity.id === "garlic"],
    ["green-potatoes", produce.greensInLightDays !== undefined],
    ["cut-produce", true],
    ["cut-ready-to-eat", produce.timeTemperatureControl],
    ["washed-greens", commodity.organ === "leaf"],
    ["mould-soft", true],
    ["mould-firm", trimsMould(commodity.id)],
    ["wash", true],
    ["local", true],
  ];
  return holds.filter(([, applies]) => applies).map(([name]) => name);
}
