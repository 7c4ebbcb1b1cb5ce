import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/checkPlan.js";
import type { Kitchen } from "../../src/problem/kitchen.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import type { Wanted } from "../../src/problem/wanted.js";
import { planHaul } from "../../src/search/planHaul.js";
import { judgedByAll } from "./judgedByAll.js";
import { same } from "./tally.js";

const { ordinary } = ordinaryKitchens;
function kitchen(ids: readonly string[], wraps: Kitchen["wraps"] = []): Kitchen {
  return { ...ordinary, places: ordinary.places.filter(({ id }) => ids.includes(id)), wraps };
}
const household = { people: 2, portionsPerPersonPerDay: 5, daysAway: [], days: 7 };
const fruit = (commodity: string, grams: number, pieces: number, wanted?: Wanted, more: object = {}) => ({
  id: commodity,
  commodity,
  grams,
  pieces,
  ripeness: "turning",
  ...(wanted && { wanted }),
  ...more,
});
const request = (lots: readonly object[], where: Kitchen) => ({
  haul: { lots },
  kitchen: where,
  household,
  from: "2026-06-13",
  catalogue: catalogue(),
});

/** The plan, once the independent checker has found nothing wrong with it. */
function planned(lots: readonly object[], where: Kitchen, days = 7) {
  const asked = { ...request(lots, where), household: { ...household, days } };
  const plan = planHaul(asked);
  expect(checkPlan({ ...asked, plan })).toEqual([]);
  return plan;
}
const partOf = (plan: ReturnType<typeof planned>, lot: string) => plan.lots.find((part) => part.lot === lot)!;

describe("ripe soon", () => {
  const dry = kitchen(["shelf", "cupboard-upper"], ["paper bag"]);

  it("a paper bag ripens what is wanted soon, and is left out where nothing is wanted", () => {
    const soon = partOf(planned([fruit("avocado", 450, 3, { when: "by", day: 3 })], dry), "avocado");
    const free = partOf(planned([fruit("avocado", 450, 3)], dry), "avocado");
    expect(soon.stays[0]).toMatchObject({ place: "cupboard-upper", wrap: "paper bag" });
    expect(free.stays[0]).toMatchObject({ place: "cupboard-upper", wrap: "none" });
    expect(soon.readyOnDay!).toBeLessThanOrEqual(free.readyOnDay!);
  });

  it("the giver of ripening gas lies beside what is wanted soon, and elsewhere where it is wanted late", () => {
    const two = kitchen(["shelf", "cupboard-upper"]);
    const apples = { id: "apple", commodity: "apple", grams: 1500 };
    const applesBeside = (wanted: Wanted) =>
      planned([fruit("pear", 720, 4, wanted), apples], two)
        .lots.filter(({ lot }) => lot === "apple")
        .some(({ stays }) => stays[0]!.place === "cupboard-upper");
    expect(applesBeside({ when: "by", day: 2 })).toBe(true);
    expect(applesBeside({ when: "on", day: 6 })).toBe(false);
  });

  it("what ripens in time is moved into the cold once ripe, to hold it to the day", () => {
    const { stays, wish } = partOf(
      planned(
        [fruit("avocado", 450, 3, { when: "on", day: 5 })],
        kitchen(["shelf", "counter"], ["paper bag"]),
      ),
      "avocado",
    );
    expect(stays.at(-1)!.place).toBe("shelf");
    expect(stays.at(-2)).toMatchObject({ place: "counter", moveWhen: "ripe" });
    expect(wish).toMatchObject({ met: true, day: 5, date: "2026-06-18" });
  });
});

describe("ripe late", () => {
  it("kept cool first and brought out on a day to ripen, and eaten on the day it is wanted for", () => {
    const where = kitchen(["shelf", "cupboard-upper"], ["paper bag"]);
    const late = partOf(planned([fruit("avocado", 450, 3, { when: "on", day: 6 })], where), "avocado");
    expect(late.stays[0]).toMatchObject({ place: "shelf", moveWhen: "day" });
    expect(late.stays[1]!.place).toBe("cupboard-upper");
    expect(late.eatOn.map(({ day }) => day)).toEqual([6]);
    expect(late.wish!.met).toBe(true);
  });

  it("three avocados wanted over the week ripen on different days and are eaten on theirs", () => {
    const where = kitchen(["shelf", "counter", "cupboard-upper"], ["paper bag"]);
    const days = [4, 6, 8];
    const lots = days.map((day) => fruit("avocado", 150, 1, { when: "on", day }, { id: `for day ${day}` }));
    const plan = planned(lots, where, 9);
    expect(plan.lots.map(({ eatOn }) => eatOn.map(({ day }) => day))).toEqual(days.map((day) => [day]));
    expect(new Set(plan.lots.map(({ readyOnDay }) => readyOnDay)).size).toBe(3);
    expect(plan.lots.every(({ wish }) => wish!.met)).toBe(true);
  });

  it("what is wanted after a day is not eaten before, nor on it", () => {
    const part = partOf(
      planned([fruit("pear", 720, 4, { when: "after", day: 4 })], kitchen(["shelf", "counter"])),
      "pear",
    );
    expect(part.eatOn.every(({ day }) => day > 4)).toBe(true);
  });
});

describe("wishes that cannot be met", () => {
  const where = kitchen(["shelf", "counter"], ["paper bag"]);

  it("say the day it would be ready at best, and why", () => {
    const part = partOf(
      planned([fruit("mango", 680, 2, { when: "by", day: 1 }, { ripeness: "unripe" })], where),
      "mango",
    );
    expect(part.wish).toMatchObject({ met: false, why: "ripens too slowly" });
    expect(part.wish!.bestReadyOnDay).toBeGreaterThan(1);
    expect(part.wish!.bestReadyOnDay!).toBeLessThanOrEqual(part.readyOnDay!);
  });

  it("of kinds that never ripen are answered with that, and met as long as they are good", () => {
    const plan = planned(
      [
        { id: "orange", commodity: "orange", grams: 900, wanted: { when: "by", day: 2 } },
        { id: "grape", commodity: "grape", grams: 500, wanted: { when: "on", day: 3 } },
      ],
      where,
    );
    for (const { wish } of plan.lots) expect(wish).toMatchObject({ ripens: false, met: true });
  });

  it("that ask for more days than it keeps say so", () => {
    const raspberries = {
      id: "raspberry",
      commodity: "raspberry",
      grams: 300,
      wanted: { when: "on", day: 30 },
    };
    expect(partOf(planned([raspberries], where), "raspberry").wish).toMatchObject({
      met: false,
      why: "keeps too short",
    });
  });

  it("never move cut produce past its safe time", () => {
    const melon = {
      id: "melon",
      commodity: "cantaloupe",
      grams: 540,
      form: "cut",
      wanted: { when: "on", day: 12 },
    };
    const long = { ...household, days: 14 };
    const asked = { ...request([melon], where), household: long };
    const plan = planHaul(asked);
    expect(checkPlan({ ...asked, plan })).toEqual([]);
    expect(plan.lots[0]!.eatOn.every(({ day }) => day <= 6)).toBe(true);
    expect(plan.lots[0]!.wish!.met).toBe(false);
  });
});

const cases: [string, Wanted, number][] = [
  ["by", { when: "by", day: 3 }, 1],
  ["on", { when: "on", day: 4 }, 1],
  ["from", { when: "from", day: 3 }, 1],
  ["after", { when: "after", day: 2 }, 1],
  ["on, in parts", { when: "on", day: 3 }, 2],
];

describe("small cases with wishes, against every choice", () => {
  const where = kitchen(["shelf", "counter"], ["paper bag"]);
  it.each(cases)("one lot wanted %s a day: the plan is as good as the best of all", (_, wanted, pieces) => {
    const { gap, difference } = judgedByAll(
      request([fruit("avocado", 150 * pieces, pieces, wanted)], where),
      pieces > 1,
    );
    expect(gap, difference).toBeLessThanOrEqual(same);
  });

  it("two lots, one wanted by a day and one on a day", () => {
    const two = kitchen(["shelf", "cupboard-upper"]);
    const lots = [
      fruit("avocado", 300, 2, { when: "by", day: 3 }),
      fruit("pear", 360, 2, { when: "on", day: 4 }),
      { id: "apple", commodity: "apple", grams: 700 },
    ];
    const { gap, difference } = judgedByAll(request(lots, two), false);
    expect(gap, difference).toBeLessThanOrEqual(same);
  });
});
