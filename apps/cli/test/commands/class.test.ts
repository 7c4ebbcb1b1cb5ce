import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Block, KitChanges, KitRecord } from "@keepwright/handout";
import { twoWaysSchema } from "@keepwright/planner";
import { Ajv2020 } from "ajv/dist/2020.js";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Opened, opened, slidesOf, textBoxes } from "../../../../packages/paper/test/slides/opened.js";
import { readPdf } from "../../../../packages/paper/test/support/readPdf.js";
import { nodeDoor } from "../../src/door/nodeDoor.js";
import { runToEnd } from "../../src/run.js";
import { root } from "../support/built.js";

const folder = mkdtempSync(join(tmpdir(), "keepwright-class-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the command on the machine's own files, in a folder of its own. */
async function tried(request: unknown, into: string, words: readonly string[] = []) {
  const path = join(folder, "class.json");
  writeFileSync(path, typeof request === "string" ? request : JSON.stringify(request));
  const printed = { out: "", err: "" };
  const door = {
    ...nodeDoor(),
    errIsTerminal: false,
    out: (text: string) => {
      printed.out += text;
    },
    err: (text: string) => {
      printed.err += text;
    },
  };
  const code = await runToEnd(["class", path, "--into", join(folder, into), ...words], door);
  return { code, ...printed };
}
const read = (into: string, file: string) => readFileSync(join(folder, into, file));
const json = (into: string, file: string) => JSON.parse(read(into, file).toString());
const digest = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");

function validated(name: string, value: unknown): string {
  const ajv = new Ajv2020({ strict: true, allowUnionTypes: true });
  const validate = ajv.compile(JSON.parse(readFileSync(`${root}schemas/${name}.schema.json`, "utf8")));
  return validate(value) ? "valid" : ajv.errorsText(validate.errors);
}

/** The slides of a file, and the last number of each part that the running sheet names. */
function slideNumbers(file: Opened) {
  const documents: readonly { readonly id: string; readonly blocks: readonly Block[] }[] = json(
    "kit",
    "documents.json",
  ).documents;
  const table = documents
    .find(({ id }) => id === "running-sheet")
    ?.blocks.find((block) => block.block === "table");
  const rows = table?.block === "table" ? table.rows : [];
  return { slides: slidesOf(file), numbers: rows.map((row) => Number(/(\d+)$/.exec(row.at(-1)!)?.[1])) };
}

const request = { version: 1, items: ["apples", "kale"], topics: ["apart", "myths"], minutes: 30 };
let first: Awaited<ReturnType<typeof tried>>;
beforeAll(async () => {
  first = await tried(request, "kit");
});

describe("keepwright class", () => {
  it("writes tagged PDFs for exactly the kinds asked for, and says which", async () => {
    expect([first.code, first.err]).toEqual([0, ""]);
    const files = readdirSync(join(folder, "kit")).sort();
    expect(files.filter((file) => file.startsWith("answer"))).toEqual([
      "answer-apple.pdf",
      "answer-kale.pdf",
    ]);
    expect(first.out).toMatch(/- running-sheet\.pdf \(\d pages?\): How the class runs \(for the host\)/);
    for (const file of files.filter((one) => one.endsWith(".pdf"))) {
      const { marked, language } = await readPdf(new Uint8Array(read("kit", file)));
      expect([marked, language], file).toEqual([true, "en-GB"]);
    }
    expect((await readPdf(new Uint8Array(read("kit", "places.pdf")))).pages).toBe(1);
  });

  it("records what went in, by the published schemas, with digests of the files", () => {
    const record: KitRecord = json("kit", "kit.json");
    expect(validated("class-kit", record)).toBe("valid");
    expect(validated("class-documents", json("kit", "documents.json"))).toBe("valid");
    expect(validated("class-request", request)).toBe("valid");
    expect(record.documents.map(({ file }) => file).sort()).toEqual(
      readdirSync(join(folder, "kit"))
        .filter((file) => file.endsWith(".pdf"))
        .sort(),
    );
    const others = ["two-ways.json", "two-ways.txt", "slides.pptx"];
    expect(record.otherFiles.map(({ file }) => file)).toEqual(others);
    for (const { file, fileDigest } of [...record.documents, ...record.otherFiles])
      expect(digest(read("kit", file))).toBe(fileDigest);
  });

  it("made again is the same to the byte, and says that nothing changed", async () => {
    const before = read("kit", "kit.json");
    const { code, out } = await tried(request, "kit");
    expect([code, out.endsWith("\nNothing changed since this kit was last made.\n")]).toEqual([0, true]);
    expect(read("kit", "kit.json").equals(before)).toBe(true);
    expect(json("kit", "what-changed.json")).toMatchObject({ same: true });
  });

  it("made again for another request names the documents and the kinds, and takes away what is no more in it", async () => {
    // What the catalogue said of kale when the kit was made, changed by hand as an older catalogue's would be.
    const record = json("kit", "kit.json");
    record.catalogue.digest = "0".repeat(64);
    record.items[1].digest = "1".repeat(64);
    writeFileSync(join(folder, "kit", "kit.json"), JSON.stringify(record));
    const { code, out } = await tried({ ...request, items: ["kale", "beet"], minutes: 45 }, "kit", [
      "--json",
    ]);
    expect(code).toBe(0);
    const told: { changes: KitChanges } = JSON.parse(out);
    expect(validated("class", told)).toBe("valid");
    expect(validated("class-changes", json("kit", "what-changed.json"))).toBe("valid");
    const { changes } = told;
    expect(changes).toMatchObject({
      same: false,
      catalogueChanged: true,
      items: { added: ["beet"], removed: ["apple"], changed: ["kale"] },
      documents: { added: [{ id: "answer-beet" }], removed: [{ id: "answer-apple" }] },
    });
    expect(changes.request).toContainEqual({ field: "minutes", before: "30", after: "45" });
    expect(changes.documents.changed.find(({ id }) => id === "places")?.items.sort()).toEqual([
      "apple",
      "beet",
    ]);
    expect(changes.documents.changed.map(({ id }) => id)).not.toContain("answer-kale");
    expect(readdirSync(join(folder, "kit"))).not.toContain("answer-apple.pdf");
    expect(read("kit", "what-changed.txt").toString()).toMatch(
      /catalogue is not the one.*minutes: 30 then, 45 now.*New foods: Beetroots\..*no more in it: Apples.*says something else of: Kale/s,
    );
  });

  it("writes over nothing that somebody changed or put there, and takes up a run that was stopped", async () => {
    writeFileSync(join(folder, "kit", "places.pdf"), "mine");
    const { code, err } = await tried({ ...request, items: ["kale", "beet"], minutes: 45 }, "kit");
    expect(err).toMatch(/places\.pdf”: it was changed since the kit was made\. Move it elsewhere/);
    expect([code, read("kit", "places.pdf").toString()]).toEqual([2, "mine"]);
    rmSync(join(folder, "kit", "places.pdf"));
    rmSync(join(folder, "kit", "kit.json"));
    expect((await tried({ ...request, items: ["kale", "beet"], minutes: 45 }, "kit")).code).toBe(0);
    writeFileSync(join(folder, "kit", "kit.json"), "{}");
    expect((await tried(request, "kit")).err).toMatch(/kit file “.*kit\.json” version: nothing is given/);
  });

  it.each<[string, unknown, RegExp]>([
    [
      "a kind that is not known",
      { version: 1, items: ["zorbulon"] },
      /items\[1\]: “zorbulon”: no kind by this name/,
    ],
    ["nothing it is about", { version: 1 }, /does not say what the class is about/],
    ["both a list and a season", { ...request, season: { month: 6 } }, /both items and season/],
    ["a month that is none", { version: 1, season: { month: 13 } }, /season month: 13\. Write 12 or less/],
    ["a field that is not known", { ...request, colour: "red" }, /Take out "colour"/],
    ["a kitchen that is not known", { ...request, household: { kitchen: "tent" } }, /kitchen: “tent”/],
    ["what is no JSON", "{", /not valid JSON/],
    [
      "a haul not wholly understood",
      { version: 1, household: { haul: "2 kg apples, 1 zorb" } },
      /household haul: not wholly understood\..*zorb/,
    ],
  ])("refuses %s", async (_, wrong, message) => {
    const { code, err } = await tried(wrong, "none");
    expect(err).toMatch(message);
    expect(code).toBe(2);
    expect(readdirSync(folder)).not.toContain("none");
  });

  it("puts the comparison and the slides beside the pages, and names them and the slides of each part", async () => {
    const { evenings, planned } = twoWaysSchema.parse(json("kit", "two-ways.json"));
    expect(evenings.at(-1)?.planned.lost).toBeCloseTo(planned.expectedWaste.value, 6);
    expect(read("kit", "two-ways.txt").toString()).toContain("declared and has no source");
    // How every zip archive begins.
    expect(read("kit", "slides.pptx").subarray(0, 2).toString()).toBe("PK");
    const { slides, numbers } = slideNumbers(await opened(new Uint8Array(read("kit", "slides.pptx"))));
    expect(numbers.at(-1)).toBe(slides.length);
    // The last part is the close: what to take home.
    expect(textBoxes(slides.at(-1)!).find(({ title }) => title)?.lines).toEqual(["To take home"]);
    for (const name of ["two-ways.pdf", "two-ways.json", "two-ways.txt", "slides.pptx"])
      expect(first.out).toContain(name);
  });
});
