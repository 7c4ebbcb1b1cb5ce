import { ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { run } from "../../src/run.js";
import { fakeDoor } from "../support/fakeDoor.js";

function tried(words: readonly string[], files: Record<string, string> = {}, input = "") {
  const door = fakeDoor({ files, input: new TextEncoder().encode(input) });
  return { code: run(words, door), ...door.printed };
}

const planned = (words: readonly string[] = [], files = {}) =>
  tried(
    [
      "plan",
      "8 apples, 2 avocados, 300 g kale, 1 kg potatoes",
      "--json",
      "--from",
      "2026-06-13",
      "--days",
      "6",
      "--portions",
      "2",
      ...words,
    ],
    files,
  ).out;
const files = { "plan.json": planned() };
const carried = (account: string, more: readonly string[] = []) =>
  tried(["carry-on", "plan.json", "--on", "2026-06-14", "--happened", account, ...more], files);

describe("keepwright carry-on", () => {
  it("says what changes and why, then the plan, from words as they are spoken", () => {
    const { code, out, err } = carried(
      "ate 2 apples; avocados ripe; bought 1 lb green beans; threw out the kale",
    );
    expect(err).toBe("");
    expect(code).toBe(0);
    expect(out).toMatch(/^The plan carried on, from 14 June 2026 to 18 June 2026/);
    expect(out).toMatch(
      /WHAT CHANGES, AND WHY[\s\S]*Green beans: put into[\s\S]*GONE[\s\S]*Kale: thrown out/,
    );
    expect(out).toMatch(/Avocados[^-]*Ripe \d+ days? sooner/);
    expect(out).toMatch(/WHERE EACH THING GOES/);
  });

  it("says that nothing changes when nothing does", () => {
    const { out } = tried(["carry-on", "plan.json", "--on", "2026-06-13"], files);
    expect(out).toContain("Nothing changes: the plan before still holds.");
    const json = JSON.parse(tried(["carry-on", "plan.json", "--on", "2026-06-13", "--json"], files).out);
    const { reading: _, ...plan } = JSON.parse(files["plan.json"]);
    expect(json.plan).toEqual(plan);
  });

  it("carries on what it carried on, from a file of data and from standard input", () => {
    const next = carried("ate 2 apples", ["--json"]).out;
    const account = JSON.stringify({ version: 1, lots: [{ lot: "lot-1", eaten: { pieces: 1 } }] });
    const both = { "next.json": next, "since.json": account };
    const words = ["carry-on", "next.json", "--on", "2026-06-15", "--json", "--happened"];
    const again = JSON.parse(tried([...words, "since.json"], both).out);
    const first = JSON.parse(next);
    const grams = (told: { haul: { lots: { carried: { origin: string }; grams: number }[] } }) =>
      told.haul.lots.filter((lot) => lot.carried.origin === "lot-1").reduce((sum, lot) => sum + lot.grams, 0);
    expect(again.elapsed).toBe(1);
    expect(grams(again)).toBeCloseTo(grams(first) * (5 / 6), 6);
    const piped = tried([...words, "-"], both, "ate 1 apple\n");
    expect(JSON.parse(piped.out).plan).toEqual(again.plan);
  });

  it.each<[string, string[], Record<string, string>, RegExp]>([
    ["no plan", ["carry-on"], {}, /plan/],
    [
      "a plan that is missing",
      ["carry-on", "gone.json"],
      {},
      /plan file “gone\.json”: there is no such file/,
    ],
    ["a plan that is no plan", ["carry-on", "p.json"], { "p.json": "[]" }, /it holds no plan.*plan --json/],
    [
      "a plan without its haul",
      ["carry-on", "p.json"],
      { "p.json": `{"version": 1}` },
      /the haul it was made for is not in it/,
    ],
    [
      "a line that says nothing known",
      ["carry-on", "plan.json", "--happened", "the dog barked"],
      files,
      /^"the dog barked": it is not understood/m,
    ],
    [
      "a lot not in the plan",
      ["carry-on", "plan.json", "--happened", "ate 2 pears"],
      files,
      /pears.*not in the plan/,
    ],
    [
      "an account that is spoilt JSON",
      ["carry-on", "plan.json", "--happened", "{"],
      files,
      /not valid JSON.*"version": 1/,
    ],
    [
      "an account that is missing",
      ["carry-on", "plan.json", "--happened", "since.txt"],
      files,
      /no such file/,
    ],
    ["a day that is none", ["carry-on", "plan.json", "--on", "June"], files, /--on: “June”/],
    [
      "a day before the plan",
      ["carry-on", "plan.json", "--on", "2026-06-01"],
      files,
      /before the plan's first day/,
    ],
    [
      "a plan that is over",
      ["carry-on", "plan.json", "--on", "2026-06-30", "--happened", "ate nothing"],
      files,
      /Days to plan for.*ended/,
    ],
    [
      "another kitchen",
      ["carry-on", "plan.json", "--on", "2026-06-14", "-k", "k.json"],
      { ...files, "k.json": JSON.stringify({ ...ordinaryKitchens.ordinary, name: "Elsewhere" }) },
      /made for the kitchen "An ordinary kitchen", and this is "Elsewhere"/,
    ],
  ])("ends with 2 and says what would work: %s", (_, words, given, message) => {
    const { code, err } = tried(words, given);
    expect(err).toMatch(message);
    expect(code).toBe(2);
  });
});
