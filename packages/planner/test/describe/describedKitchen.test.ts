import {
  checkKitchen,
  describedKitchen,
  type KitchenAnswers,
  kitchenFigures,
  ordinaryKitchens,
  writtenNumber,
} from "@keepwright/planner";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

const made = (answers: KitchenAnswers) => describedKitchen(answers, "An ordinary kitchen");
const reading = (typed: string, unit: "°C" | "°F" = "°C") => ({ typed, unit });

describe("a kitchen put together from answers", () => {
  it("is the ordinary one where nothing was said", () => {
    expect(made({})).toEqual({ kitchen: ordinaryKitchens.ordinary, faults: [] });
  });

  it("is the ordinary one with a cellar, and the warm one, for what makes them so", () => {
    expect(made({ cellar: true }).kitchen.places).toEqual(ordinaryKitchens.cellar.places);
    const warm = made({ room: "hot" }).kitchen;
    expect(warm.room.temperature).toBe(ordinaryKitchens.warm.room.temperature);
    const counter = (kitchen: typeof warm) => kitchen.places.find(({ kind }) => kind === "counter");
    expect(counter(warm)).toEqual(counter(ordinaryKitchens.warm));
  });

  it("has a refrigerator like that of the small ordinary one where it reaches to the hip", () => {
    const inside = (kitchen: typeof ordinaryKitchens.small) =>
      kitchen.places.filter(({ refrigerator }) => refrigerator !== undefined);
    const own = made({ refrigerator: "hip", cold: "reading", coldReading: reading("6") }).kitchen;
    expect(inside(own)).toEqual(inside(ordinaryKitchens.small));
    expect(own.refrigerators).toEqual(ordinaryKitchens.small.refrigerators);
  });

  it("gives more room in a larger refrigerator, in proportion to its litres", () => {
    const { places } = made({ refrigerator: "litres", litres: "400 L" }).kitchen;
    expect(places.find(({ id }) => id === "shelf")?.litres).toBe(90);
    expect(places.find(({ id }) => id === "door")?.litres).toBe(16);
    expect(places.find(({ id }) => id === "left-drawer")?.litres).toBe(28);
  });

  it.each([0, 1, 2, 3, 4])(
    "has %i drawers with names and ids of their own, with a vent only where there is a slide",
    (count) => {
      const drawers = Array.from(
        { length: count },
        (_, index) => (index % 2 === 0 ? "slide" : "plain") as const,
      );
      const { kitchen, faults } = made({ drawers });
      const own = kitchen.places.filter(({ kind }) => kind === "crisper drawer");
      expect(faults).toEqual([]);
      expect(own.map(({ vent }) => vent)).toEqual(
        drawers.map((sort) => (sort === "slide" ? "choose" : undefined)),
      );
      expect(new Set(own.map(({ name }) => name)).size).toBe(count);
      expect(checkKitchen(kitchen).ok).toBe(true);
    },
  );

  it("reads temperatures in both scales", () => {
    expect(
      made({ cold: "reading", coldReading: reading("41", "°F") }).kitchen.refrigerators[0]?.temperature,
    ).toBeCloseTo(5, 9);
    expect(made({ room: "reading", roomReading: reading("18,5 °C") }).kitchen.room.temperature).toBe(18.5);
  });

  it("leaves a balcony out until it was read", () => {
    expect(made({ balcony: true }).kitchen.places.some(({ id }) => id === "balcony")).toBe(false);
    const out = made({ balcony: true, balconyReading: reading("6") });
    expect(out.kitchen.places.find(({ id }) => id === "balcony")?.temperature).toBe(6);
    expect(out.faults).toEqual([]);
  });

  it("takes for a remark a figure within the range that the record of figures gives it", () => {
    for (const [cold, figure] of [
      ["freezes", kitchenFigures.coldWhereThingsFreeze],
      ["turns", kitchenFigures.coldWhereMilkTurns],
    ] as const) {
      const { temperature } = made({ cold }).kitchen.refrigerators[0]!;
      expect(temperature).toBe(figure.value);
      expect(figure.high - figure.low).toBeGreaterThanOrEqual(4.5);
    }
  });
});

describe("an answer that will not do", () => {
  it.each([
    [
      { cold: "reading", coldReading: reading("60") },
      { question: "cold", fault: "beyond", typed: "60", unit: "°C" },
    ],
    [
      { cold: "reading", coldReading: reading("cold") },
      { question: "cold", fault: "not a number", typed: "cold" },
    ],
    [
      { cold: "reading", coldReading: reading("-4") },
      { question: "cold", fault: "freezes", celsius: -4 },
    ],
    [
      { cold: "reading", coldReading: reading("25") },
      { question: "cold", fault: "as warm as the room", room: 20 },
    ],
    [
      { room: "reading", roomReading: reading("3") },
      { question: "room", fault: "as warm as the room", room: 3 },
    ],
    [
      { cellar: true, cellarReading: reading("35") },
      { question: "cellar", fault: "warmer than the room" },
    ],
    [
      { balcony: true, balconyReading: reading("-3") },
      { question: "cellar", fault: "freezes", celsius: -3 },
    ],
    [
      { refrigerator: "litres", litres: "9000" },
      { question: "refrigerator", fault: "beyond", unit: "L" },
    ],
    [
      { air: "reading", airReading: "140 %" },
      { question: "air", fault: "beyond", unit: "%" },
    ],
  ] as const)("%j is told with the question it belongs to", (answers, fault) => {
    expect(made(answers as KitchenAnswers).faults).toMatchObject([fault]);
  });

  it("is none where something typed does not count, because another answer was chosen since", () => {
    expect(made({ cold: "freezes", coldReading: reading("60") }).faults).toEqual([]);
  });
});

describe("any answers", () => {
  const typed = fc.oneof(
    fc.string({ maxLength: 8 }),
    fc.double({ min: -60, max: 140 }).map((value) => value.toFixed(1)),
  );
  const typedReading = fc.record({ typed, unit: fc.constantFrom("°C" as const, "°F" as const) });
  const answers = fc.record(
    {
      refrigerator: fc.constantFrom("none", "hip", "shoulder", "overhead", "litres"),
      litres: typed,
      drawers: fc.array(fc.constantFrom("slide", "plain", "unknown"), { maxLength: 4 }),
      door: fc.boolean(),
      cold: fc.constantFrom("freezes", "ordinary", "turns", "reading"),
      coldReading: typedReading,
      room: fc.constantFrom("cool", "ordinary", "hot", "reading"),
      roomReading: typedReading,
      air: fc.constantFrom("dry", "ordinary", "damp", "reading"),
      airReading: typed,
      cupboard: fc.constantFrom("none", "cool", "warm"),
      cellar: fc.boolean(),
      cellarReading: typedReading,
      balcony: fc.boolean(),
      balconyReading: typedReading,
    },
    { requiredKeys: [] },
  ) as fc.Arbitrary<KitchenAnswers>;

  it("give a kitchen that the check accepts for the smallest refrigerator there may be", () => {
    const { kitchen, faults } = made({ refrigerator: "litres", litres: "1" });
    expect(faults).toEqual([]);
    expect(checkKitchen(kitchen)).toMatchObject({ ok: true });
  });

  it("either have a fault or give a kitchen that the check accepts", () => {
    fc.assert(
      fc.property(answers, (each) => {
        const { kitchen, faults } = made(each);
        if (faults.length === 0) expect(checkKitchen(kitchen)).toMatchObject({ ok: true });
      }),
      { numRuns: 500 },
    );
  });
});

describe("a number as people write it", () => {
  it.each([
    ["4", 4],
    [" 4,5 ", 4.5],
    ["−2 °C", -2],
    ["39°F", 39],
    ["200 litros", 200],
    ["1e3", undefined],
    ["", undefined],
    ["four", undefined],
  ])("%s is %s", (text, value) => {
    expect(writtenNumber(text)).toBe(value);
  });
});
