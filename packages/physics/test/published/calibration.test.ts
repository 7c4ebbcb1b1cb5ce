import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { catalogue } from "@keepwright/catalogue";
import { normalNinetiethPercentile } from "@keepwright/quantities";
import { expect, test } from "vitest";
import {
  isInside,
  lifeReports,
  lotSpread,
  type Report,
  rivalReports,
  shownSpread,
} from "./calibrationReports.js";
import { readTable } from "./readTable.js";

/** Share of published lives a range of 80 % should hold. */
const aim = 0.8;

/** One line of the table of calibration in docs/accuracy.md. */
interface Coverage {
  readonly name: string;
  readonly inside: number;
  readonly of: number;
  readonly aim: number;
  readonly remark: string;
}

type Spread = (report: Report) => number;

const coverage = (name: string, remark: string, reports: readonly Report[], spread: Spread): Coverage => ({
  name,
  inside: reports.filter((report) => isInside(report, spread(report))).length,
  of: reports.length,
  aim,
  remark,
});

/** Smallest factor on the spread with which the aimed share of the reports lies inside. */
function neededFactor(reports: readonly Report[]): number {
  const needed = reports
    .map(
      (report) =>
        Math.abs(Math.log(report.reported / report.median)) / normalNinetiethPercentile / shownSpread(report),
    )
    .sort((one, other) => one - other);
  return needed[Math.ceil(aim * needed.length) - 1]!;
}

const kinds = [...catalogue().commodities.keys()].sort();
/** Kinds at even positions fit the factor, the others check it. */
const fits = ({ kind }: Report) => kinds.indexOf(kind) % 2 === 0;

function rowsOf(room: string, reports: readonly Report[]): { rows: Coverage[]; factor: number } {
  const factor = neededFactor(reports.filter(fits));
  const scaled = `its spread × ${factor.toFixed(2)}, which holds 80 % of the other half of the kinds`;
  const others = reports.filter((report) => !fits(report));
  const told = `${new Set(reports.map(({ kind }) => kind)).size} kinds; the range shown: among lots and by age on arrival`;
  return {
    factor,
    rows: [
      coverage(room, told, reports, shownSpread),
      coverage(
        `${room}, lots alone`,
        "the published range of the kind, without age on arrival",
        reports,
        lotSpread,
      ),
      coverage(`${room}, second half of the kinds`, "as shown", others, shownSpread),
      coverage(
        `${room}, second half of the kinds, scaled`,
        scaled,
        others,
        (report) => factor * shownSpread(report),
      ),
    ],
  };
}

const rivals = rivalReports();
const lives = lifeReports();
const recommended = rowsOf("recommended conditions", rivals);
const other = rowsOf("other temperatures", lives);
const unwrapped = lives.filter((report) => report.unwrapped);
const rows = [
  ...recommended.rows,
  ...other.rows,
  coverage("other temperatures, unwrapped", "water loss counts", unwrapped, shownSpread),
];

const folder = fileURLToPath(new URL("../../../../test-artefacts/calibration/", import.meta.url));
mkdirSync(folder, { recursive: true });
writeFileSync(`${folder}lives.json`, `${JSON.stringify(rows, null, 2)}\n`);

const measured: Record<string, number> = {
  ...Object.fromEntries(rows.map(({ name, inside, of }) => [name, inside / of])),
  "recommended conditions, factor": recommended.factor,
  "other temperatures, factor": other.factor,
};

test("there are at least a hundred published lives in all, of at least forty kinds in either room", () => {
  expect(rivals.length + lives.length).toBeGreaterThanOrEqual(100);
  for (const reports of [rivals, lives])
    expect(new Set(reports.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(40);
});

test.each(readTable("calibration"))(
  "$name lies where it was measured, $from to $to",
  ({ name, from, to }) => {
    expect(measured[name!], name).toBeGreaterThanOrEqual(Number(from));
    expect(measured[name!], name).toBeLessThanOrEqual(Number(to));
  },
);
