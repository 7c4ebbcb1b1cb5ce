import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { type Compared, drawnHauls, draws } from "./calibrationCases.js";

/** A bin is judged with this many occasions at least. */
const enough = 20;
/** A claim this far off is a misfit. */
const farOff = 0.1;
const binCount = 10;

const hauls = drawnHauls();
const compared = hauls.flatMap((haul) => haul.compared);

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const byPortion = (rows: readonly Compared[], figure: (row: Compared) => number): number =>
  sum(rows.map((row) => row.portions * figure(row))) / sum(rows.map(({ portions }) => portions));
const isFarOff = ({ claimed, observed }: Compared): boolean => Math.abs(claimed - observed) > farOff;

/** Occasions whose claimed chance lies in one tenth. */
function bin(index: number) {
  const rows = compared.filter(
    ({ claimed }) => Math.min(binCount - 1, Math.floor(claimed * binCount)) === index,
  );
  return {
    from: index / binCount,
    to: (index + 1) / binCount,
    occasions: rows.length,
    portions: sum(rows.map(({ portions }) => portions)),
    claimed: byPortion(rows, (row) => row.claimed),
    observed: byPortion(rows, (row) => row.observed),
    farOff: rows.filter(isFarOff).length,
  };
}

const bins = Array.from({ length: binCount }, (_, index) => bin(index));
const rounded = (value: number): number => Number(value.toPrecision(4));
const folder = fileURLToPath(new URL("../../../../test-artefacts/draws/", import.meta.url));
mkdirSync(folder, { recursive: true });
const record = {
  draws,
  examples: hauls.filter(({ isExample }) => isExample).length,
  generated: hauls.filter(({ isExample }) => !isExample).length,
  enough,
  bins,
  misfits: compared.filter(isFarOff),
  hauls: hauls.map(({ compared: _, ...haul }) => haul),
};
writeFileSync(
  `${folder}chances.json`,
  `${JSON.stringify(record, (_, value) => (typeof value === "number" ? rounded(value) : value), 2)}\n`,
);

test("most bins of claimed chances hold enough occasions to be judged", () => {
  expect(bins.filter(({ occasions }) => occasions >= enough).length).toBeGreaterThanOrEqual(8);
});

test.each(bins.filter(({ occasions }) => occasions >= enough))(
  "claimed $from to $to: what is eaten in time is within 0.1 of it",
  ({ claimed, observed }) => expect(Math.abs(claimed - observed)).toBeLessThanOrEqual(farOff),
);

test("single occasions are seldom off by more than 0.1", () => {
  expect(compared.filter(isFarOff).length).toBeLessThanOrEqual(0.05 * compared.length);
});

test("the waste claimed of all hauls together is within a tenth of what is wasted", () => {
  const claimed = sum(hauls.map((haul) => haul.claimed));
  const wasted = sum(hauls.map(({ waste }) => waste.mean));
  expect(Math.abs(claimed / wasted - 1)).toBeLessThan(0.1);
});

test("plans save over unsorted in all hauls together, by more than five standard errors", () => {
  const error = Math.hypot(...hauls.map(({ saved }) => saved.standardError));
  expect(sum(hauls.map(({ saved }) => saved.mean))).toBeGreaterThan(5 * error);
});
