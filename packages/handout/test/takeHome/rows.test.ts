import { readFileSync } from "node:fs";
import { type Column, csvText, handoutContext, planRows, rowTables, textOfCell } from "@keepwright/handout";
import type { Plan } from "@keepwright/planner";
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const context = handoutContext(inventedCatalogue);
const columns = [{ name: "one" }, { name: "two" }] as const;

/** What csv-parse, which is none of ours, makes of a text by RFC 4180: lines ended by CR LF alone. */
const read = (text: string): string[][] => parse(text, { record_delimiter: "\r\n" });

describe("rows of a plan", () => {
  const rows = planRows(context, handMadePlan);

  it("are one for each part and stay, and one for each meal", () => {
    const stays = handMadePlan.lots.flatMap(({ id, stays }) => stays.map(({ place }) => `${id} ${place}`));
    expect(rows.stays.map(({ part, place }) => `${part} ${place}`)).toEqual(stays);
    const meals = handMadePlan.lots.flatMap(({ id, eatOn }) => eatOn.map(({ day }) => `${day} ${id}`));
    expect(rows.meals.map(({ part, day }) => `${day} ${part}`).sort()).toEqual(meals.sort());
  });

  it("have the columns of the dictionary, in its order, as JSON and as CSV", () => {
    for (const table of ["stays", "meals"] as const) {
      const names = rowTables[table].map(({ name }) => name);
      for (const row of rows[table]) expect(Object.keys(row).sort()).toEqual([...names].sort());
      const [header, ...lines] = read(
        csvText(rowTables[table] as readonly { name: never }[], rows[table] as never[]),
      );
      expect(header).toEqual(names);
      const cells = rows[table].map((row) =>
        names.map((name) => String((row as Record<string, unknown>)[name] ?? "")),
      );
      expect(lines).toEqual(cells);
    }
  });

  it("are explained column by column in the guide, and in nothing that is not there", () => {
    const guide = readFileSync(new URL("../../../../docs/guide/rows.md", import.meta.url), "utf8");
    const told = [...guide.matchAll(/^\|.*\|$/gm)]
      .map(([line]) => line)
      .filter((line) => line.startsWith("| `"));
    const columns = [...rowTables.stays, ...rowTables.meals].map((column: Column) => {
      const words = column.words ? `: ${column.words.join(", ")}` : "";
      const { name, type, unit = "", empty = "never", meaning } = column;
      return `| \`${name}\` | ${type}${words} | ${unit} | ${empty} | ${meaning} |`;
    });
    expect(told).toEqual(columns);
  });

  it("give what is past its safe day no place, no meal and no day to be eaten by: it is thrown away", () => {
    const lots = handMadePlan.lots.map((lot) =>
      lot.id === "e" ? { ...lot, safeUntil: "past" as const } : lot,
    );
    const { stays, meals } = planRows(context, { ...handMadePlan, lots } as Plan);
    const own = stays.filter(({ part }) => part === "e");
    expect(own).toHaveLength(1);
    expect(own[0]).toMatchObject({
      action: "throw away",
      eat_by: null,
      eat_by_because: "throw away",
      place: null,
    });
    expect(meals.filter(({ part }) => part === "e")).toEqual([]);
  });

  it("give the last safe day where there is one", () => {
    const lots = handMadePlan.lots.map((lot) => (lot.id === "e" ? { ...lot, safeUntil: "2026-06-16" } : lot));
    const { stays } = planRows(context, { ...handMadePlan, lots } as Plan);
    const own = stays.find(({ part }) => part === "e");
    expect(own).toMatchObject({ action: "keep", eat_by: "2026-06-16", eat_by_because: "for safety" });
  });
});

describe("CSV", () => {
  const cell = (text: string) =>
    csvText(columns, [{ one: text, two: 1 }])
      .split("\r\n")
      .slice(1)
      .join("\r\n");

  it("comes back as it was through another's parser, whatever stands in it", () => {
    const text = fc.string({
      unit: fc.constantFrom(..."=+-@'\"',;\t\r\n aé果🥕＝＋|0".split(/(?:)/u)),
      maxLength: 20,
    });
    fc.assert(
      fc.property(fc.array(fc.record({ one: text, two: text }), { maxLength: 5 }), (rows) => {
        const lines = read(csvText(columns, rows));
        expect(lines[0]).toEqual(["one", "two"]);
        expect(lines.slice(1).map((line) => line.map(textOfCell))).toEqual(
          rows.map(({ one, two }) => [one, two]),
        );
      }),
      { numRuns: 500 },
    );
  });

  it.each([
    "=1+1",
    "+1",
    "-2+3",
    "@SUM(A1)",
    "\t=1",
    " =1",
    "\r=1",
    "\n=1",
    "＝1",
    "＠x",
    "'=1",
    '="a","b"',
    "=cmd|' /C calc'!A0",
  ])("never begins a cell of text as a formula: %j", (text) => {
    const line = cell(text);
    expect(line).toMatch(/^"?'/);
    expect(read(`one,two\r\n${line}`)[1]?.[0]).toBe(`'${text}`);
  });

  it("leaves numbers as they are, below nought too, and writes nothing where there is nothing", () => {
    expect(csvText(columns, [{ one: -1.5, two: null }])).toBe("one,two\r\n-1.5,\r\n");
  });

  it("quotes what parts cells, and ends every line with CR LF", () => {
    expect(csvText(columns, [{ one: 'a "b", c', two: "d;e" }])).toBe('one,two\r\n"a ""b"", c","d;e"\r\n');
  });

  it("shows control characters instead of sending them", () => {
    expect(cell("a\u001b[2Jb\ud800")).toBe("a\ufffd[2Jb\ufffd,1\r\n");
  });
});
