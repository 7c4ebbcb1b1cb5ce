/** Where the spread of a life comes from. */
export interface SpreadCauses {
  /** Standard deviation of ln(life) among lots of one kind [1], from the published range taken as 10 % and 90 %. */
  readonly biology: number;
  /** Standard deviation of the place's temperature over places and days [K]. */
  readonly temperatureSpread: number;
  /** d ln(life)/dT at the place's temperature [1/K]; its sign does not matter. */
  readonly temperatureSlope: number;
  /** Share of life spent on arrival [1, below 1], and its standard deviation [1]. */
  readonly spent: number;
  readonly spentSpread: number;
  /** How far the model has carried the life from the published one: |ln(life / published time)| [1, ≥ 0] (`carriedFrom`, `publishedTime`). */
  readonly carried: number;
}

/**
 * Standard deviations of ln(life) that come of what is published, not of lots [1]. Both are fitted so that the 80 % range holds 80 % of published lives of
 * one half of the kinds; the other half checks them (packages/physics/test/published/calibration.test.ts).
 */
export const publicationSpread = {
  /** Between two publications on one kind at its recommended conditions: they mean different cultivars, ages and ends. */
  betweenReports: 0.47,
  /** For each factor of e by which the model carries a life away from the published one: its own error. */
  perCarried: 0.47,
} as const;

/** How far a life [d] lies from the published one [d] it was worked out from: |ln| of their ratio; 0 where either has no end. */
export function carriedFrom(life: number, published: number): number {
  const carried = Math.abs(Math.log(life / published));
  return Number.isFinite(carried) ? carried : 0;
}

/**
 * Standard deviation of the share of life spent before a lot comes home [1].
 *
 * Inferred: two days more or less in shop and transport, on a life of about two weeks.
 */
export const usualSpentSpread = 0.12;

/**
 * Standard deviation of ln(life left) [1]: the causes taken as independent, their variances added.
 *
 * Temperature enters by the slope of ln(life), age by d ln(1 − spent) = −d spent / (1 − spent): the later in life, the less sure. Spent is held below
 * 0.95. What publications disagree on and the model's own error are counted too (`publicationSpread`). Log-normal because life is a product of many factors, is never negative and has a long late tail; published as a range only, it cannot be told
 * from a Weibull. Inferred as a whole; the biology is published.
 */
export function lifeSpread({
  biology,
  temperatureSpread,
  temperatureSlope,
  spent,
  spentSpread,
  carried,
}: SpreadCauses): number {
  const byTemperature = temperatureSpread * temperatureSlope;
  const byAge = spentSpread / (1 - Math.min(0.95, spent));
  const byModel = publicationSpread.perCarried * carried;
  return Math.hypot(biology, publicationSpread.betweenReports, byTemperature, byAge, byModel);
}

/** Slope of ln(life) with temperature [1/K], from lives [d, > 0] at two temperatures [°C]. */
export const lifeTemperatureSlope = (
  life: number,
  celsius: number,
  otherLife: number,
  otherCelsius: number,
): number => Math.log(otherLife / life) / (otherCelsius - celsius);
