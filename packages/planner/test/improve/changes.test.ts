import { describe, expect, it } from "vitest";
import { changesFor } from "../../src/improve/changes/index.js";
import { checkedRequest } from "../../src/improve/triedChange.js";
import type { Kitchen } from "../../src/problem/kitchen.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { bindProblem } from "../../src/problem/problem.js";
import { lot, request, smallKitchen, withPlace } from "../support.js";

const some = [lot("spinach", 300), lot("apple", 900)];
const offered = (lots: readonly object[], kitchen?: Kitchen, household = {}) =>
  changesFor(checkedRequest(request(lots, kitchen, household)));
const named = (name: string, ...asked: Parameters<typeof offered>) =>
  offered(...asked).filter(({ change }) => change.name === name);

/** The ordinary kitchen with all of its refrigerator at another temperature. */
function refrigeratorAt(celsius: number): Kitchen {
  const base = ordinaryKitchens.ordinary;
  const by = celsius - base.refrigerators[0]!.temperature;
  return {
    ...base,
    refrigerators: base.refrigerators.map((one) => ({ ...one, temperature: celsius })),
    places: base.places.map((place) =>
      place.refrigerator === undefined ? place : { ...place, temperature: place.temperature + by },
    ),
  };
}

describe("a refrigerator colder", () => {
  it("is 1 °C colder with its places and its cold surface", () => {
    const [colder] = named("refrigerator colder", some);
    expect(colder!.change).toMatchObject({ from: 4.4, to: 3.4 });
    const { refrigerators, places } = colder!.request.kitchen;
    expect(refrigerators[0]).toMatchObject({ temperature: 3.4, coil: { temperature: -9 } });
    expect(places.find(({ id }) => id === "shelf")!.temperature).toBeCloseTo(3.4);
    expect(places.find(({ id }) => id === "door")!.temperature).toBeCloseTo(5.4);
    expect(places.find(({ id }) => id === "counter")!.temperature).toBe(20);
  });
  it("is set to the safe limit where a degree would not reach it", () => {
    expect(named("refrigerator colder", some, refrigeratorAt(8))[0]!.change).toMatchObject({ to: 4.4 });
    expect(named("refrigerator colder", some, refrigeratorAt(5))[0]!.change).toMatchObject({ to: 4 });
  });
  it("is never offered below 0 °C, in any of its places", () => {
    expect(named("refrigerator colder", some, refrigeratorAt(0.9))).toEqual([]);
    const cornerAt = (celsius: number) =>
      withPlace(refrigeratorAt(3), "left-drawer", { temperature: celsius });
    expect(named("refrigerator colder", some, cornerAt(0.5))).toEqual([]);
    expect(named("refrigerator colder", some, cornerAt(1))).toHaveLength(1);
  });
});

describe("a refrigerator warmer", () => {
  it("is never offered above the safe limit", () => {
    expect(named("refrigerator warmer", some, refrigeratorAt(4.4))).toEqual([]);
    expect(named("refrigerator warmer", some, refrigeratorAt(3.5))).toEqual([]);
    expect(named("refrigerator warmer", some, refrigeratorAt(3.4))[0]!.change).toMatchObject({ to: 4.4 });
  });
});

describe("things that are offered only where there is something to change", () => {
  it("turns only vents that stand fixed, to each other setting", () => {
    expect(named("vent turned", some)).toEqual([]);
    const fixed = withPlace(ordinaryKitchens.ordinary, "left-drawer", { vent: "open" });
    expect(named("vent turned", some, fixed).map(({ change }) => change)).toEqual([
      { name: "vent turned", place: "left-drawer", from: "open", to: "half" },
      { name: "vent turned", place: "left-drawer", from: "open", to: "closed" },
    ]);
  });
  it("offers boxes and bags only where none are at hand", () => {
    expect(named("lidded boxes at hand", some)).toEqual([]);
    const bare = smallKitchen({ wraps: [] });
    expect(named("lidded boxes at hand", some, bare)[0]!.request.kitchen.wraps).toEqual(["lidded box"]);
    expect(named("paper bags at hand", some, bare)[0]!.request.kitchen.wraps).toEqual(["paper bag"]);
  });
  it("offers a drawer where a shelf can give up the room, and takes it from there", () => {
    const [more] = named("vented drawer more", some);
    const litres = more!.request.kitchen.places.map((place) => [place.id, place.litres]);
    expect(litres).toContainEqual(["shelf", 31]);
    expect(litres).toContainEqual(["drawer-more", 14]);
    expect(named("vented drawer more", some, more!.request.kitchen)[0]!.change).toMatchObject({ litres: 14 });
    expect(named("vented drawer more", some, ordinaryKitchens.small)).toEqual([]);
    const tight = withPlace(ordinaryKitchens.ordinary, "shelf", { litres: 27 });
    expect(named("vented drawer more", some, tight)).toEqual([]);
  });
  it("tops only bunches whose leaves draw on the root", () => {
    expect(named("bunches topped", some)).toEqual([]);
    expect(named("bunches topped", [lot("celery", 500, { tops: true })])).toEqual([]);
    const [topped] = named("bunches topped", [lot("carrot", 500, { tops: true }), ...some]);
    expect(topped!.change).toMatchObject({ lots: ["carrot"] });
    expect(topped!.request.haul.lots[0]!.tops).toBe(false);
  });
  it("eats a portion more only up to what a household may eat", () => {
    expect(named("portion more a day", some)[0]!.change).toMatchObject({ from: 5, to: 6 });
    expect(named("portion more a day", some, undefined, { portionsPerPersonPerDay: 19.5 })).toEqual([]);
  });
  it("leaves each lot out, but never the only one", () => {
    const left = named("lot fewer", some);
    expect(left.map(({ request: { haul } }) => haul.lots.map(({ id }) => id))).toEqual([
      ["apple"],
      ["spinach"],
    ]);
    expect(named("lot fewer", some.slice(0, 1))).toEqual([]);
  });
});

it("every change in an ordinary kitchen makes a request that can be planned, and leaves the asked one as it was", () => {
  for (const kitchen of [...Object.values(ordinaryKitchens), smallKitchen({ wraps: [] })]) {
    const asked = checkedRequest(request([lot("carrot", 500, { tops: true }), ...some], kitchen));
    const before = JSON.stringify(asked.kitchen) + JSON.stringify(asked.haul);
    for (const { request: changed } of changesFor(asked)) expect(() => bindProblem(changed)).not.toThrow();
    expect(JSON.stringify(asked.kitchen) + JSON.stringify(asked.haul)).toBe(before);
  }
});
