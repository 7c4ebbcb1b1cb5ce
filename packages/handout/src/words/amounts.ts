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

/** How finely a mass of this size is told. Two figures of kilograms and grams; ounces as people say them. Declared preference, no source. */
function massStep(
  units: UnitSystem | Units,
  grams: number,
): { unit: string; unitGrams: number; step: number } {
  const tenths = (value: number): number => (value < 9.95 ? 0.1 : 1);
  if (unitsOf(units).mass === "us") {
    const ounces = grams / gramsPerOunce;
    if (grams >= 0.95 * gramsPerPound)
      return { unit: "pound", unitGrams: gramsPerPound, step: tenths(grams / gramsPerPound) };
    return { unit: "ounce", unitGrams: gramsPerOunce, step: ounces < 0.75 ? 0.25 : ounces < 3 ? 0.5 : 1 };
  }
  if (grams >= 950) return { unit: "kilogram", unitGrams: 1000, step: tenths(grams / 1000) };
  return { unit: "gram", unitGrams: 1, step: grams < 99.5 ? 1 : 10 };
}

/** Mass in g and kg, or oz and lb, as finely as `massStep` has it; what is there is never told as nothing. A limit is rounded to its safe side by another `round`. */
export function massWords(
  speaker: Speaker,
  units: UnitSystem | Units,
  grams: number,
  round: (steps: number) => number = Math.round,
): string {
  const { unit, unitGrams, step } = massStep(units, grams);
  const value = round(grams / unitGrams / step) * step || (grams > 0 && round === Math.round ? step : 0);
  return speaker.number(value, { style: "unit", unit, unitDisplay: "short", maximumFractionDigits: 2 });
}

/**
 * What a sum of masses is made up of [g], rounded so that the parts as told add up to the whole as told: all to the step of the largest, what
 * is left over by rounding goes to the parts it is nearest to. Parts may be negative. Zero: too little to be told.
 */
export function toldParts(units: UnitSystem | Units, whole: number, parts: readonly number[]) {
  const { unitGrams, step } = massStep(units, Math.max(Math.abs(whole), ...parts.map(Math.abs)));
  const grain = unitGrams * step;
  const steps = parts.map((part) => Math.round(part / grain));
  const total = Math.round(whole / grain);
  const lacking = total - steps.reduce((sum, one) => sum + one, 0);
  const gain = (index: number) => Math.sign(lacking) * (parts[index]! / grain - steps[index]!);
  const order = parts.map((_, index) => index).sort((one, other) => gain(other) - gain(one));
  for (const index of order.slice(0, Math.abs(lacking))) steps[index]! += Math.sign(lacking);
  return { whole: total * grain, parts: steps.map((one) => one * grain) };
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
export const percentWords = (
  speaker: Speaker,
  percent: number,
  round: (percent: number) => number = Math.round,
): string => speaker.number(round(percent) / 100, { style: "percent" });

/** Lowest ethylene level spoken of; below it one can only say "less". Wills et al. 1999 take it as the floor of its action. */
const leastEthylene = 0.005;

/** Ethylene in the air [µL/L], to one figure. */
export const ethyleneWords = (speaker: Speaker, level: number): string =>
  level < leastEthylene
    ? speaker.say("amount.ethylene.little", { value: leastEthylene })
    : speaker.say("amount.ethylene", { value: speaker.number(level, { maximumSignificantDigits: 1 }) });
