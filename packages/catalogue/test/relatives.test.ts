import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { type CommodityFile, catalogue, performanceOf, quantities, relativesSource } from "../src/index.js";
import { inferAmong } from "../src/infer/fromRelatives.js";
import { transpiration } from "../src/infer/quantity.js";
import { withInferred } from "../src/infer/withInferred.js";

const folder = fileURLToPath(new URL("../data/commodities/", import.meta.url));
const files = readdirSync(folder).map(
  (name): CommodityFile => JSON.parse(readFileSync(folder + name, "utf8")),
);

const artefacts = fileURLToPath(new URL("../../../test-artefacts/relatives/", import.meta.url));
const performances = quantities.map((quantity) => performanceOf(files, quantity));
mkdirSync(artefacts, { recursive: true });
writeFileSync(`${artefacts}relatives.json`, `${JSON.stringify(performances, null, 2)}\n`);

describe("the rule of relatives, each published figure left out in turn", () => {
  // Below two dozen figures the share says little: two standard deviations of it are more than 0.15 either way.
  it.each(performances.filter(({ tried }) => tried >= 24))(
    "$quantity: the range of 80 % holds $inside of $tried",
    ({ inside }) => {
      expect(inside).toBeGreaterThan(0.65);
      // A range too wide is on the safe side, one that holds all would say nothing.
      expect(inside).toBeLessThan(0.99);
    },
  );

  it("errs less between near relatives than between any two kinds: transpiration", () => {
    const guess = inferAmong(files);
    const strangers = files.map((kind) => ({
      ...kind,
      family: kind.id,
      organ: "seed" as const,
      skin: "bare" as const,
    }));
    const far = inferAmong(strangers);
    const error = (infer: typeof guess, kinds: readonly CommodityFile[]) => {
      const errors = kinds.flatMap((kind) => {
        const own = transpiration.read(kind);
        const found = own?.evidence.kind === "measured" ? infer(kind, transpiration) : undefined;
        return own && found ? [Math.abs(Math.log(found.value / own.value))] : [];
      });
      return errors.reduce((sum, each) => sum + each, 0) / errors.length;
    };
    expect(error(guess, files)).toBeLessThan(error(far, strangers));
  });
});

describe("what is inferred", () => {
  const bare = (id: string): CommodityFile => {
    const { respiration: _, ...kind } = structuredClone(files.find((each) => each.id === id)!);
    return {
      ...kind,
      water: {},
      ethylene: { injuries: [] },
      cut: { timeTemperatureControl: kind.cut.timeTemperatureControl },
    };
  };
  const others = files.filter(({ id }) => id !== "kale");
  const [kale] = withInferred([bare("kale"), ...others]);

  it("says so, of what, and from memory where a relative's figure is", () => {
    for (const { source, place, kind } of [
      kale!.water.transpiration,
      kale!.ethylene.sensitivity,
      ...kale!.respiration,
    ]) {
      expect(source).toBe(relativesSource);
      expect(place).toMatch(/^Mean of \d+ kinds \(.+\): .+; the rule errs by up to .+ for 80 % of \d+ kinds/);
      expect(kind).toBe("inferred");
    }
  });

  it("has a wider range than it has a middle, and respiration that never falls as it grows warmer", () => {
    const { value, low, high } = kale!.water.transpiration;
    expect(low).toBeLessThan(value);
    expect(high).toBeGreaterThan(value);
    for (const [index, row] of kale!.respiration.entries()) {
      expect(row.low).toBeGreaterThanOrEqual(kale!.respiration[index - 1]?.low ?? 0);
    }
  });

  it("does not depend on the order of kinds, nor rest on what was itself inferred", () => {
    const backwards = withInferred([...others].reverse().concat(bare("kale")));
    expect(backwards.find(({ id }) => id === "kale")).toEqual(kale);
    const withAnother = withInferred([
      bare("kale"),
      bare("collards"),
      ...others.filter(({ id }) => id !== "collards"),
    ]);
    expect(withAnother[0]!.water.transpiration.place).not.toContain("collards");
  });

  it("names kind and quantity where there is nobody to infer from", () => {
    expect(() => withInferred([bare("kale")])).toThrow(/kind "kale": respiration at 0 °C is missing/);
  });

  it("is never taken for a figure that a file states", () => {
    for (const file of files) {
      const whole = catalogue().commodities.get(file.id)!;
      if (file.water.transpiration) expect(whole.water.transpiration).toEqual(file.water.transpiration);
      else expect(whole.water.transpiration.source).toBe(relativesSource);
    }
  });
});
