import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { englishGrade } from "../../../scripts/lib/readingLevel.mjs";
import { keepwright } from "./support/built.js";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "keepwright-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the built command", () => {
  it("plans words, with the kitchen it took for granted, and ends with 0", () => {
    const { code, out, err } = keepwright([
      "plan",
      "2 lb apples, 500 g spinach",
      "--from",
      "2026-06-13",
      "--days",
      "4",
    ]);
    expect(err).toMatch(/Haul read from the words given/);
    expect(code).toBe(0);
    expect(out).toMatch(/an ordinary kitchen/);
    for (const heading of [
      "WHAT WAS UNDERSTOOD",
      "WHERE EACH THING GOES",
      "MOVE LATER",
      "EAT IN THIS ORDER",
      "TAKE CARE",
    ]) {
      expect(out).toContain(heading);
    }
    expect(out).toMatch(/Sat 13 June/);
  });

  it("says why, below the plan, in words as plain as the rest", () => {
    const words = ["plan", "2 kg apples, 2 broccoli, 300 g spinach", "--from", "2026-06-13", "--days", "5"];
    const bare = keepwright(words);
    const { code, out } = keepwright([...words, "--why"]);
    expect(code).toBe(0);
    expect(bare.out).not.toContain("WHY THERE");
    expect(out.startsWith(bare.out)).toBe(true);
    const why = out.slice(out.indexOf("WHY THERE"));
    expect(why).toMatch(/Wrapped another way/);
    expect(why).toMatch(/common\s+practice,\s+no\s+source/);
    const sentences = why.split("\n").slice(1).join(" ").replaceAll(" - ", ". ");
    expect(englishGrade([sentences])).toBeLessThanOrEqual(6);
  });

  it("plans a file and standard input alike, and the same for the same seed", () => {
    const file = join(folder, "haul.txt");
    writeFileSync(file, "1 kg onions\n1 bunch of kale\n");
    const options = ["--from", "2026-06-13", "--json", "--days", "4"];
    const one = keepwright(["plan", file, ...options]);
    const other = keepwright(["plan", "-", ...options], readFileSync(file));
    expect(one.code).toBe(0);
    // With --json too: what is read is told on standard error, and standard output holds nothing but the plan.
    expect(one.err).toMatch(/^Haul read from the file /);
    expect(other.err).toMatch(/^Haul read from standard input\./);
    expect(other.out).toBe(one.out);
  });

  it("plans what it understands, asks about the rest on standard error, and ends with 3", () => {
    const { code, out, err } = keepwright(["plan", "1 kg onions, 3 zorbulons", "--json", "--days", "3"]);
    expect(code).toBe(3);
    expect(err).toMatch(/zorbulon/);
    const plan = JSON.parse(out) as { lots: unknown[]; reading: { items: { kind: string }[] } };
    expect(plan.lots.length).toBeGreaterThan(0);
    expect(plan.reading.items.map(({ kind }) => kind).sort()).toEqual(["lot", "question"]);
  });

  it("prints a kitchen that it takes back as a kitchen file", () => {
    const printed = keepwright(["kitchen", "small", "--json"]);
    const file = join(folder, "kitchen.json");
    writeFileSync(file, printed.out);
    expect(keepwright(["kitchen", "--check", file]).code).toBe(0);
    const planned = keepwright(["plan", "2 apples", "--kitchen", file, "--days", "2"]);
    expect(planned.code).toBe(0);
    expect(planned.out).toMatch(/Kitchen: a small refrigerator without drawers\./);
  });

  it("tells every problem of a kitchen file", () => {
    const file = join(folder, "broken.json");
    writeFileSync(file, JSON.stringify({ version: 1, name: "x", places: [] }));
    const { code, err } = keepwright(["kitchen", "--check", file]);
    expect(code).toBe(2);
    expect(err.trim().split("\n").length).toBeGreaterThan(1);
    const asJson = keepwright(["kitchen", "--check", file, "--json"]);
    expect(JSON.parse(asJson.out)).toMatchObject({ error: { exitCode: 2, ok: false } });
  });

  it("refuses a kitchen that contradicts itself, naming thing, value and remedy", () => {
    const kitchen = JSON.parse(keepwright(["kitchen", "cellar", "--json"]).out);
    const places = kitchen.places.map((place: { id: string }) => ({
      ...place,
      ...(place.id === "shelf" && { litres: 1000 }),
      ...(place.id === "cellar" && { temperature: 40 }),
      ...(place.id === "cupboard-upper" && { lit: true }),
      ...(place.id === "door" && { name: "Left drawer" }),
      ...(place.id === "counter" && { name: " " }),
    }));
    const file = join(folder, "contradictory.json");
    writeFileSync(file, JSON.stringify({ ...kitchen, places }));
    const { code, err } = keepwright(["kitchen", "--check", file]);
    expect(code).toBe(2);
    for (const told of [
      /"counter".*name " "/,
      /"left-drawer".*another place has too/,
      /1008 L of room.*200 L of air/,
      /"cellar".*40 °C in a room of 20 °C/,
      /"cupboard-upper".*"lit": true/,
    ]) {
      expect(err).toMatch(told);
    }
  });

  it("refuses a file that is not text", () => {
    const file = join(folder, "photo.txt");
    writeFileSync(file, new Uint8Array([0xff, 0xd8, 0, 1]));
    const { code, err } = keepwright(["plan", file]);
    expect(code).toBe(2);
    expect(err).toMatch(/not a text file/);
  });

  it("prints help and version with 0; every command's help has examples", () => {
    expect(keepwright(["--version"]).out).toMatch(/^\d+\.\d+\.\d+\n$/);
    for (const words of [
      ["--help"],
      ["plan", "--help"],
      ["judge", "--help"],
      ["improve", "--help"],
      ["buy", "--help"],
      ["item", "--help"],
      ["calendar", "--help"],
      ["labels", "--help"],
      ["rows", "--help"],
      ["kitchen", "--help"],
      ["help", "plan"],
    ]) {
      const { code, out } = keepwright(words);
      expect(code).toBe(0);
      expect(out).toMatch(/Examples:\n {2}keepwright /);
    }
    expect(keepwright(["--help"]).out).toMatch(/Exit codes:/);
  });

  it("judges how a haul lies, what is unsafe told before everything else", () => {
    const file = join(folder, "arrangement.json");
    const lots = [
      { lot: "apples", place: "left-drawer" },
      { lot: "broccoli", place: "left-drawer" },
      { lot: "half a cut cantaloupe", place: "counter" },
    ];
    const vents = [{ place: "left-drawer", setting: "closed" }];
    writeFileSync(file, JSON.stringify({ version: 1, lots, vents }));
    const haul = "2 kg apples, 2 broccoli, half a cut cantaloupe, 1 kg onions, 3 zorbulons";
    const words = ["judge", haul, "--arrangement", file, "--from", "2026-06-13"];
    const { code, out, err } = keepwright(words);
    expect(code).toBe(3);
    expect(err).toMatch(/zorbulon/);
    expect(out.indexOf("PUT THIS RIGHT FIRST")).toBeLessThan(out.indexOf("WHAT WAS UNDERSTOOD"));
    expect(out).toMatch(/Cantaloupe, cut: cut, and not in the refrigerator \(“Counter”\)/);
    expect(out).toMatch(/Put where a plan would put them beside the rest: onions\./);
    expect(out).toMatch(/without apples in the kitchen /);
    expect(out).toMatch(/Expected waste as you have it: /);
    expect(keepwright(words).out).toBe(out);
    expect(keepwright([...words, "--units", "us"]).out).toMatch(/°F/);
  });

  it("says what would help most, in words and in JSON, and asks about what it does not understand", () => {
    const asked = ["900 g spinach, 1 kg kale, 800 g arugula", "--people", "1", "--from", "2026-06-13"];
    const words = keepwright(["improve", ...asked]);
    expect(words.code).toBe(0);
    for (const heading of ["WHAT WAS UNDERSTOOD", "WHAT WOULD HELP MOST", "HOW THIS WAS WORKED OUT"]) {
      expect(words.out).toContain(heading);
    }
    expect(words.out).toMatch(/Expected waste as it is/);
    const partly = keepwright(["improve", "500 g spinach, 3 zorbulons", "--days", "3", "--json"]);
    expect(partly.code).toBe(3);
    expect(partly.err).toMatch(/zorbulon/);
    expect(JSON.parse(partly.out).rule.leastGain).toBe(25);
  });

  it("says how much of a list is worth buying, in words and in JSON", () => {
    const asked = ["1 kg raspberries, 3 kg potatoes, 2 apples", "--people", "1", "--days", "4"];
    const words = keepwright(["buy", ...asked, "--from", "2026-06-13"]);
    expect(words.code).toBe(0);
    for (const heading of ["WHAT WAS UNDERSTOOD", "WHAT TO BUY", "WHAT THAT SAVES", "WHERE EACH THING GOES"])
      expect(words.out).toContain(heading);
    expect(words.out).toMatch(/Raspberries: about \d+ g instead of about 1 kg\./);
    const partly = keepwright([
      "buy",
      "500 g spinach, 3 zorbulons",
      "--days",
      "3",
      "--units",
      "us",
      "--json",
    ]);
    expect(partly.code).toBe(3);
    expect(partly.err).toMatch(/zorbulon/);
    expect(JSON.parse(partly.out).rule.stepGrams).toBeCloseTo(113.4, 1);
  });

  it("answers about one kind, in words and in JSON", () => {
    const words = keepwright(["item", "carrots", "--at", "4"]);
    expect(words.code).toBe(0);
    expect(words.out).toMatch(/^Carrots\n/);
    const { respiration, life } = JSON.parse(keepwright(["item", "carrot", "--at", "5", "--json"]).out);
    expect(respiration.unit).toBe("mg CO2/(kg h)");
    expect(life.early).toBeLessThan(life.late);
  });
});
