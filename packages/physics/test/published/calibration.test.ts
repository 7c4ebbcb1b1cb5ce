import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { publicationSpread } from "../../src/index.js";
import {
  isFitKind,
  isInside,
  lifeReports,
  lotSpread,
  type Report,
  rivalReports,
  shownSpread,
  spreadWith,
} from "./calibrationReports.js";
import { readTable } from "./readTable.js";

/** Share of published lives a range of 80 % should hold. */
const aim = 0.8;

/** One line of the table of calibration in docs/accuracy.md. */
interface Coverage {
  readonly name: string;
  readonly use: "fit" | "check";
  readonly inside: number;
  readonly of: number;
  readonly aim: number;
  readonly remark: string;
}

const insideOf = (reports: readonly Report[], spread: (report: Report) => number) =>
  reports.filter((report) => isInside(report, spread(report))).length;

function rowsOf(room: string, reports: readonly Report[]): Coverage[] {
  const row = (use: "fit" | "check", name: string, spread: (report: Report) => number): Coverage => {
    const half = reports.filter(({ kind }) => isFitKind(kind) === (use === "fit"));
    const kinds = new Set(half.map(({ kind }) => kind)).size;
    return { name, use, inside: insideOf(half, spread), of: half.length, aim, remark: `${kinds} kinds` };
  };
  return [
    row("check", room, shownSpread),
    row("check", `${room}, spread among lots alone`, lotSpread),
    row("fit", `${room}, kinds fitted on`, shownSpread),
  ];
}

const rivals = rivalReports();
const lives = lifeReports();
const rows = [...rowsOf("recommended conditions", rivals), ...rowsOf("other temperatures", lives)];

const folder = fileURLToPath(new URL("../../../../test-artefacts/calibration/", import.meta.url));
mkdirSync(folder, { recursive: true });
writeFileSync(`${folder}lives.json`, `${JSON.stringify(rows, null, 2)}\n`);

test("there are at least a hundred published lives in all, of at least forty kinds in either room", () => {
  expect(rivals.length + lives.length).toBeGreaterThanOrEqual(100);
  for (const reports of [rivals, lives])
    expect(new Set(reports.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(40);
});

test.each(readTable("calibration"))(
  "$name: the share inside lies where it was measured, $from to $to",
  ({ name, from, to }) => {
    const { inside, of } = rows.find((row) => row.name === name)!;
    expect(inside / of).toBeGreaterThanOrEqual(Number(from));
    expect(inside / of).toBeLessThanOrEqual(Number(to));
  },
);

/** Smallest number, in hundredths, with which the aimed share of the reports lies inside. */
function smallest(reports: readonly Report[], spread: (size: number) => (report: Report) => number): number {
  let hundredths = 0;
  while (insideOf(reports, spread(hundredths / 100)) < aim * reports.length) hundredths += 1;
  return hundredths / 100;
}

test("the spreads in use are those that hold 80 % of the kinds fitted on, to a fifth", () => {
  const fitted = (reports: readonly Report[]) => reports.filter(({ kind }) => isFitKind(kind));
  const betweenReports = smallest(fitted(rivals), (size) =>
    spreadWith({ betweenReports: size, perCarried: 0 }),
  );
  const perCarried = smallest(fitted(lives), (size) => spreadWith({ betweenReports, perCarried: size }));
  expect(publicationSpread.betweenReports / betweenReports).toBeGreaterThan(0.8);
  expect(publicationSpread.betweenReports / betweenReports).toBeLessThan(1.25);
  expect(publicationSpread.perCarried / perCarried).toBeGreaterThan(0.8);
  expect(publicationSpread.perCarried / perCarried).toBeLessThan(1.25);
});
