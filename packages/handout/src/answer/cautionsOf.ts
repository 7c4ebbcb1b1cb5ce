import type { Commodity } from "@keepwright/catalogue";
import type { Produce } from "@keepwright/physics";

/**
 * Firm kinds that are thrown away whole for any mould, as their own advice in the catalogue says (a test compares): that small spots may be cut away from what is firm
 * is not told of them.
 */
export const neverTrimmed: ReadonlySet<string> = new Set([
  "baby-carrot",
  "parsnip",
  "sweet-corn",
  "sweet-potato",
]);

/** Safety cautions that hold for a kind in any kitchen, by name: as it comes home, and once it is cut. */
export function cautionsOf(commodity: Commodity, produce: Produce): string[] {
  const holds: readonly (readonly [string, boolean])[] = [
    ["garlic-in-oil", commodity.id === "garlic"],
    ["green-potatoes", produce.greensInLightDays !== undefined],
    ["cut-produce", true],
    ["cut-ready-to-eat", produce.timeTemperatureControl],
    ["washed-greens", commodity.organ === "leaf"],
    ["mould-soft", true],
    ["mould-firm", !produce.soft && !neverTrimmed.has(commodity.id)],
    ["wash", true],
    ["local", true],
  ];
  return holds.filter(([, applies]) => applies).map(([name]) => name);
}
