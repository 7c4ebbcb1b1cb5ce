import { describe, expect, it } from "vitest";
import { bindProblem } from "../../src/problem/problem.js";
import { bound, lot, request, smallKitchen } from "../support.js";

describe("bindProblem", () => {
  it("puts drawers into the refrigerator's air, cupboards into the room, and lets shelf and door share", () => {
    const problem = bound([lot("apple", 500)]);
    const boxes = problem.boxes(["open", "closed"]);
    expect(boxes.map(({ name }) => name)).toEqual([
      "refrigerator",
      "left-drawer",
      "right-drawer",
      "cupboard-upper",
      "cupboard-lower",
    ]);
    expect(boxes.map(({ exchange }) => exchange.with)).toEqual(["room", 0, 0, "room", "room"]);
    const box = Object.fromEntries(problem.places.map((place) => [place.place.id, place.box]));
    expect(box).toMatchObject({
      shelf: 0,
      door: 0,
      "left-drawer": 1,
      "right-drawer": 2,
      counter: "room",
      "cupboard-upper": 3,
    });
    expect(boxes[0]!.coil).toBeDefined();
    expect(boxes[1]!.exchange.litresPerHour).toBeGreaterThan(boxes[2]!.exchange.litresPerHour);
  });

  it("takes a vent that is fixed as it is", () => {
    const kitchen = smallKitchen();
    const places = kitchen.places.map((place) => (place.vent ? { ...place, vent: "open" as const } : place));
    const problem = bound([lot("apple", 500)], { ...kitchen, places });
    const drawer = places[1]!;
    expect(problem.vents).toEqual([]);
    expect(
      typeof drawer.airChangesPerHour === "object" && drawer.airChangesPerHour.open * drawer.litres,
    ).toBe(problem.boxes([])[1]!.exchange.litresPerHour);
  });

  it("counts portions so that pieces stay whole", () => {
    const [avocados, leaves] = bound([lot("avocado", 510, { pieces: 3 }), lot("spinach", 300)]).lots;
    expect(avocados!.portions % 3).toBe(0);
    expect(avocados!.splitUnit).toBe(avocados!.portions / 3);
    expect(avocados!.gramsPerPortion * avocados!.portions).toBeCloseTo(510, 9);
    expect(leaves!.splitUnit).toBe(1);
  });

  it("takes the words of ripeness, the usual ripeness, and what does not ripen as ready", () => {
    const [unripe, usual, cut, orange] = bound([
      lot("avocado", 500, { id: "a", ripeness: "unripe" }),
      lot("avocado", 500, { id: "b" }),
      lot("avocado", 500, { id: "c", form: "cut" }),
      lot("orange", 500, { ripeness: "unripe" }),
    ]).lots;
    expect(unripe!.ripeness).toBe(0);
    expect(usual!.ripeness).toBe(usual!.produce.ripening!.arrives);
    expect(cut!.ripeness).toBeGreaterThanOrEqual(1);
    expect(orange!.ripeness).toBe(1);
  });

  it("names a date that is none", () => {
    expect(() => bindProblem({ ...request([lot("apple", 100)]), from: "2026-02-30" })).toThrow(/2026-02-30/);
  });

  it("names a household that is none", () => {
    expect(() => bound([lot("apple", 100)], smallKitchen(), { people: 0 })).toThrow(/people.*0/);
  });
});
