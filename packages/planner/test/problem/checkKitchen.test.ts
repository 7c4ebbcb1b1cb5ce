import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkKitchen, kitchenFrom } from "../../src/problem/checkKitchen.js";
import { KitchenError } from "../../src/problem/inputError.js";
import type { Kitchen } from "../../src/problem/kitchen.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { smallKitchen, withPlace } from "../support.js";

const problemsOf = (kitchen: unknown): string[] => {
  const check = checkKitchen(kitchen);
  return check.ok ? [] : check.problems.map(({ thing, value, remedy }) => `${thing}: ${value}. ${remedy}`);
};

describe("checkKitchen", () => {
  it.each(Object.entries(ordinaryKitchens))("accepts the ordinary kitchen %s", (_, kitchen) => {
    expect(problemsOf(kitchen)).toEqual([]);
  });

  const base = smallKitchen();
  const { airChangesPerHour: _rates, ...drawerWithoutRates } = base.places[1]!;
  const { refrigerator: _refrigerator, ...shelfAlone } = base.places[0]!;
  const { vent: _vent, ...drawerWithoutVent } = base.places[1]!;
  const contradictory: [string, unknown, RegExp][] = [
    [
      "a drawer whose refrigerator does not exist",
      withPlace(base, "left-drawer", { refrigerator: "cellar fridge" }),
      /"left-drawer".*"cellar fridge" does not exist.*"refrigerator"/,
    ],
    ["a shelf without a refrigerator", { ...base, places: [shelfAlone] }, /"shelf".*without a refrigerator/],
    [
      "a counter inside a refrigerator",
      withPlace(base, "counter", { refrigerator: "refrigerator" }),
      /"counter".*inside refrigerator/,
    ],
    [
      "a vent without three rates",
      { ...base, places: [drawerWithoutRates] },
      /vent \(choose\) with no air exchange/,
    ],
    [
      "a vent with one rate",
      withPlace(base, "left-drawer", { airChangesPerHour: 2 }),
      /vent \(choose\) with one air exchange/,
    ],
    [
      "three rates without a vent",
      { ...base, places: [drawerWithoutVent] },
      /three air exchanges but no vent/,
    ],
    [
      "an open vent that exchanges least",
      withPlace(base, "left-drawer", { airChangesPerHour: { open: 1, half: 2, closed: 3 } }),
      /open 1, half 2, closed 3/,
    ],
    [
      "two places with one id",
      { ...base, places: [base.places[0], base.places[0]] },
      /"shelf".*more than once/,
    ],
    ["a refrigerator warmer than its room", { ...base, room: { ...base.room, temperature: 3 } }, /3 °C/],
    [
      "a coil warmer than its refrigerator",
      {
        ...base,
        refrigerators: [{ ...base.refrigerators[0]!, coil: { temperature: 9, airChangesPerHour: 5 } }],
      },
      /cold surface at 9 °C/,
    ],
    [
      "a shelf with more room than its refrigerator has air",
      withPlace(base, "shelf", { litres: 1000 }),
      /refrigerator "refrigerator": 1000 L of room in "shelf", but only 200 L of air.*"litres"/,
    ],
    [
      "a shelf and a door that together have more room than the refrigerator has air",
      withPlace(withPlace(ordinaryKitchens.ordinary, "shelf", { litres: 150 }), "door", { litres: 60 }),
      /210 L of room in "shelf", "door", but only 200 L/,
    ],
    [
      "a drawer larger than its refrigerator",
      withPlace(base, "left-drawer", { litres: 300 }),
      /"left-drawer": 300 L inside refrigerator "refrigerator" of 200 L/,
    ],
    [
      "a cellar far hotter than the room",
      withPlace(ordinaryKitchens.cellar, "cellar", { temperature: 40 }),
      /"cellar": 40 °C in a room of 20 °C.*at most 10 K warmer/,
    ],
    [
      "a counter far colder than the room",
      withPlace(base, "counter", { temperature: 2 }),
      /"counter": 2 °C in a room of 20 °C.*the air of its room/,
    ],
    [
      "a dark cupboard that is lit",
      withPlace(ordinaryKitchens.ordinary, "cupboard-upper", { lit: true }),
      /"cupboard-upper": a cool dark cupboard with "lit": true.*"lit": false/,
    ],
    [
      "two places with one name, but for spaces and capitals",
      withPlace(base, "left-drawer", { name: " refrigerator  Shelves " }),
      /"left-drawer": name .*another place has too.*its own name/,
    ],
    ["a blank name", withPlace(base, "counter", { name: " \u200b " }), /"counter": name .*can be read/],
    ["a kitchen with a blank name", { ...base, name: "  " }, /kitchen: name " {2}"/],
    ["a place that freezes", withPlace(base, "shelf", { temperature: -4 }), /-4 °C.*freezes/],
  ];
  it.each(contradictory)("rejects %s, naming thing and value", (_, kitchen, message) => {
    expect(problemsOf(kitchen).join("\n")).toMatch(message);
    expect(() => kitchenFrom(kitchen)).toThrow(KitchenError);
  });

  it("accepts a cellar as much colder than the room as cellars are, and a shelf of all the air there is", () => {
    expect(problemsOf(withPlace(ordinaryKitchens.cellar, "cellar", { temperature: 2 }))).toEqual([]);
    expect(problemsOf(withPlace(base, "shelf", { litres: 200 }))).toEqual([]);
  });

  it("rejects a kitchen with no places", () => {
    expect(problemsOf({ ...base, places: [] }).join("\n")).toMatch(/places/);
  });

  it("names a value of the wrong kind by the place's id", () => {
    const [problem] = problemsOf(withPlace(base, "counter", { litres: -3 }));
    expect(problem).toMatch(/"counter".*-3/);
  });

  it("warns of a refrigerator above 5 °C, and of a kitchen without one", () => {
    const warm = checkKitchen(ordinaryKitchens.small);
    expect(warm.ok && warm.warnings.map(({ value }) => value)).toContain("6 °C");
    const room: Kitchen = { ...base, refrigerators: [], places: [base.places[2]!] };
    const check = checkKitchen(room);
    expect(check.ok && check.warnings.map(({ value }) => value)).toContain("no place in a refrigerator");
  });

  it("answers anything at all without throwing", () => {
    fc.assert(
      fc.property(fc.anything(), (given) => {
        expect(checkKitchen(given).ok).toBe(false);
      }),
      { seed: 21 },
    );
  });
});
