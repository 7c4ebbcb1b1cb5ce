import { type Commodity, catalogue, commodityOf } from "@keepwright/catalogue";
import {
  carriedFrom,
  lifeRange,
  lifeSpread,
  produceFromCommodity,
  publishedTime,
  usualSpentSpread,
} from "../../src/index.js";
import { constantLife } from "../fixtures/constantLife.js";
import { air, whole } from "../fixtures/kinds.js";
import { modelledLife, publishedLives } from "./livesModel.js";

/** One published life set against the distribution the model gives for the same kind and conditions. */
export interface Report {
  readonly kind: string;
  readonly room: "recommended conditions" | "other temperatures";
  readonly unwrapped: boolean;
  /** Middle (geometric) of the published range, or the one value published [d]. */
  readonly reported: number;
  /** The model's median life [d] and the standard deviation of ln(life) among lots [1], both without the age on arrival. */
  readonly median: number;
  readonly biology: number;
  /** The published time the model starts from [d] (`publishedTime`). */
  readonly published: number;
}

/** Distance from the recommended range from which a figure is told of another temperature [K]; the same as in the head of lives.csv. */
const otherTemperature = 2;

const middleOf = ({ low, high }: { low: number; high: number }) => Math.sqrt(low * high);

/** Whether the place cited for a figure names a temperature outside the recommended range. */
function toldOfAnotherTemperature(place: string, { storage: { temperature } }: Commodity): boolean {
  const told = /(\d+(?:\.\d+)?)(?:[–-](\d+(?:\.\d+)?))? °C/.exec(place);
  if (!told) return false;
  const celsius = (Number(told[1]) + Number(told[2] ?? told[1])) / 2;
  return celsius <= temperature.low - otherTemperature || celsius >= temperature.high + otherTemperature;
}

/** The model's life at the recommended conditions, from unripe where it ripens, water loss left out; and the time it was worked out from. */
function recommendedLife(commodity: Commodity): Pick<Report, "median" | "published"> {
  const produce = produceFromCommodity(commodity);
  const relativeHumidity = commodity.storage.relativeHumidity.high / 100;
  const conditions = air(produce.storageTemperature, { relativeHumidity });
  const { days, endedBy } = constantLife(produce, conditions, { ripeness: 0, leaveOut: ["water"] });
  return { median: days, published: publishedTime(produce, whole, endedBy, produce.storageTemperature) };
}

/**
 * Rival figures of the storage life, from another source than the default, at the recommended conditions. Kinds whose default was inferred from
 * several sources are left out: their rivals went into it.
 */
export function rivalReports(): Report[] {
  return [...catalogue().commodities.values()].flatMap((commodity) => {
    const { life } = commodity.storage;
    const rivals = (life.rivals ?? []).filter(
      ({ source, place }) => source !== life.source && !toldOfAnotherTemperature(place, commodity),
    );
    if (life.source === "keepwright-inference" || rivals.length === 0) return [];
    const ours = recommendedLife(commodity);
    const { lifeSpread: biology } = produceFromCommodity(commodity);
    return rivals.map((rival) => ({
      kind: commodity.id,
      room: "recommended conditions" as const,
      unwrapped: false,
      reported: middleOf(rival),
      biology,
      ...ours,
    }));
  });
}

/** The checks of lives.csv with two ends; a life of "at least" or "at most" some days says nothing of the other side. */
export const lifeReports = (): Report[] =>
  publishedLives()
    .filter(({ use, low, high }) => use === "check" && low > 0 && Number.isFinite(high))
    .map((life) => {
      const produce = produceFromCommodity(commodityOf(catalogue(), life.kind));
      const { days: median, endedBy } = modelledLife(life);
      return {
        kind: life.kind,
        room: "other temperatures" as const,
        unwrapped: life.relativeHumidity !== undefined,
        reported: middleOf(life),
        median,
        biology: produce.lifeSpread,
        published: publishedTime(produce, whole, endedBy, life.celsius),
      };
    });

/** Standard deviation of ln(life) as a person is shown it for fresh produce at a steady temperature: among lots, and by age on arrival. */
export const shownSpread = ({ biology, median, published }: Report): number =>
  lifeSpread({
    biology,
    temperatureSpread: 0,
    temperatureSlope: 0,
    spent: 0,
    spentSpread: usualSpentSpread,
    carried: carriedFrom(median, published),
  });

/**
 * Whether a kind belongs to the half on which the spread between publications and the model's own were fitted: by the sum of its id's character
 * codes, which has nothing to do with produce and stays as it is when kinds are added.
 */
export const isFitKind = (id: string): boolean =>
  [...id].reduce((sum, letter) => sum + letter.charCodeAt(0), 0) % 2 === 0;

/** The same with other sizes of what publications disagree on and of the model's own error, for fitting them. */
export const spreadWith =
  ({ betweenReports, perCarried }: { betweenReports: number; perCarried: number }) =>
  ({ biology, median, published }: Report): number =>
    Math.hypot(biology, betweenReports, usualSpentSpread, perCarried * carriedFrom(median, published));

/** Standard deviation of ln(life) among lots of one kind alone. */
export const lotSpread = ({ biology }: Report): number => biology;

/** Whether a published life lies inside the range of 80 % about the model's, with a standard deviation of ln(life) [1]. */
export function isInside({ median, reported }: Report, spread: number): boolean {
  const { early, late } = lifeRange({ median, spread });
  return early <= reported && reported <= late;
}
