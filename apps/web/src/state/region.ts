import { type Units, unitsOf } from "@keepwright/handout";
import { type LanguageKey, languageFor } from "./language.js";

/**
 * Regions whose dates and numbers can be asked for in each language, by ISO 3166 code; 419 is the code of UN M49 for Latin America. The first of
 * each is taken where the device names none. Which are offered is a declared preference, no source: those where most speakers of the language
 * live and write dates or numbers differently.
 */
export const regions = {
  en: ["GB", "US", "CA", "AU", "IE", "NZ", "ZA", "IN"],
  es: ["419", "MX", "ES", "US", "AR", "CL", "CO", "PE"],
} as const satisfies Record<LanguageKey, readonly string[]>;

export type Region = (typeof regions)[LanguageKey][number];
/** "device": as the device is set. */
export type RegionChoice = Region | "device";

export const isRegion = (value: unknown): value is Region =>
  Object.values(regions).some((codes) => codes.some((code) => code === value));

interface Parts {
  readonly language: string;
  readonly region: string | undefined;
}

function parts(tag: string): Parts[] {
  try {
    const { language, region } = new Intl.Locale(tag);
    return [{ language, region }];
  } catch {
    return [];
  }
}

/**
 * The BCP 47 tag that dates and numbers are written by. A device set to American Spanish, or to American English while the page speaks Spanish,
 * gives "es-US": the region is the one beside the page's language, else the first that the device names.
 */
export function tagFor(language: LanguageKey, choice: RegionChoice, preferred: readonly string[]): string {
  if (choice !== "device") return `${language}-${choice}`;
  const named = preferred.flatMap(parts).filter(({ region }) => region !== undefined);
  const { region } = named.find((each) => each.language === language) ?? named[0] ?? {};
  return `${language}-${region ?? regions[language][0]}`;
}

/** The mark before decimals in numbers written for a BCP 47 tag. */
export const decimalMarkOf = (tag: string): "." | "," =>
  new Intl.NumberFormat(tag).formatToParts(0.5).some(({ type, value }) => type === "decimal" && value === ",")
    ? ","
    : ".";

/** Where people weigh in pounds and read degrees Fahrenheit: the United States and their territories (ISO 3166 codes; from memory). */
const usUnits: ReadonlySet<string> = new Set(["US", "PR", "GU", "VI", "AS", "MP", "UM"]);
/** Where people read degrees Fahrenheit and weigh in kilograms or both (from memory). */
const fahrenheitAlone: ReadonlySet<string> = new Set(["BS", "BZ", "KY", "PW", "FM", "MH"]);

/** Units of a first visit, by the region that dates and numbers are written for. */
export function unitsFor(preferred: readonly string[]): Units {
  const tag = tagFor(languageFor("device", preferred), "device", preferred);
  const region = parts(tag)[0]?.region ?? "";
  if (usUnits.has(region)) return unitsOf("us");
  return { temperature: fahrenheitAlone.has(region) ? "us" : "metric", mass: "metric" };
}
