import { figureCatalogue } from "@keepwright/catalogue";
import { arrangementOfPlan, judgeArrangement, ordinaryKitchens, planHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import {
  allAsPlanned,
  allInRefrigerator,
  arrangementSaid,
  drawnPlace,
  keyedLots,
  lyingOf,
} from "../../src/state/lying.js";
import { readLines } from "../../src/state/readLines.js";

const kitchen = ordinaryKitchens.ordinary;
const haul = "6 avocados, unripe\n1 broccoli\nhalf a cut melon 600 g\n2 kg apples";
const lines = readLines(haul, { "2 kg apples#0": { leftOut: true } }, figureCatalogue());
const lots = keyedLots(lines);
const request = {
  haul: { lots: lots.map(({ lot }) => lot) },
  kitchen,
  household: { people: 1, portionsPerPersonPerDay: 3, daysAway: [], days: 8 },
  from: "2026-06-13",
  seed: 1,
  catalogue: figureCatalogue(),
};
const plan = planHaul(request);
const broccoli = lots.find(({ lot }) => lot.commodity === "broccoli")!;
const melon = lots.find(({ lot }) => lot.form === "cut")!;
const nothing = { lying: {}, vents: {} };

describe("what is said of how things lie", () => {
  it("leaves out what is left out of the plan", () => {
    expect(lots.map(({ lot }) => lot.commodity)).not.toContain("apple");
  });
  it("is no arrangement while nothing is said", () => {
    expect(arrangementSaid(nothing, lots, kitchen, plan)).toBeUndefined();
  });
  it("as planned is the plan itself, parts, moves and vents", () => {
    const said = arrangementSaid(allAsPlanned(lots, plan), lots, kitchen, plan);
    expect(said).toEqual(arrangementOfPlan(plan));
  });
  it("is an arrangement of what is mentioned alone, by the lots' ids", () => {
    const said = { ...nothing, lying: { [broccoli.key]: { place: "counter", wrap: "foil" as const } } };
    expect(arrangementSaid(said, lots, kitchen, plan)).toEqual({
      version: 1,
      lots: [{ lot: broccoli.lot.id, place: "counter", wrap: "foil", done: [] }],
      vents: [],
    });
  });
  it("passes over a place and a vent that another kitchen had, and lines that are gone", () => {
    const at = { place: "attic", wrap: "none" as const };
    const said = {
      lying: { [broccoli.key]: at, "2 figs#0": "as planned" as const, constructor: at },
      vents: { attic: "open" as const },
    };
    expect(lyingOf(said, broccoli.key, kitchen)).toBeUndefined();
    expect(arrangementSaid(said, lots, kitchen, plan)).toBeUndefined();
  });
  it("is an arrangement where only a vent is told", () => {
    const vents = { "left-drawer": "closed" as const };
    expect(arrangementSaid({ lying: {}, vents }, lots, kitchen, plan)?.vents).toEqual([
      { place: "left-drawer", setting: "closed" },
    ]);
  });
  it("is drawn where it is said, or where the plan has it first, or nowhere", () => {
    const { id } = broccoli.lot;
    expect(drawnPlace({ place: "door", wrap: "none" }, id, plan)).toBe("door");
    const [stay] = plan.lots.find(({ lot }) => lot === id)!.stays;
    expect(drawnPlace("as planned", id, plan)).toBe(stay!.place);
    expect(drawnPlace(undefined, id, plan)).toBeUndefined();
  });
});

describe("all in the refrigerator", () => {
  const said = allInRefrigerator(lots, kitchen, plan)!;
  it("is everything on the roomiest shelf, what is cut covered, and can be judged without a word on room or safety", () => {
    for (const { key } of lots) expect(said.lying[key]).toMatchObject({ place: "shelf" });
    const arrangement = arrangementSaid(said, lots, kitchen, plan);
    const { findings } = judgeArrangement({ ...request, arrangement });
    expect(findings.map(({ finding }) => finding)).toEqual([]);
  });
  it("goes on elsewhere where the shelf is full, but never with what is cut", () => {
    const places = kitchen.places.map((place) =>
      place.refrigerator === undefined ? place : { ...place, litres: 0.5 },
    );
    const full = allInRefrigerator(lots, { ...kitchen, places }, plan)!;
    expect(full.lying[broccoli.key]).toMatchObject({ wrap: "none" });
    const cold = places.filter(({ refrigerator }) => refrigerator !== undefined).map(({ id }) => id);
    const placeOf = (key: string) => (full.lying[key] as { place: string }).place;
    expect(cold).not.toContain(placeOf(broccoli.key));
    expect(cold).toContain(placeOf(melon.key));
  });
  it("is not offered where there is no refrigerator", () => {
    const places = kitchen.places.filter(({ refrigerator }) => refrigerator === undefined);
    expect(allInRefrigerator(lots, { ...kitchen, places, refrigerators: [] }, plan)).toBeUndefined();
  });
});
