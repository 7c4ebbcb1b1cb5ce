import { catalogue, commodityOf } from "@keepwright/catalogue";
import { produceFromCommodity } from "../../src/index.js";
import { type ConstantLife, constantLife } from "../fixtures/constantLife.js";
import { air } from "../fixtures/kinds.js";
import { readTable } from "./readTable.js";

/** A published life: a row of lives.csv with its numbers read. */
export interface PublishedLife {
  readonly kind: string;
  /** Form, cultivar or wrapping published; empty when none is told. */
  readonly detail: string;
  readonly celsius: number;
  /** Shortest and longest life published [d]; 0 or Infinity where only the other end is. */
  readonly low: number;
  readonly high: number;
  /** Relative humidity [0…1] of produce published as unwrapped; undefined: well wrapped. */
  readonly relativeHumidity: number | undefined;
  readonly ripeness: number;
  readonly ethylene: number;
  readonly use: "fit" | "check";
  readonly tolerance: number;
  readonly misfit: string;
  readonly why: string;
  readonly fromMemory: boolean;
  readonly source: string;
}

/** Air around well wrapped produce: water loss is left out, so that only rot of kinds stored dry can see it. */
const wrappedHumidity = 0.985;

/** All rows of lives.csv. */
export const publishedLives = (): PublishedLife[] =>
  readTable("lives").map((row) => ({
    kind: row.kind!,
    detail: row.detail!,
    celsius: Number(row.celsius),
    low: Number(row.low),
    high: row.high === "" ? Number.POSITIVE_INFINITY : Number(row.high),
    relativeHumidity: row.humidity === "" ? undefined : Number(row.humidity) / 100,
    ripeness: row.ripeness === "" ? 1 : Number(row.ripeness),
    ethylene: Number(row.ethylene),
    use: row.use as "fit" | "check",
    tolerance: Number(row.tolerance),
    misfit: row.misfit!,
    why: row.why!,
    fromMemory: row.fromMemory === "yes",
    source: row.source!,
  }));

/** What the model gives for a published life; water loss counts where the publication told the humidity of unwrapped produce. */
export function modelledLife({
  kind,
  celsius,
  relativeHumidity,
  ripeness,
  ethylene,
}: PublishedLife): ConstantLife {
  const conditions = air(celsius, { ethylene, relativeHumidity: relativeHumidity ?? wrappedHumidity });
  return constantLife(produceFromCommodity(commodityOf(catalogue(), kind)), conditions, {
    ripeness,
    leaveOut: relativeHumidity === undefined ? ["water"] : [],
  });
}
