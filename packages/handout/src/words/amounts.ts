import {
  fahrenheitFromCelsius,
  gramsPerOunce,
  gramsPerPound,
  litresPerLiquidPint,
} from "@keepwright/quantities";
import type { Speaker } from "./speaker.js";

export const unitSystems = ["metric", "us"] as const;
export type UnitSystem = (typeof unitSystems)[number];

/** Temperatures in one system, and masses and rooms in the same or the other. */
export interface Units {
  /** "metric": °C. "us": °F. */
  readonly temperature: UnitSystem;
  /** "metric": g, kg and L. "us": oz, lb and qt. */
  readonly mass: UnitSystem;
}

/** A system's name stands for all of it. */
export const unitsOf = (units: UnitSystem | Units): Units =>
  typeof units === "string" ? { temperature: units, mass: units } : units;

/**
 * Temperature in °C or °F, to the whole degree: the model's places vary by more than that. With `digits`, as finely as
 * somebody stated it.
 */
export function temperatureWords(
  speaker: Speaker,
  units: UnitSystem | Units,
  celsius: number,
  digits = 0,
): string {
  const us = unitsOf(units).temperature === "us";
  const value = us ? fahrenheitFromCelsius(celsius) : celsius;
  const options = { maximumFractionDigits: digits, signDisplay: "negative" } as const;
  return `${speaker.number(value, options)} ${us ? "°F" : "°C"}`;
}

/** A limit of food safety as it was published: in °F its own figure, in °C the catalogue's to a tenth, which is rounded to the safe side. */
export function limitWords(
  speaker: Speaker,
  units: UnitSystem | Units,
  { value, fahrenheit }: { readonly value: number; readonly fahrenheit?: number | undefined },
): string {
  const us = unitsOf(units).temperature === "us" && fahrenheit !== undefined;
  return us ? `${speaker.number(fahrenheit)} °F` : temperatureWords(speaker, units, value, 1);
}

/** Mass to about two figures: g and kg, or oz and lb. */
export function massWords(speaker: Speaker, units: UnitSystem | Units, grams: number): string {
  const small = (value: number, unit: string) =>
    speaker.number(value, { style: "unit", unit, unitDisplay: "short", maximumSignificantDigits: 2 });
  const large = (value: number, unit: string) =>
    speaker.number(value, {
      style: "unit",
      unit,
      unitDisplay: "short",
      maximumFractionDigits: value < 9.95 ? 1 : 0,
    });
  if (unitsOf(units).mass === "us") {
    return grams < 0.95 * gramsPerPound
      ? small(grams / gramsPerOunce, "ounce")
      : large(grams / gramsPerPound, "pound");
  }
  return grams < 950 ? small(grams, "gram") : large(grams / 1000, "kilogram");
}

/** Room in litres, or US liquid quarts. */
export function roomWords(speaker: Speaker, units: UnitSystem | Units, litres: number): string {
  const us = unitsOf(units).mass === "us";
  const value = us ? litres / (2 * litresPerLiquidPint) : litres;
  const written = speaker.number(
    value,
    value < 10 ? { maximumFractionDigits: 1 } : { maximumFractionDigits: 0 },
  );
  return us
    ? speaker.say("amount.quarts", { value: written })
    : speaker.say("amount.litres", { value: written });
}

/** Relative humidity [%] to the nearest five, and at most 99: still air is seldom known better. */
export const humidityWords = (speaker: Speaker, percent: number): string =>
  speaker.number(Math.min(99, Math.round(percent / 5) * 5) / 100, { style: "percent" });

/** A percentage to the nearest whole. */
export const percentWords = (speaker: Speaker, percent: number): string =>
  speaker.number(Math.round(percent) / 100, { style: "percent" });

/** Lowest ethylene level spoken of; below it one can only say "less". Wills et al. 1999 take it as the floor of its action. */
const leastEthylene = 0.005;

/** Ethylene in the air [µL/L], to one figure. */
export const ethyleneWords = (speaker: Speaker, level: number): string =>
  level < leastEthylene
    ? speaker.say("amount.ethylene.little", { value: leastEthylene })
    : speaker.say("amount.ethylene", { value: speaker.number(level, { maximumSignificantDigits: 1 }) });
