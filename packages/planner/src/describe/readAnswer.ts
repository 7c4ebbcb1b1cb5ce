import { celsiusFromFahrenheit } from "@keepwright/quantities";
import { kitchenBounds } from "../problem/kitchen.js";
import type { KitchenQuestion, TypedReading } from "./kitchenAnswers.js";

interface Bounds {
  readonly least: number;
  readonly most: number;
}

/** Why an answer will not do. The kitchen stands there as if it had not been given. */
export type AnswerFault =
  | { readonly question: KitchenQuestion; readonly fault: "not a number"; readonly typed: string }
  /** Beyond what such a thing can be: `least` and `most` in the unit in which it was typed. */
  | ({ readonly question: KitchenQuestion; readonly fault: "beyond"; readonly typed: string } & Bounds & {
        readonly unit: string;
      })
  /** Fresh produce freezes at this temperature [°C]. */
  | { readonly question: KitchenQuestion; readonly fault: "freezes"; readonly celsius: number }
  /** A refrigerator, or its door, as warm as its room or warmer [°C]. */
  | {
      readonly question: KitchenQuestion;
      readonly fault: "as warm as the room";
      readonly celsius: number;
      readonly room: number;
    }
  /** Far warmer than the room, with nothing to heat it [°C]. */
  | {
      readonly question: KitchenQuestion;
      readonly fault: "warmer than the room";
      readonly celsius: number;
      readonly room: number;
    }
  /** Two parts of the kitchen contradict one another in another way; told as the check of kitchens tells it. */
  | { readonly question: KitchenQuestion; readonly fault: "other"; readonly told: string };

/** A number as people write it: a comma for a point, a true minus sign, a unit behind it. Undefined where it is none. */
export function writtenNumber(typed: string): number | undefined {
  const bare = typed
    .trim()
    .replace(/\s*(?:°\s*[CF]?|%|L|l|litres?|liters?|litros?)$/u, "")
    .replace("−", "-")
    .replace(",", ".");
  return /^-?\d+(?:\.\d+)?$/.test(bare) ? Number(bare) : undefined;
}

/** Collects what was read, and what could not be. */
export class AnswerReader {
  readonly faults: AnswerFault[] = [];

  /** The number typed where it is within bounds; otherwise undefined, and a fault. Nothing typed is no fault: it is not known. */
  number(question: KitchenQuestion, typed: string | undefined, bounds: Bounds, unit: string) {
    if (typed === undefined || typed.trim() === "") return undefined;
    const value = writtenNumber(typed);
    if (value === undefined) {
      this.faults.push({ question, fault: "not a number", typed });
      return undefined;
    }
    if (value < bounds.least || value > bounds.most) {
      this.faults.push({ question, fault: "beyond", typed, ...bounds, unit });
      return undefined;
    }
    return value;
  }

  /** A temperature typed in °C or °F, in °C. */
  celsius(question: KitchenQuestion, reading: TypedReading | undefined): number | undefined {
    const { least, most } = kitchenBounds.celsius;
    if (reading?.unit !== "°F") return this.number(question, reading?.typed, { least, most }, "°C");
    const bounds = { least: least * 1.8 + 32, most: most * 1.8 + 32 };
    const fahrenheit = this.number(question, reading.typed, bounds, "°F");
    return fahrenheit === undefined ? undefined : celsiusFromFahrenheit(fahrenheit);
  }
}
