import type { Evidence } from "../figures.js";
import type { CommodityFile } from "../fileSchema.js";
import { classes } from "../schema.js";

/** One figure of a kind, as a number on a scale on which errors are alike in size for all kinds. */
export interface Stated {
  readonly value: number;
  readonly evidence: Evidence;
}

/** A figure inferred from relatives, on the quantity's own scale of numbers (not the scale of errors). */
export interface Inferred {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly evidence: Evidence;
}

/** A figure that may be left out of a kind's file. */
export interface Quantity {
  readonly name: string;
  /** "factor": errors are factors (rates, coefficients). "step": errors are differences (temperatures, classes, per cent). */
  readonly scale: "factor" | "step";
  readonly least: number;
  readonly most: number;
  readonly read: (kind: CommodityFile) => Stated | undefined;
}

/** A figure on the scale on which the quantity's errors are alike. */
export const onScale = ({ scale }: Quantity, value: number): number =>
  scale === "factor" ? Math.log(value) : value;
/** The figure that a place on that scale stands for. */
export const offScale = ({ scale }: Quantity, value: number): number =>
  scale === "factor" ? Math.exp(value) : value;

const stated = (value: number | undefined, evidence: Evidence | undefined): Stated | undefined =>
  value === undefined || evidence === undefined ? undefined : { value, evidence };

const middle = (range: { low: number; high: number } | undefined) =>
  range && Math.sqrt(Math.max(range.low, 1e-4) * Math.max(range.high, 1e-4));

/** The rate of a table at one temperature, straight in the logarithm between its rows; none outside the table. */
export function rateAt(rows: CommodityFile["respiration"], celsius: number): Stated | undefined {
  const above = rows?.findIndex((row) => row.temperature >= celsius) ?? -1;
  const upper = rows?.[above];
  if (!rows || !upper) return undefined;
  const lower = upper.temperature === celsius ? upper : rows[above - 1];
  if (!lower) return undefined;
  const share = lower === upper ? 0 : (celsius - lower.temperature) / (upper.temperature - lower.temperature);
  return { value: middle(lower)! ** (1 - share) * middle(upper)! ** share, evidence: upper };
}

/** Temperatures at which a respiration table is inferred: those of Handbook 66 that most tables reach, °C. */
export const respirationTemperatures = [0, 5, 10, 15, 20] as const;

export const respirationAt = (celsius: number): Quantity => ({
  name: `respiration at ${celsius} °C`,
  scale: "factor",
  least: 0.1,
  most: 1000,
  read: ({ respiration }) => rateAt(respiration, celsius),
});

/** Ethylene given off near 20 °C in one state of ripeness; only rows within 2 °C are compared. */
export const productionWhen = (ripeness: "unripe" | "ripe" | "any"): Quantity => ({
  name: `ethylene production (${ripeness})`,
  scale: "factor",
  least: 0.001,
  most: 1000,
  read: ({ ethylene }) => {
    const row = ethylene.production?.find(
      (each) => each.ripeness === ripeness && Math.abs(each.temperature - 20) <= 2,
    );
    return stated(middle(row), row);
  },
});

const classQuantity = (
  name: string,
  read: (kind: CommodityFile) => (Evidence & { class: (typeof classes)[number] }) | undefined,
): Quantity => ({
  name,
  scale: "step",
  least: 0,
  most: classes.length - 1,
  read: (kind) => {
    const found = read(kind);
    return found && { value: classes.indexOf(found.class), evidence: found };
  },
});

const figureQuantity = (
  name: string,
  scale: Quantity["scale"],
  bounds: readonly [number, number],
  read: (kind: CommodityFile) => (Evidence & { value: number }) | undefined,
): Quantity => ({
  name,
  scale,
  least: bounds[0],
  most: bounds[1],
  read: (kind) => {
    const found = read(kind);
    return found && { value: found.value, evidence: found };
  },
});

export const transpiration = figureQuantity(
  "transpiration",
  "factor",
  [0.1, 100_000],
  ({ water }) => water.transpiration,
);
export const maximumLoss = figureQuantity(
  "largest loss of water",
  "factor",
  [1, 60],
  ({ water }) => water.maximumLoss,
);
export const freezingPoint = figureQuantity(
  "freezing point",
  "step",
  [-5, 0],
  ({ storage }) => storage.freezingPoint,
);
export const bulkDensity = figureQuantity(
  "bulk density",
  "factor",
  [15, 1000],
  ({ household }) => household.bulkDensity,
);
export const cutLife = figureQuantity("life once cut", "factor", [0.2, 30], ({ cut }) => cut.life);
export const sensitivity = classQuantity("ethylene sensitivity", ({ ethylene }) => ethylene.sensitivity);
export const proneness = classQuantity("proneness to decay", ({ decay }) => decay.proneness);

const humidityEnd = (end: "low" | "high"): Quantity => ({
  name: `relative humidity (${end})`,
  scale: "step",
  least: 30,
  most: 100,
  read: ({ storage }) => stated(storage.relativeHumidity?.[end], storage.relativeHumidity),
});
export const humidityLow = humidityEnd("low");
export const humidityHigh = humidityEnd("high");

/** Every figure that the rule of relatives can give. */
export const quantities: readonly Quantity[] = [
  ...respirationTemperatures.map(respirationAt),
  productionWhen("unripe"),
  productionWhen("ripe"),
  productionWhen("any"),
  transpiration,
  maximumLoss,
  freezingPoint,
  bulkDensity,
  cutLife,
  sensitivity,
  proneness,
  humidityLow,
  humidityHigh,
];
