import { celsiusFromFahrenheit } from "@keepwright/quantities";
import { quoted, userError } from "../userError.js";

export interface Bounds {
  readonly least: number;
  readonly most: number;
}

const number = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/;

const written = (text: string): number => Number(text.replace(",", "."));

function within(option: string, text: string, value: number, { least, most }: Bounds, unit: string): number {
  if (value < least || value > most) {
    const range = `${least} to ${most}${unit === "" ? "" : ` ${unit}`}`;
    throw userError(option, quoted(text), `Give a number from ${range}.`);
  }
  return value;
}

/** A number within bounds; a decimal comma is a decimal point. Throws UserError naming the option. */
export function decimalOption(option: string, bounds: Bounds, unit = ""): (text: string) => number {
  return (text) => {
    const bare = text.trim().replace(/\s*%$/, "");
    if (!number.test(bare)) {
      throw userError(
        option,
        quoted(text),
        `Give a number from ${bounds.least} to ${bounds.most} ${unit}.`.replace(" .", "."),
      );
    }
    return within(option, text, written(bare), bounds, unit);
  };
}

/** A whole number within bounds. Throws UserError naming the option. */
export function wholeOption(option: string, bounds: Bounds): (text: string) => number {
  return (text) => {
    if (!/^[+-]?\d{1,15}$/.test(text.trim())) {
      throw userError(option, quoted(text), `Give a whole number from ${bounds.least} to ${bounds.most}.`);
    }
    return within(option, text, Number(text.trim()), bounds, "");
  };
}

/** A temperature [°C]: a bare number or with C is °C, with F is °F. Throws UserError naming the option. */
export function temperatureOption(option: string, bounds: Bounds): (text: string) => number {
  return (text) => {
    const match = /^(.*?)\s*°?\s*([CcFf])?$/.exec(text.trim());
    const bare = match?.[1]?.trim() ?? "";
    if (!number.test(bare)) {
      throw userError(
        option,
        quoted(text),
        "Give a temperature in °C, for example 4, or in °F with an F, for example 40F.",
      );
    }
    const value = match?.[2]?.toUpperCase() === "F" ? celsiusFromFahrenheit(written(bare)) : written(bare);
    return within(option, text, value, bounds, "°C");
  };
}
