import { describe, expect, it } from "vitest";
import { readPdf } from "../../../../packages/paper/test/support/readPdf.js";
import { run } from "../../src/run.js";
import { fakeDoor } from "../support/fakeDoor.js";

function tried(words: readonly string[], files: Record<string, string> = {}, input = "") {
  const door = fakeDoor({ files, input, folders: ["here"] });
  return { code: run(words, door), written: door.written, ...door.printed };
}

const haul = "8 apples, 2 hard avocados, 300 g kale, half a cut cantaloupe, 1 kg potatoes";
const usual = ["--from", "2026-06-13", "--days", "6"];
const files = { "plan.json": tried(["plan", haul, "--json", ...usual]).out };
const kitchen = tried(["kitchen", "ordinary", "--json"]).out;

describe("keepwright sheet", () => {
  it("writes one PDF page in which everything is, and says so", async () => {
    const { code, out, err, written } = tried(["sheet", haul, ...usual]);
    expect(code).toBe(0);
    expect(err).toMatch(/^Haul read from the words given/);
    expect(out).toMatch(/^Written: sheet\.pdf \(1 page, ordinary text of [\d.]+ pt\)\.\n$/);
    const { spoken, pages, language } = await readPdf(written["sheet.pdf"]!);
    expect([pages, language]).toEqual([1, "en-GB"]);
    for (const name of ["Apples", "Avocados", "Kale", "Cantaloupe, cut", "Potatoes", "Sat 13 June"]) {
      expect(spoken).toContain(name);
    }
    expect(spoken).toMatch(/8 \(about [\d.]+ k?g\)/);
    expect(spoken).toMatch(/local food-safety authority/);
  });

  it("makes the same page of a plan that was saved, to the byte", () => {
    const fresh = tried(["sheet", haul, ...usual]).written["sheet.pdf"]!;
    const { code, written, err } = tried(["sheet", "plan.json", "--out", "door.pdf"], files);
    expect([code, err]).toEqual([0, "Plan read from the file “plan.json”.\n"]);
    expect(Buffer.from(written["door.pdf"]!).equals(Buffer.from(fresh))).toBe(true);
  });

  it("makes one of a plan that was carried on", () => {
    const words = ["carry-on", "plan.json", "--on", "2026-06-15", "--happened", "ate 2 apples", "--json"];
    const { code, written } = tried(["sheet", "next.json"], { "next.json": tried(words, files).out });
    expect(code).toBe(0);
    expect(Object.keys(written)).toEqual(["sheet.pdf"]);
  });

  it("speaks Spanish, on the paper and in the units asked for, in large print", async () => {
    const words = ["sheet", "plan.json", "--language", "es", "--units", "us", "--large"];
    const found = await readPdf(tried(words, files).written["sheet.pdf"]!);
    expect(found.language).toBe("es-US");
    expect(found.size[0]).toBeCloseTo(612, 1);
    expect(found.spoken).toMatch(/Dónde va cada cosa.*Aguacates.*°F.*autoridad/);
    expect(found.spoken).not.toMatch(/\b(the|and|until|Move|Vent)\b/);
    // Only the number of the page is smaller than large print.
    expect(found.textSizes.filter((size) => size < 18).length).toBeLessThanOrEqual(found.pages);
    const a4 = await readPdf(tried([...words, "--paper", "a4"], files).written["sheet.pdf"]!);
    expect(a4.size[0]).toBeCloseTo(595.28, 1);
  });

  it("tells with 3 that not everything was understood", () => {
    const { code, err, written } = tried(["sheet", "2 kg apples, 1 zorb", ...usual]);
    expect(code).toBe(3);
    expect(err).toMatch(/zorb/);
    expect(written["sheet.pdf"]).toBeDefined();
  });

  it("writes over an older PDF, and over nothing else", () => {
    expect(tried(["sheet", "plan.json"], { ...files, "sheet.pdf": "%PDF-1.7 old" }).code).toBe(0);
    const { code, err, written } = tried(["sheet", "plan.json", "--out", "plan.json"], files);
    expect(code).toBe(2);
    expect(err).toMatch(/“plan\.json”: a file of that name is there and is no PDF\. Choose another name/);
    expect(written).toEqual({});
  });

  it("names the characters of a place that no letter can be printed for", () => {
    const own = kitchen.replace("Left drawer", "左 drawer");
    const { code, err, written } = tried(
      ["sheet", "2 kg apples, 1 broccoli, 300 g kale", "-k", "k.json", ...usual],
      {
        "k.json": own,
      },
    );
    expect(err).toMatch(/sheet: there are no letters to print “左”\. Name the kitchen and its places/);
    expect([code, written]).toEqual([2, {}]);
  });

  it.each<[string, string[], RegExp]>([
    ["paper that is not known", ["plan.json", "--paper", "a5"], /--paper: “a5”\. Give one of: a4, letter\./],
    [
      "a language that is not known",
      ["plan.json", "-l", "fr"],
      /--language: “fr”\. Give one of: en, es\. A region/,
    ],
    ["a folder to write to", ["plan.json", "-o", "here"], /--out “here”: this is a folder/],
    [
      "people, where the plan has settled that",
      ["plan.json", "-p", "3"],
      /--people: it is for a haul, and a plan that is made already was given/,
    ],
    ["a plan that is missing", ["gone.json"], /“gone\.json”: there is no such file/],
    ["a plan that is spoilt", ["spoilt.json"], /days/],
    ["a haul that is empty", [" "], /The haul is empty\. Write what came home/],
  ])("refuses %s", (_, words, message) => {
    const spoilt = JSON.stringify({ ...JSON.parse(files["plan.json"]), days: "ten" });
    const { code, err, written } = tried(["sheet", ...words], { ...files, "spoilt.json": spoilt });
    expect(err).toMatch(message);
    expect([code, written]).toEqual([2, {}]);
  });
});
