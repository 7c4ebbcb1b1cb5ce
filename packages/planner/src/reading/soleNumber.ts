import { numberAt } from "./numbers.js";
import { tokensOf } from "./tokens.js";

/** The mark before decimals, as the person's region writes numbers. */
export type DecimalMark = "." | ",";

/**
 * What a mark with three digits behind it means before a unit, as a factor of the number read with an English eye. Before g and kg it is as in
 * a list: nobody weighs thousandths of a gram or thousands of kilograms at home, so there the unit tells, whatever the region. Before any
 * other unit it parts thousands where the region has the other mark before decimals.
 */
function groupFactor(value: number, grouped: "comma" | "point", unit: string, mark: DecimalMark): number {
  if (unit === "g") return grouped === "point" ? 1000 : 1;
  if (unit === "kg") return grouped === "comma" && value % 1000 !== 0 ? 1 / 1000 : 1;
  if (mark === ".") return 1;
  return grouped === "point" ? 1000 : 1 / 1000;
}

/**
 * The number that a text is as a whole, written as in a list: "1,500", "1.5", "1/2", "½", "1 1/2", "two dozen". Undefined where it is none, or only a
 * rough one ("2-3", "a few").
 * @param unit The unit it is written for: "g", "kg", or any other.
 * @param mark The mark before decimals in the person's region.
 */
export function soleNumber(text: string, unit: string, mark: DecimalMark): number | undefined {
  const tokens = tokensOf(text, 0);
  const read = numberAt(tokens, 0);
  if (!read || read.next !== tokens.length || read.exactness !== "exact" || read.unclear) return undefined;
  const { value, grouped } = read;
  // Not 1.234 by a thousandth too much or too little.
  return grouped ? Number((value * groupFactor(value, grouped, unit, mark)).toPrecision(12)) : value;
}
