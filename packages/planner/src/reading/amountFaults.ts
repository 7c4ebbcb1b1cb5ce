import type { Commodity } from "@keepwright/catalogue";
import type { Amount } from "./amounts.js";
import type { Question } from "./reading.js";
import type { Weighed } from "./weigh.js";

export type AmountFault = Extract<Question, { ask: "how much" }>;

const mostGrams = 200_000;
const mostPieces = 10_000;
/** Less than this share of the smallest unit a kind has ("leaf", "each small") is no kitchen's amount of it. Inferred. */
const leastOfUnit = 0.02;
/** Nor is less than this of anything: about half a small leaf. Inferred. */
const leastGrams = 0.5;
/** Nor is a smaller share of one piece, bunch or bag. Inferred. */
const leastOfOne = 0.05;

const isByScale = ({ unit }: Amount) => unit?.of === "mass" || unit?.of === "volume";

/**
 * A count that nobody counts so: a price ("2.99"), thousandths, a tenth of a piece. Halves may be written with a point;
 * quarters and thirds only below one, of one thing.
 */
function isNoCount(amount: Amount, plural: boolean): boolean {
  if (isByScale(amount)) return false;
  const decimals = amount.decimals ?? 0;
  const halves = amount.count % 0.5 === 0;
  const aPart = amount.count < 1 && !plural && [0.25, 0.33, 0.66, 0.67, 0.75].includes(amount.count);
  if (amount.unit) return decimals > 2;
  return decimals > 2 || (decimals === 2 && !aPart) || (decimals === 1 && !halves);
}

function isTooLittle(amount: Amount, weighed: Weighed, { household }: Commodity): boolean {
  if (!isByScale(amount)) return amount.count < leastOfOne;
  return (
    weighed.grams < Math.max(leastGrams, leastOfUnit * Math.min(...household.units.map((unit) => unit.grams)))
  );
}

/** "Half of the pears", "½ pears": half of how many? */
const isHalfOfSeveral = (amount: Amount, plural: boolean) =>
  plural &&
  amount.count > 0 &&
  amount.count < 1 &&
  !amount.unit &&
  !amount.article &&
  (amount.definite === true || !amount.divided);

/** An amount that cannot be taken as it stands, though it is neither nothing nor too much. */
const isUnclear = (amount: Amount, plural: boolean) =>
  amount.unclear === true ||
  (amount.share === true && amount.count > 1) ||
  isHalfOfSeveral(amount, plural) ||
  isNoCount(amount, plural);

/** Why an amount cannot be taken, as the question to ask; undefined when it can. `plural`: several were named. */
export function faultOf(
  amount: Amount | undefined,
  weighed: Weighed | "unknown unit",
  commodity: Commodity,
  plural = false,
): AmountFault | undefined {
  const fault = (reason: AmountFault["reason"], units?: readonly string[]): AmountFault => ({
    ask: "how much",
    reason,
    word: amount?.unit?.word ?? commodity.names.en.one,
    ...(units ? { units } : {}),
  });
  if (amount?.negative) return fault("negative");
  if (amount?.count === 0) return fault("zero");
  if (amount && isUnclear(amount, plural)) return fault("no amount");
  if (weighed === "unknown unit")
    return fault(
      "unknown unit",
      commodity.household.units.map((unit) => unit.name),
    );
  if (!Number.isFinite(weighed.grams) || weighed.grams > mostGrams || (weighed.pieces ?? 0) > mostPieces)
    return fault("too large");
  if (amount && isTooLittle(amount, weighed, commodity)) return fault("no amount");
  return weighed.grams > 0 ? undefined : fault("zero");
}
