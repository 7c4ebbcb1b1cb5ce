import type { Plan } from "../../src/problem/plan.js";
import { Draw } from "../cases/randomRequest.js";

/** Anything that may have happened to the parts of a plan, drawn from a seed. */
export function anyAccount(seed: number, plan: Plan, kitchen: { places: readonly { id: string }[] }): object {
  const draw = new Draw(seed);
  const lots = plan.lots.flatMap(({ id, commodity, form }) => {
    if (!draw.chance(0.6)) return [];
    const place = draw.chance(0.3) && { place: draw.one(kitchen.places).id };
    const ripens = ["avocado", "banana", "pear", "peach", "mango", "plum", "tomato"].includes(commodity);
    return [
      {
        lot: id,
        ...(draw.chance(0.4) && { eaten: draw.one(["none", { share: 0.3 }, { portions: 0.5 }]) }),
        ...(draw.chance(0.2) && { thrownOut: { share: draw.between(0, 0.5) } }),
        ...(draw.chance(0.3) && { seenGood: true }),
        ...(ripens && draw.chance(0.5) && { ripeness: draw.one(["ripe", "turning", 1.3]) }),
        ...(form === "cut" && draw.chance(0.4) && { hoursOut: draw.one([0.5, 1.5]) }),
        ...(form === "whole" && draw.chance(0.1) && { cut: plan.from }),
        ...place,
        done: [],
      },
    ];
  });
  const said = lots.filter((one) => Object.keys(one).length > 2);
  const cameHome = draw.chance(0.5) ? [{ commodity: "cauliflower", grams: 700 }] : [];
  return { followed: draw.chance(0.7), lots: said, cameHome };
}
