import { catalogue as bundledCatalogue } from "@keepwright/catalogue";
import type { LotOutcome } from "@keepwright/physics";
import { celsiusFromFahrenheit } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";
import { isTooWarm } from "../../src/problem/kitchenWarnings.js";
import type { Part, Programme } from "../../src/problem/programme.js";
import { litresInStay, occupancy, overfull, stayOnDay } from "../../src/rules/capacity.js";
import { cautions } from "../../src/rules/cautions.js";
import { allowedPlaces } from "../../src/rules/cutInRefrigerator.js";
import { choiceEffort, programmeEffort } from "../../src/rules/effort.js";
import { dailyLimit, pacePerDay, placesAtTable } from "../../src/rules/portionsADay.js";
import { firstReadyDay } from "../../src/rules/readyToEat.js";
import { takenSmells } from "../../src/rules/smells.js";
import { suitableWraps } from "../../src/rules/suitableWraps.js";
import { weights } from "../../src/rules/weights.js";
import { bound, lot, smallKitchen } from "../support.js";

const inPlace = (place: number, wrap: "none" | "paper bag" | "lidded box" = "none"): Programme => ({
  leavesOff: false,
  dried: false,
  stays: [{ place, wrap, until: "never" }],
});
const outcome = (stayStarts: number[]): LotOutcome => ({
  endDay: 9,
  endedBy: "senescence",
  beyondHorizon: false,
  ripeDay: 0,
  stayStarts,
  daily: [],
  quality: [],
});
const whole = (index: number, programme: Programme, problem = bound([lot("apple", 1000)])): Part => ({
  lot: index,
  portions: problem.lots[index]!.portions,
  programme,
});

describe("room", () => {
  const problem = bound([lot("apple", 1000)], smallKitchen());
  const density = problem.lots[0]!.commodity.household.bulkDensity.value;

  it("is mass over bulk density, and the wrap's own on top", () => {
    const box = problem.catalogue.wraps.get("lidded box")!.extraRoom.value;
    expect(litresInStay(problem, whole(0, inPlace(0), problem), 0)).toBeCloseTo(1000 / density, 9);
    expect(litresInStay(problem, whole(0, inPlace(0, "lidded box"), problem), 0)).toBeCloseTo(
      (1000 / density) * (1 + box),
      9,
    );
  });

  it("becomes free as portions are eaten, and moves with the lot", () => {
    const moving: Programme = {
      leavesOff: false,
      dried: false,
      stays: [
        { place: 2, wrap: "none", until: "ripe" },
        { place: 0, wrap: "none", until: "never" },
      ],
    };
    const part = whole(0, moving, problem);
    const eaten = [[0, 0, 1, ...Array.from({ length: problem.household.days - 3 }, () => 0)]];
    const taken = occupancy(problem, [part], [outcome([0, 1.5])], eaten);
    const litres = 1000 / density;
    for (const [day, there] of [litres, litres, 0, 0].entries()) expect(taken[2]![day]).toBeCloseTo(there, 9);
    expect(taken[0]![1]).toBe(0);
    expect(taken[0]![2]).toBeCloseTo(litres, 9);
    expect(taken[0]![3]).toBeCloseTo((litres * (part.portions - 1)) / part.portions, 9);
    expect(stayOnDay(outcome([0, 1.5]), 1)).toBe(0);
    expect(stayOnDay(outcome([0, 1.5]), 2)).toBe(1);
    expect(stayOnDay(outcome([0, Number.POSITIVE_INFINITY]), 9)).toBe(0);
  });

  it("is over where the fullest day is", () => {
    const taken = problem.places.map(({ place }) => Float64Array.of(place.litres + 2, place.litres - 1));
    expect(overfull(problem, taken).every((litres) => Math.abs(litres - 2) < 1e-9)).toBe(true);
    expect(
      overfull(
        problem,
        problem.places.map(() => Float64Array.of(0)),
      ),
    ).toEqual(problem.places.map(() => 0));
  });
});

describe("cut produce", () => {
  it("goes into the refrigerator, covered, where both are at hand", () => {
    const problem = bound([lot("cantaloupe", 800, { form: "cut" })], smallKitchen());
    const melon = problem.lots[0]!;
    expect(allowedPlaces(melon, problem.places).every(({ cold }) => cold)).toBe(true);
    expect(suitableWraps(melon, problem.kitchen, problem.catalogue.wraps)).toEqual(["lidded box"]);
  });

  it("is no more uncovered where it is sold washed and ready to eat, since it has a safe time too", () => {
    const problem = bound([lot("salad-leaves", 200), lot("romaine", 200)], smallKitchen());
    const wraps = problem.lots.map((one) => suitableWraps(one, problem.kitchen, problem.catalogue.wraps));
    expect(wraps[0]).toEqual(["lidded box"]);
    expect(wraps[1]).toContain("none");
  });

  it("may lie anywhere in a kitchen without one, with a caution", () => {
    const base = smallKitchen();
    const counterOnly = { ...base, refrigerators: [], places: [base.places[2]!], wraps: [] };
    const problem = bound([lot("cantaloupe", 800, { form: "cut" })], counterOnly);
    expect(allowedPlaces(problem.lots[0]!, problem.places)).toHaveLength(1);
    expect(suitableWraps(problem.lots[0]!, problem.kitchen, problem.catalogue.wraps)).toEqual(["none"]);
    expect(cautions(problem)).toContain("no-refrigerator-for-cut-produce");
  });
});

describe("a glass of water", () => {
  it("is for whole kinds that stand in water only", () => {
    const problem = bound([lot("asparagus", 500), lot("apple", 500)]);
    const wraps = (index: number) =>
      suitableWraps(problem.lots[index]!, problem.kitchen, problem.catalogue.wraps);
    expect(wraps(0)).toContain("glass of water");
    expect(wraps(1)).not.toContain("glass of water");
  });
});

describe("what must breathe", () => {
  it("is not shut in: fruit that ripens, and bulbs told to be taken out of sealed bags", () => {
    const problem = bound([lot("banana", 500), lot("onion", 500), lot("broccoli", 500)]);
    const wraps = (index: number) =>
      suitableWraps(problem.lots[index]!, problem.kitchen, problem.catalogue.wraps);
    expect(wraps(0)).not.toContain("closed film bag");
    expect(wraps(1)).not.toContain("lidded box");
    expect(wraps(2)).toContain("closed film bag");
  });
});

describe("a damp towel", () => {
  it("is for leaves, stems and roots, not for fruit, tubers, bulbs or what is to be kept dry", () => {
    const kinds = ["kale", "carrot", "apple", "potato", "onion", "strawberry", "mushroom"];
    const problem = bound(kinds.map((kind) => lot(kind, 500)));
    const damp = problem.lots.map((each) =>
      suitableWraps(each, problem.kitchen, problem.catalogue.wraps).includes("damp towel"),
    );
    expect(damp).toEqual([true, true, false, false, false, false, false]);
  });
});

describe("the table", () => {
  it("seats whole portions, none on days away", () => {
    const household = { people: 2, portionsPerPersonPerDay: 2.7, daysAway: [1, 40], days: 3 };
    expect(placesAtTable(household)).toEqual([5, 0, 5]);
    expect(placesAtTable({ ...household, people: 1, portionsPerPersonPerDay: 0.5 })).toEqual([1, 0, 1]);
  });

  it("knows the pace that spreads a haul over the days at home, a quarter ahead of even, at least one portion a person", () => {
    const household = { people: 2, portionsPerPersonPerDay: 5, daysAway: [1], days: 5 };
    expect(pacePerDay(household, 16)).toBe(5);
    expect(pacePerDay(household, 2)).toBe(2);
    expect(pacePerDay(household, 1000)).toBe(10);
  });

  it("takes less of a seasoning than of a dish", () => {
    const problem = bound([lot("garlic", 60), lot("carrot", 500)]);
    expect(dailyLimit(problem.lots[0]!, problem.household)).toBeLessThan(
      dailyLimit(problem.lots[1]!, problem.household),
    );
  });

  it("waits for a whole ripe day", () => {
    expect([0, 2, 2.2, Number.POSITIVE_INFINITY].map(firstReadyDay)).toEqual([
      0,
      2,
      3,
      Number.POSITIVE_INFINITY,
    ]);
  });
});

describe("effort", () => {
  it("counts wraps, moves, preparation and splits once each", () => {
    const moved: Programme = {
      leavesOff: true,
      dried: true,
      stays: [
        { place: 2, wrap: "paper bag", until: "ripe" },
        { place: 0, wrap: "paper bag", until: "never" },
      ],
    };
    const { wrap, move, leavesOff, drying, split } = weights;
    expect(programmeEffort(moved)).toBe(wrap["paper bag"] + move + leavesOff + drying);
    expect(programmeEffort(inPlace(0))).toBe(0);
    const parts = [whole(0, inPlace(0)), whole(0, moved), whole(0, inPlace(1))];
    expect(choiceEffort(parts)).toBe(programmeEffort(moved) + 2 * split);
  });
});

describe("smells", () => {
  const problem = bound([lot("apple", 500), lot("carrot", 500)]);
  const pair = problem.catalogue.odours.find(({ giver, taker }) => giver === "apple" && taker === "carrot");
  const meet = (first: Programme, second: Programme) =>
    takenSmells(problem, [whole(0, first, problem), whole(1, second, problem)], [outcome([0]), outcome([0])]);

  it("pass in one air, not into another, nor through a closed box", () => {
    expect(pair).toBeDefined();
    const amongProduce = (smells: ReturnType<typeof meet>) => smells.filter(({ taker }) => taker !== "dairy");
    expect(amongProduce(meet(inPlace(2), inPlace(2)))).toEqual([{ giver: 0, taker: 1 }]);
    expect(amongProduce(meet(inPlace(2), inPlace(3)))).toEqual([]);
    expect(amongProduce(meet(inPlace(2), inPlace(2, "lidded box")))).toEqual([]);
  });

  it("pass to dairy from a giver that lies open in a refrigerator, drawers too, and not from the room", () => {
    const toDairy = (place: Programme) =>
      meet(place, inPlace(3)).some(({ giver, taker }) => giver === 0 && taker === "dairy");
    const cold = problem.places.findIndex(({ place }) => place.kind === "crisper drawer");
    const warm = problem.places.findIndex(({ place }) => place.kind === "counter");
    expect(toDairy(inPlace(cold))).toBe(true);
    expect(toDairy(inPlace(warm))).toBe(false);
  });
});

describe("cautions", () => {
  it("name what holds for the haul, and always the local authority", () => {
    const names = cautions(
      bound([lot("potato", 1000), lot("garlic", 50), lot("tomato", 200, { form: "cut" })]),
    );
    expect(names).toEqual(
      expect.arrayContaining(["green-potatoes", "garlic-in-oil", "cut-produce", "cut-ready-to-eat"]),
    );
    expect(names.at(-1)).toBe("local");
    expect(names).not.toContain("refrigerator-too-warm");
  });
});

describe("a refrigerator that is too warm", () => {
  // FDA consumer advice, from memory: 40 °F or below. Entered in °F it is 4.444 °C, told as 4.4 °C.
  it("is one above 40 °F as published, not one set to just that", () => {
    const just = celsiusFromFahrenheit(40);
    for (const catalogue of [undefined, bundledCatalogue()]) {
      expect(isTooWarm({ temperature: just }, catalogue)).toBe(false);
      expect(isTooWarm({ temperature: just + 0.01 }, catalogue)).toBe(true);
    }
  });
});
