import { catalogue } from "@keepwright/catalogue";
import { at, produceFromCommodity, simulate } from "@keepwright/physics";
import { bindKitchen, ordinaryKitchens, roomAir, untouchedVent } from "@keepwright/planner";
import { describe, expect, it } from "vitest";

/** Ripeness after five days at a temperature, alone and loose, from unripe. */
function ripenessAfterFiveDays(id: string, place: string): number {
  const kitchen = ordinaryKitchens.ordinary;
  const bound = bindKitchen(kitchen);
  const where = bound.places.find((each) => each.place.id === place)!;
  const vents = kitchen.places.filter((each) => each.vent === "choose").map(() => untouchedVent);
  const lot = {
    produce: produceFromCommodity(catalogue().commodities.get(id)!),
    kilograms: 0.6,
    form: { cut: false, tops: false, wet: false },
    ripeness: 0,
    spent: 0,
    stays: [
      {
        box: where.box,
        temperature: where.place.temperature,
        wrap: "none" as const,
        lit: where.place.lit,
        until: "never" as const,
      },
    ],
  };
  const run = simulate({
    room: roomAir(kitchen),
    boxes: bound.boxes(vents),
    lots: [lot],
    horizonDays: 5,
    wraps: catalogue().wraps,
  });
  return run.lots[0]!.daily.at(-1)![at.ripeness]!;
}

describe("common practice, no source: unripe fruit put in the cold stops ripening", () => {
  it.each(["banana", "avocado", "mango", "tomato", "papaya"])("%s", (id) => {
    expect(ripenessAfterFiveDays(id, "shelf")).toBeLessThan(0.05);
    expect(ripenessAfterFiveDays(id, "counter")).toBeGreaterThan(0.25);
  });
  it.each(["peach", "pear", "kiwifruit"])(
    "%s, which ripens slowly even in the cold, is slowed at least threefold",
    (id) => {
      expect(ripenessAfterFiveDays(id, "shelf")).toBeLessThan(ripenessAfterFiveDays(id, "counter") / 3);
    },
  );
});
