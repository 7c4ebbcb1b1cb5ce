import { describe, expect, it } from "vitest";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { bindProblem } from "../../src/problem/problem.js";
import { evaluate } from "../../src/search/evaluateChoice.js";
import { lot, request } from "../support.js";
import { arrangement, judged, small } from "./support.js";

const closed = [{ place: "left-drawer", setting: "closed" }];
const drawer = (...ids: string[]) => ids.map((id) => ({ lot: id, place: "left-drawer" }));

describe("conflicts", () => {
  it("finds the one neighbour whose gas is to blame, by the life without it", () => {
    const lots = [lot("apple", 1500), lot("broccoli", 500), lot("lemon", 300)];
    const asked = request(lots, undefined, { people: 2 });
    const said = arrangement([...drawer("apple", "broccoli"), { lot: "lemon", place: "counter" }], closed);
    const { conflicts, yours } = judged(asked, said);
    const broccoli = conflicts.find((one) => one.lot === "broccoli")!;
    expect(broccoli.cause).toBe("life");
    expect(broccoli.neighbours.map((one) => one.lot)).toEqual(["apple"]);
    expect(broccoli.joint).toBe(false);

    const problem = bindProblem(asked);
    const place = problem.places.findIndex((one) => one.place.id === "left-drawer");
    const programme = {
      leavesOff: false,
      dried: false,
      stays: [{ place, wrap: "none", until: "never" }],
    } as const;
    const parts = [{ lot: 1, portions: problem.lots[1]!.portions, programme }];
    const vents = yours.vents.map(({ setting }) => setting);
    const { endDay } = evaluate(problem, { parts, vents }).outcomes[0]!;
    const [apple] = broccoli.neighbours;
    expect(apple!.lifeWithout.value).toBeCloseTo(endDay, 9);
    expect(apple!.daysLost.value).toBeCloseTo(endDay - broccoli.life.value, 9);
    // One gassing neighbour takes all that neighbours take.
    expect(broccoli.lostToNeighbours.value).toBeCloseTo(apple!.daysLost.value, 1);
  });

  it("says that effects are joint where two give off the same gas", () => {
    const lots = [lot("apple", 1500), lot("pear", 1500, { ripeness: "ripe" }), lot("broccoli", 500)];
    const { conflicts } = judged(
      request(lots, undefined, { people: 2 }),
      arrangement(drawer("apple", "pear", "broccoli"), closed),
    );
    const { joint, neighbours, lostToNeighbours } = conflicts.find((one) => one.lot === "broccoli")!;
    expect(joint).toBe(true);
    expect(neighbours.map((one) => one.lot).sort()).toEqual(["apple", "pear"]);
    const oneByOne = neighbours.reduce((sum, { daysLost }) => sum + daysLost.value, 0);
    expect(oneByOne).toBeLessThan(0.9 * lostToNeighbours.value);
    for (const { daysLost, daysLostBesideItAlone } of neighbours)
      expect(daysLostBesideItAlone.value).toBeGreaterThan(daysLost.value);
  });

  it("blames the place where no neighbour is near", () => {
    const { conflicts } = judged(
      small([lot("spinach", 400)]),
      arrangement([{ lot: "spinach", place: "counter" }]),
    );
    const [spinach] = conflicts;
    expect(spinach).toMatchObject({ lot: "spinach", cause: "life", neighbours: [], joint: false });
    expect(spinach!.lostToNeighbours.value).toBe(0);
    expect(spinach!.lostToPlace.value).toBeCloseTo(spinach!.plannedLife.value - spinach!.life.value, 6);
  });

  it("names what does not ripen and what spoils the eating", () => {
    const lots = [lot("banana", 900, { ripeness: "unripe" }), lot("tomato", 600, { ripeness: "ripe" })];
    const said = arrangement(lots.map(({ id }) => ({ lot: id, place: "shelf" })));
    const { conflicts, lots: beside } = judged(request(lots, undefined, { people: 2 }), said);
    expect(conflicts[0]).toMatchObject({ lot: "banana", cause: "not ripe" });
    expect(beside[0]!.here.readyOnDay).toBeNull();
    expect(conflicts.find((one) => one.lot === "tomato")?.effects).toContain("flavour loss");
  });

  it("are three at most, the worst first, and losses agree with the lots", () => {
    const kinds = ["spinach", "broccoli", "strawberry", "romaine", "mushroom"];
    const { conflicts, lots } = judged(
      request(
        kinds.map((kind) => lot(kind, 500)),
        undefined,
        { people: 2 },
      ),
      arrangement(kinds.map((kind) => ({ lot: kind, place: "counter" }))),
    );
    expect(conflicts).toHaveLength(3);
    const worse = conflicts.map(({ worseBy }) => worseBy.value);
    expect(worse).toEqual(
      lots
        .map(({ worseBy }) => worseBy.value)
        .sort((a, b) => b - a)
        .slice(0, 3),
    );
    for (const conflict of conflicts) {
      const beside = lots.find((one) => one.lot === conflict.lot)!;
      expect(conflict.life.value).toBeCloseTo(beside.here.life.middle, 6);
      expect(conflict.lostToPlace.value + conflict.lostToNeighbours.value).toBeCloseTo(
        beside.lifeLost.value,
        6,
      );
    }
  });
});

describe("findings", () => {
  const lots = [
    lot("cantaloupe", 600, { form: "cut" }),
    lot("potato", 1500),
    lot("watermelon", 6000),
    lot("mango", 800, { ripeness: "unripe" }),
  ];
  const said = arrangement([
    { lot: "cantaloupe", place: "counter" },
    { lot: "potato", place: "counter", wrap: "closed film bag" },
    { lot: "watermelon", place: "left-drawer" },
    { lot: "mango", place: "shelf", later: { moveWhen: "ripe", place: "counter" } },
  ]);

  it("tell what is unsafe first; too little room is a finding, not an error", () => {
    const { findings, yours } = judged(request(lots, undefined, { people: 2 }), said);
    const names = findings.map(({ finding }) => finding);
    expect(names.slice(0, 3)).toEqual(["cut out of refrigerator", "cut uncovered", "greens in light"]);
    expect(findings).toContainEqual({ finding: "unsuitable wrap", lot: "potato", wrap: "closed film bag" });
    expect(findings).toContainEqual({ finding: "never moves", lot: "mango" });
    expect(yours.lots.find((one) => one.lot === "cantaloupe")!.safeUntil).toBe("2026-06-13");
  });

  it("tell what is cut and lies in a refrigerator, but too warm; and what is sold washed and lies bare", () => {
    const cold = ordinaryKitchens.ordinary;
    const door = cold.places.map((place) =>
      place.kind === "refrigerator door" ? { ...place, temperature: 6.4 } : place,
    );
    const kitchen = { ...cold, places: door };
    const { findings } = judged(
      { ...request([lot("cantaloupe", 600, { form: "cut" }), lot("salad-leaves", 200)]), kitchen },
      arrangement([
        { lot: "cantaloupe", place: "door", wrap: "lidded box" },
        { lot: "salad-leaves", place: "shelf", wrap: "none" },
      ]),
    );
    expect(findings).toEqual([
      { finding: "cut too warm", lot: "cantaloupe", place: "door" },
      { finding: "cut uncovered", lot: "salad-leaves" },
    ]);
  });

  it("name the place that is too full, and by how much", () => {
    const two = [lot("watermelon", 12_000), lot("kale", 2000)];
    const { findings, yours } = judged(
      request(two, undefined, { people: 2 }),
      arrangement([
        { lot: "watermelon", place: "left-drawer" },
        { lot: "kale", place: "left-drawer" },
      ]),
    );
    const full = findings.find(({ finding }) => finding === "overfull");
    expect(full).toMatchObject({ place: "left-drawer", litresOver: { unit: "L" } });
    expect(yours.overflow).toHaveLength(1);
  });

  it("are none where all is well", () => {
    const { findings } = judged(small(), arrangement([{ lot: "broccoli", place: "shelf" }]));
    expect(findings).toEqual([]);
  });
});
