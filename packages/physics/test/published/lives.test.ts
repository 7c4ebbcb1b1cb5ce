import { describe, expect, test } from "vitest";
import { expectAgreement } from "./expectAgreement.js";
import { modelledLife, type PublishedLife, publishedLives } from "./livesModel.js";
import { record } from "./record.js";

const nameOf = ({ kind, detail, celsius }: PublishedLife) =>
  `life of ${kind}${detail === "" ? "" : ` (${detail})`} at ${celsius} °C`;

const airOf = ({ relativeHumidity }: PublishedLife) =>
  relativeHumidity === undefined ? "" : `unwrapped at ${Math.round(relativeHumidity * 100)} %; `;

const misfitOf = ({ misfit, why }: PublishedLife) =>
  misfit === "" ? "" : `; known misfit${why === "" ? "" : `: ${why}`}`;

const lives = publishedLives();
const checks = lives.filter(({ use }) => use === "check");

describe("published lives at several temperatures", () => {
  test("the table has at least 40 checks of at least 25 kinds, most of them read", () => {
    expect(checks.length).toBeGreaterThanOrEqual(40);
    expect(new Set(checks.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(25);
    expect(checks.filter(({ fromMemory }) => !fromMemory).length).toBeGreaterThanOrEqual(30);
  });

  test("no two rows have one name, no range is upside down, no tolerance is wider than 1.5", () => {
    expect(new Set(lives.map(nameOf)).size).toBe(lives.length);
    for (const life of lives) {
      expect(Math.max(life.low, Number.isFinite(life.high) ? 1 : 0), nameOf(life)).toBeGreaterThan(0);
      expect(life.high, nameOf(life)).toBeGreaterThanOrEqual(life.low);
      expect(life.tolerance, nameOf(life)).toBeLessThanOrEqual(1.5);
    }
  });

  test.each(lives)("$kind $detail at $celsius °C ($use)", (life) => {
    const { days, endedBy } = modelledLife(life);
    const [recorded] = record("lives", [
      {
        room: "keeping quality",
        what: nameOf(life),
        model: days,
        ...(life.low > 0 && { publishedLow: life.low }),
        ...(Number.isFinite(life.high) && { publishedHigh: life.high }),
        unit: "d",
        source: life.source,
        fromMemory: life.fromMemory,
        use: life.use,
        tolerance: life.tolerance,
        note: `${airOf(life)}the model ends it by ${endedBy}${misfitOf(life)}`,
      },
    ]);
    expectAgreement(recorded, life.misfit);
  });
});
