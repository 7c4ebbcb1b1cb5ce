import { catalogue } from "@keepwright/catalogue";
import { produceFromCommodity, type SimulatedLot, simulate } from "@keepwright/physics";
import { bindKitchen, ordinaryKitchens, roomAir, untouchedVent } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { record } from "../../../physics/test/published/record.js";

/**
 * Wills, Warton & Ku 2000 (abstract, read): mean ethylene 0.20 µL/L in household refrigerators with apples, 0.029 without.
 * What the refrigerators held, their size and how often they were opened is not in the abstract. Taken here: the ordinary kitchen (200 L, 0.4 changes
 * an hour, 4.4 °C, room air 0.02 µL/L; see kitchenFigures) and, on its shelves, loose:
 */
const ordinaryContents = [
  ["head-lettuce", 0.6],
  ["carrot", 0.9],
  ["broccoli", 0.5],
  ["celery", 0.5],
  ["orange", 1],
  ["tomato", 0.5],
] as const;
/**
 * A two-kilogram bag. The abstract does not say how many apples there were, and the answer is nearly proportional to it: the model agrees within 1.5 from
 * about 1.5 kg up and is low by a factor of 2 at 1 kg. So 1 and 3 kg are recorded beside it.
 */
const apples = 2;

function loose(id: string, kilograms: number): SimulatedLot {
  const commodity = catalogue().commodities.get(id)!;
  return {
    produce: produceFromCommodity(commodity),
    kilograms,
    form: { cut: false, tops: false, wet: false },
    ripeness: commodity.ripening?.arrives.value ?? 1,
    spent: 0,
    stays: [
      {
        box: 0,
        temperature: ordinaryKitchens.ordinary.refrigerators[0]!.temperature,
        wrap: "none",
        lit: false,
        until: "never",
      },
    ],
  };
}

function meanEthylene(kilogramsOfApples: number): number {
  const kitchen = ordinaryKitchens.ordinary;
  const bound = bindKitchen(kitchen);
  const vents = kitchen.places.filter((place) => place.vent === "choose").map(() => untouchedVent);
  const lots = ordinaryContents.map(([id, kilograms]) => loose(id, kilograms));
  if (kilogramsOfApples > 0) lots.push(loose("apple", kilogramsOfApples));
  const simulation = {
    room: roomAir(kitchen),
    boxes: bound.boxes(vents),
    lots,
    horizonDays: 7,
    wraps: catalogue().wraps,
  };
  const series = simulate(simulation).boxes[0]!.ethylene;
  return series.reduce((sum, value) => sum + value, 0) / series.length;
}

const published = {
  source: "Wills, Warton & Ku 2000, abstract",
  fromMemory: false,
  unit: "µL/L",
  room: "ethylene in places",
} as const;

describe("ethylene in household refrigerators", () => {
  const within = 1.5;
  it.each([
    ["without apples", 0, 0.029],
    ["with apples", apples, 0.2],
  ] as const)("%s agrees with the published mean within a factor of 1.5", (what, kilograms, mean) => {
    const note = kilograms > 0 ? `with ${kilograms} kg of apples taken` : "with 4 kg of other produce taken";
    const [comparison] = record("refrigerators", [
      {
        ...published,
        use: "check",
        what: `household refrigerator ${what}`,
        model: meanEthylene(kilograms),
        published: mean,
        tolerance: within,
        note,
      },
    ]);
    expect(comparison!.within, `model ${comparison!.model} µL/L`).toBe(true);
  });

  it("depends on how many apples there were: 1 and 3 kg are told too", () => {
    const compared = record(
      "refrigerators",
      [1, 3].map((kilograms) => ({
        ...published,
        use: "shown" as const,
        what: `household refrigerator with apples, had there been ${kilograms} kg`,
        model: meanEthylene(kilograms),
        published: 0.2,
        tolerance: within,
        note: "how the answer depends on the mass taken; not a check of its own",
      })),
    );
    expect(compared[0]!.model).toBeLessThan(compared[1]!.model);
  });
});
