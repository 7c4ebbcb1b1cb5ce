import { appendFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { fingerprint, journalName, openJournal } from "../../src/batch/journal.js";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "keepwright-"));
});
afterEach(() => rmSync(folder, { recursive: true }));
const path = () => join(folder, journalName);

describe("the list of finished rows", () => {
  it("is read back by the next run, the last entry of an id before the others", () => {
    const first = openJournal(folder);
    expect(first.found("a")).toBeUndefined();
    first.add({ id: "a", made: "1", partly: false });
    first.add({ id: "b", made: "2", partly: true });
    first.add({ id: "a", made: "3", partly: false });
    const next = openJournal(folder);
    expect(next.found("a")).toEqual({ id: "a", made: "3", partly: false });
    expect(next.found("b")).toEqual({ id: "b", made: "2", partly: true });
  });

  it("loses only the line that was cut off, and the next entry begins a line of its own", () => {
    openJournal(folder).add({ id: "a", made: "1", partly: false });
    appendFileSync(path(), '{"id":"b","ma');
    const next = openJournal(folder);
    expect(next.found("b")).toBeUndefined();
    next.add({ id: "c", made: "2", partly: false });
    const lines = readFileSync(path(), "utf8").trimEnd().split("\n");
    expect(lines.map((line) => (JSON.parse(line) as { id: string }).id)).toEqual(["a", "c"]);
  });

  it("passes over lines that are something else", () => {
    writeFileSync(path(), 'no json\n[]\n{"id":5}\n{"id":"a","made":"1","partly":false}\n');
    expect(openJournal(folder).found("a")?.made).toBe("1");
  });

  it("knows other words, settings and versions by another fingerprint", () => {
    const marks = [
      fingerprint("1", { days: 5 }, { haul: "x" }),
      fingerprint("1", { days: 6 }, { haul: "x" }),
      fingerprint("2", { days: 5 }, { haul: "x" }),
      fingerprint("1", { days: 5 }, { haul: "y" }),
    ];
    expect(new Set(marks).size).toBe(4);
    expect(fingerprint("1", { days: 5 }, { haul: "x" })).toBe(marks[0]);
  });
});
