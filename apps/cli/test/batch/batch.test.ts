import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readPdf } from "../../../../packages/paper/test/support/readPdf.js";
import { journalName } from "../../src/batch/journal.js";
import { batchOutcomeSchema } from "../../src/output/batchSchema.js";
import { keepwright, root } from "../support/built.js";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "keepwright-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Invented boxes, each with something else in it. */
const row = (number: number) => ({ id: `box-${number}`, haul: `${number} apples, 200 g kale`, days: 4 });
const rows = [
  ...Array.from({ length: 8 }, (_, index) => JSON.stringify(row(index + 1))),
  "{oops",
  '{"id":"box-1","haul":"2 pears"}',
  '{"id":"empty","haul":"nothing that is known"}',
  '{"id":"es","haul":"2 apples, 1 zorb","language":"es","units":"us","large":true,"days":4}',
  "",
];
const options = ["--from", "2026-06-13"];
const batch = (file: string, sheets: string, more: readonly string[] = []) =>
  keepwright(["batch", file, "--sheets", sheets, ...options, ...more]);

const contents = (sheets: string) =>
  Object.fromEntries(
    readdirSync(sheets)
      .filter((name) => name !== journalName)
      .sort()
      .map((name) => [name, readFileSync(join(sheets, name)).toString("base64")]),
  );
const journalOf = (sheets: string) => readFileSync(join(sheets, journalName), "utf8").trimEnd().split("\n");

/** Kills a batch without warning as soon as so many rows are in its list. */
async function killedAfter(count: number, file: string, sheets: string): Promise<void> {
  const words = [
    "apps/cli/bin/keepwright.js",
    "batch",
    file,
    "--sheets",
    sheets,
    ...options,
    "--workers",
    "1",
  ];
  const child = spawn(process.execPath, words, { cwd: root, stdio: "ignore" });
  const ended = new Promise((resolve) => child.once("exit", resolve));
  const list = join(sheets, journalName);
  while (!existsSync(list) || journalOf(sheets).length < count) {
    if (child.exitCode !== null) throw new Error("The batch ended before it could be killed.");
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  child.kill("SIGKILL");
  await ended;
}

describe("keepwright batch", () => {
  it("does every row that can be done, and names the others by line and reason", async () => {
    const file = join(folder, "rows.ndjson");
    const sheets = join(folder, "sheets");
    writeFileSync(file, rows.join("\n"));
    const { code, err } = batch(file, sheets);
    expect(code).toBe(3);
    expect(err).toMatch(/line 9 \(row-9\): Row: .*not valid JSON/);
    expect(err).toMatch(/line 10 \(box-1\): row id “box-1”: line 1 has it too/);
    expect(err).toMatch(/line 11 \(empty\): Nothing in the haul was understood/);
    expect(err).toMatch(/line 12 \(es\): .*zorb/);
    const names = Array.from({ length: 8 }, (_, index) => `box-${index + 1}`).concat("es");
    const files = names.flatMap((name) => [`${name}.pdf`, `${name}.plan.json`]).sort();
    expect(Object.keys(contents(sheets))).toEqual(files);
    const page = await readPdf(new Uint8Array(readFileSync(join(sheets, "es.pdf"))));
    expect([page.language, Math.round(page.size[0]!)]).toEqual(["es-US", 612]);
    const own = join(folder, "own.pdf");
    keepwright(["sheet", join(sheets, "box-3.plan.json"), "--out", own]);
    expect(readFileSync(own).equals(readFileSync(join(sheets, "box-3.pdf")))).toBe(true);
  });

  it("goes on after a kill with nothing lost, nothing doubled, and the same bytes", async () => {
    const file = join(folder, "killed.ndjson");
    writeFileSync(file, rows.slice(0, 8).join("\n"));
    const killed = join(folder, "killed");
    await killedAfter(2, file, killed);
    const before = journalOf(killed).length;
    const { code, out } = batch(file, killed, ["--json"]);
    expect(code).toBe(0);
    for (const line of out.trimEnd().split("\n")) batchOutcomeSchema.parse(JSON.parse(line));
    const outcomes = out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line) as { outcome: string; id: string });
    expect(new Set(outcomes.map(({ id }) => id)).size).toBe(8);
    expect(outcomes.filter(({ outcome }) => outcome === "kept").length).toBeGreaterThanOrEqual(before);
    expect(journalOf(killed)).toHaveLength(8);
    const whole = join(folder, "whole");
    batch(file, whole);
    expect(contents(killed)).toEqual(contents(whole));
  });

  it("makes a row anew when its words changed, and no other", () => {
    const file = join(folder, "changed.ndjson");
    const sheets = join(folder, "changed");
    writeFileSync(file, rows.slice(0, 2).join("\n"));
    batch(file, sheets);
    const before = contents(sheets);
    writeFileSync(file, [rows[0], JSON.stringify({ ...row(2), haul: "3 pears" })].join("\n"));
    const { err } = batch(file, sheets);
    expect(err).toMatch(/made for 1 row.*\n1 row was there already/);
    const after = contents(sheets);
    expect(after["box-1.pdf"]).toBe(before["box-1.pdf"]);
    expect(after["box-2.pdf"]).not.toBe(before["box-2.pdf"]);
  });

  it.each([
    [["batch", "nowhere.ndjson", "--sheets", "x"], /nowhere\.ndjson.*no such file/],
    [["batch", "apps", "--sheets", "x"], /this is a folder/],
    [["batch", "package.json", "--sheets", "package.json"], /this is a file/],
    [["batch", "package.json"], /--sheets/],
    [["batch", "package.json", "--sheets", "x", "--workers", "0"], /--workers/],
  ])("%j is refused with a remedy before anything is written", (words, told) => {
    const { code, err } = keepwright(words);
    expect(code).toBe(2);
    expect(err).toMatch(told);
    expect(existsSync(`${root}x`)).toBe(false);
  });
});
