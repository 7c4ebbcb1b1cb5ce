import { readFileSync } from "node:fs";
import { ordinaryKitchens } from "@keepwright/planner";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { schemaFiles } from "../src/output/schemas.js";
import { run } from "../src/run.js";
import { root } from "./support/built.js";
import { fakeDoor } from "./support/fakeDoor.js";

const written = (name: string): string => readFileSync(`${root}schemas/${name}`, "utf8");

function validated(name: string, value: unknown): string {
  const ajv = new Ajv2020({ strict: true, allowUnionTypes: true });
  const validate = ajv.compile(JSON.parse(written(`${name}.schema.json`)));
  return validate(value) ? "valid" : ajv.errorsText(validate.errors);
}

function printed(words: readonly string[], files: Readonly<Record<string, string>> = {}): unknown {
  const door = fakeDoor({ files });
  run(words, door);
  return JSON.parse(door.printed.out);
}

describe("the published schemas", () => {
  it.each([...schemaFiles()])(
    "%s is not stale (run node scripts/write-schemas.mjs after a build)",
    (name, text) => {
      expect(JSON.parse(written(name))).toEqual(JSON.parse(text));
    },
  );

  it("hold for a plan with questions and for one in a small kitchen", () => {
    const plan = printed([
      "plan",
      "2 kg apples, half a cut melon, 3 avocados, 1 zorb",
      "--json",
      "--days",
      "3",
    ]);
    expect(validated("plan", plan)).toBe("valid");
    expect(validated("plan", printed(["plan", "1 kale", "-k", "small", "--json", "--days", "2"]))).toBe(
      "valid",
    );
  });

  it("hold for a page for the refrigerator door", () => {
    const words = ["sheet", "2 kg apples, half a cut melon, 3 hard avocados", "--json", "--days", "5"];
    expect(validated("sheet", printed(words))).toBe("valid");
    expect(validated("sheet", printed([...words, "--language", "es", "--large"]))).toBe("valid");
  });

  it("hold for an account of what happened, and for a plan carried on", () => {
    const plan = printed([
      "plan",
      "2 kg apples, half a cut melon, 3 avocados",
      "--json",
      "--from",
      "2026-06-13",
    ]);
    const account = {
      version: 1,
      followed: false,
      lots: [
        { lot: "apples", eaten: { share: 0.2 }, place: "counter", since: "2026-06-14" },
        { lot: "avocados", ripeness: "ripe", seenGood: true },
        { lot: "half a cut melon", thrownOut: "all" },
      ],
      cameHome: [{ commodity: "kale", grams: 300 }],
      vents: [{ place: "left-drawer", setting: "open" }],
    };
    expect(validated("happened", account)).toBe("valid");
    const files = { "p.json": JSON.stringify(plan), "h.json": JSON.stringify(account) };
    const words = ["carry-on", "p.json", "--happened", "h.json", "--on", "2026-06-15", "--json"];
    expect(validated("carry-on", printed(words, files))).toBe("valid");
  });

  it("hold for a plan that says why", () => {
    const words = [
      "plan",
      "2 kg apples, 2 broccoli, half a cut melon, 3 bananas, green",
      "--json",
      "--days",
      "4",
    ];
    for (const more of [["--why"], ["--why-lot", "broccoli"]]) {
      const plan = printed([...words, ...more]) as { why: { lot: string }[] };
      expect(validated("plan", plan)).toBe("valid");
      expect(plan.why.length).toBe(more.length === 1 ? 4 : 1);
    }
  });

  it("hold for a plan carried out many times, which is the same plan for it", () => {
    const words = ["plan", "1 kg strawberries, 2 avocados, 1 zorb", "--json", "--days", "4"];
    const drawn = printed([...words, "--draws", "20", "--seed", "3"]) as { draws: { seed: number } };
    expect(validated("plan", drawn)).toBe("valid");
    const { draws, ...plan } = drawn;
    expect(draws).toMatchObject({ count: 20, seed: 3 });
    expect(plan).toEqual(printed([...words, "--seed", "3"]));
  });

  it("hold for an arrangement and its judgement", () => {
    const said = {
      version: 1,
      lots: [
        { lot: "half a cut melon", place: "Counter" },
        { lot: "avocados", place: "counter", later: { moveWhen: "ripe", place: "shelf" } },
        { lot: "apples", place: "left-drawer", share: 0.5 },
        { lot: "apples", place: "shelf", share: 0.5, wrap: "paper bag" },
      ],
      vents: [{ place: "left-drawer", setting: "closed" }],
    };
    expect(validated("arrangement", said)).toBe("valid");
    const haul = "2 kg apples, half a cut melon, 3 avocados, 1 kale, 1 zorb";
    const words = ["judge", haul, "--arrangement", "a.json", "--json", "--days", "3"];
    const judgement = printed(words, { "a.json": JSON.stringify(said) });
    expect(validated("judgement", judgement)).toBe("valid");
    expect(judgement).toMatchObject({
      findings: [{ finding: "cut out of refrigerator" }, { finding: "cut uncovered" }],
    });
    expect(validated("error", printed([...words.slice(0, 2), "--arrangement", "gone.json", "--json"]))).toBe(
      "valid",
    );
  });

  it("hold for what changes would save", () => {
    const improved = printed([
      "improve",
      "1 kg kale, 1 bunch of carrots with tops, 1 zorb",
      "-p",
      "1",
      "--json",
    ]);
    expect((improved as { changes: unknown[] }).changes.length).toBeGreaterThan(0);
    expect(validated("improve", improved)).toBe("valid");
  });

  it("hold for what is worth buying, also where nothing is", () => {
    const some = printed(["buy", "1 kg raspberries, 2 apples, 1 zorb", "-p", "1", "-d", "3", "--json"]);
    expect(validated("buy", some)).toBe("valid");
    const nothing = printed(["buy", "half a cut melon, 10 days old", "-p", "1", "-d", "3", "--json"]);
    expect(validated("buy", nothing)).toBe("valid");
    expect(nothing).toMatchObject({ plan: null });
  });

  it("hold for what is taken home, also where something is past its safe day", () => {
    const haul = "2 kg apples, half a cut melon, half a cut cantaloupe 10 days old, 3 avocados";
    for (const command of ["calendar", "labels", "rows"])
      expect(validated(command, printed([command, haul, "--json", "--days", "5"]))).toBe("valid");
    expect(printed(["rows", haul, "--json", "--days", "5"])).toMatchObject({
      stays: expect.arrayContaining([expect.objectContaining({ action: "throw away", eat_by: null })]),
    });
  });

  it("hold for answers about kinds that ripen and kinds that do not", () => {
    for (const name of ["carrot", "banana", "strawberry"]) {
      expect(validated("item", printed(["item", name, "--json"]))).toBe("valid");
    }
  });

  it("hold for every ordinary kitchen, and for errors", () => {
    for (const kitchen of Object.values(ordinaryKitchens))
      expect(validated("kitchen", kitchen)).toBe("valid");
    expect(validated("error", printed(["plan", "", "--json"]))).toBe("valid");
    expect(validated("error", printed(["item", "zorbulon", "--json"]))).toBe("valid");
    expect(validated("error", printed(["plan", "3 zorbulons", "--json"]))).toBe("valid");
  });

  it("refuse what is wrong", () => {
    expect(validated("kitchen", { version: 1, name: "x" })).not.toBe("valid");
    expect(validated("haul", { lots: [] })).not.toBe("valid");
    expect(validated("haul", { lots: [{ id: "a", commodity: "apple", grams: -1 }] })).not.toBe("valid");
    expect(validated("item", { version: 1 })).not.toBe("valid");
    expect(validated("arrangement", { version: 1, lots: [{ lot: "apples" }] })).not.toBe("valid");
    expect(validated("judgement", { version: 1 })).not.toBe("valid");
  });
});
