import { twoWaysSchema } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { readPdf } from "../../../../packages/paper/test/support/readPdf.js";
import { run, runToEnd } from "../../src/run.js";
import { fakeDoor } from "../support/fakeDoor.js";

function tried(request: unknown, words: readonly string[] = []) {
  const files = { "class.json": typeof request === "string" ? request : JSON.stringify(request) };
  const door = fakeDoor({ files });
  const code = run(["class", "class.json", "--into", "kit", ...words], door);
  return { code, written: door.written, ...door.printed };
}

const items = ["apples", "kale", "potatoes"];

describe("keepwright class", () => {
  it("writes an answer sheet for each kind and a page of places, as tagged PDFs", async () => {
    const { code, err, written } = tried({ version: 1, items, topics: ["places"] });
    expect([code, err]).toEqual([0, ""]);
    for (const id of ["apple", "kale", "potato"]) {
      const { marked, spoken } = await readPdf(written[`kit/answer-${id}.pdf`]!);
      expect(marked).toBe(true);
      expect(spoken).toMatch(/Where:.*How:.*How long:.*local food-safety authority/);
    }
    const { pages, spoken } = await readPdf(written["kit/places.pdf"]!);
    expect(pages).toBe(1);
    for (const name of ["Apples", "Kale", "Potatoes"]) expect(spoken).toContain(name);
  });

  it.each<[string, unknown, RegExp]>([
    [
      "a kind that is not known",
      { version: 1, items: ["zorbulon"] },
      /items\[1\]: “zorbulon”: no kind by this name/,
    ],
    ["nothing it is about", { version: 1 }, /does not say what the class is about/],
    ["both a list and a season", { version: 1, items, season: { month: 6 } }, /both items and season/],
    ["a month that is none", { version: 1, season: { month: 13 } }, /season month: 13\. Write 12 or less/],
    ["a field that is not known", { version: 1, items, colour: "red" }, /Take out "colour"/],
    ["a kitchen that is not known", { version: 1, items, household: { kitchen: "tent" } }, /kitchen: “tent”/],
    ["what is no JSON", "{", /not valid JSON/],
    [
      "a haul not wholly understood",
      { version: 1, household: { haul: "2 kg apples, 1 zorb" } },
      /household haul: not wholly understood\..*zorb/,
    ],
  ])("refuses %s", (_, request, message) => {
    const { code, err, written } = tried(request);
    expect(err).toMatch(message);
    expect([code, written]).toEqual([2, {}]);
  });
});

describe("keepwright class: the comparison and the slides", () => {
  const files = { "class.json": JSON.stringify({ version: 1, items: ["bananas", "romaine", "potatoes"] }) };
  it("are written beside the pages, and named", async () => {
    const door = fakeDoor({ files });
    expect(await runToEnd(["class", "class.json", "--into", "kit"], door)).toBe(0);
    const { written, printed } = door;
    for (const name of ["two-ways.pdf", "two-ways.json", "two-ways.txt", "slides.pptx"]) {
      expect(printed.out).toContain(`${name}\n`);
      expect(written[`kit/${name}`]?.length).toBeGreaterThan(1000);
    }
    const text = (name: string) => new TextDecoder().decode(written[`kit/${name}`]);
    const { evenings, planned } = twoWaysSchema.parse(JSON.parse(text("two-ways.json")));
    expect(evenings.at(-1)?.planned.lost).toBeCloseTo(planned.expectedWaste.value, 6);
    expect(text("two-ways.txt")).toContain("declared and has no source");
    // How every zip archive begins.
    expect(text("slides.pptx").slice(0, 2)).toBe("PK");
  });
});
