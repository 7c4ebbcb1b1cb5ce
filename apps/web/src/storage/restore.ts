import { type UnitSystem, type Units, unitsOf } from "@keepwright/handout";
import type { Corrections } from "../state/corrections.js";
import { isOrdinary } from "../state/kitchenOf.js";
import { languageKeys } from "../state/language.js";
import { dayRange, type PlannerState, peopleRange, portionRange } from "../state/plannerState.js";
import { isRegion } from "../state/region.js";
import { restoreCorrection } from "./restoreCorrection.js";
import { restoreKitchens } from "./restoreKitchens.js";
import { restoreLying, restoreVents } from "./restoreLying.js";

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const wholeNumber = (value: unknown, range: { least: number; most: number }, otherwise: number): number =>
  typeof value === "number" && Number.isInteger(value) && value >= range.least && value <= range.most
    ? value
    : otherwise;

function restoreCorrections(value: unknown, kinds: ReadonlySet<string>): Corrections {
  if (!isRecord(value)) return {};
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, each]) => {
      const correction = restoreCorrection(each);
      const known = correction?.commodity === undefined || kinds.has(correction.commodity);
      return correction && known ? [[key, correction]] : [];
    }),
  );
}

/** Until version 2 one word stood for both. */
function restoreUnits(value: unknown): Units {
  const known = (each: unknown): UnitSystem => (each === "us" ? "us" : "metric");
  return isRecord(value)
    ? { temperature: known(value.temperature), mass: known(value.mass) }
    : unitsOf(known(value));
}

const words = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((each) => typeof each === "string") : [];

/** What a broken part is replaced by, and the kinds a correction may name. */
export interface RestoreWith {
  readonly otherwise: PlannerState;
  readonly kinds: ReadonlySet<string>;
}

/**
 * The one door for whatever was saved before, by this version or an older one: repairs what can be repaired and keeps
 * the person's words whatever else is broken. Anything that is not a saved state at all gives `otherwise`.
 */
export function restore(saved: unknown, { otherwise, kinds }: RestoreWith): PlannerState {
  if (!isRecord(saved) || typeof saved.text !== "string") return otherwise;
  const kitchens = restoreKitchens(saved.kitchens);
  const known = (key: unknown): key is string =>
    typeof key === "string" && (isOrdinary(key) || kitchens.some((own) => own.key === key));
  return {
    version: 3,
    text: saved.text,
    corrections: restoreCorrections(saved.corrections, kinds),
    kitchen: known(saved.kitchen) ? saved.kitchen : otherwise.kitchen,
    kitchens,
    people: wholeNumber(saved.people, peopleRange, otherwise.people),
    days: wholeNumber(saved.days, dayRange, otherwise.days),
    portions: wholeNumber(saved.portions, portionRange, otherwise.portions),
    away: words(saved.away).filter((day) => /^\d{4}-\d{2}-\d{2}$/.test(day)),
    units: restoreUnits(saved.units),
    language: languageKeys.find((key) => key === saved.language) ?? "device",
    region: isRegion(saved.region) ? saved.region : "device",
    done: words(saved.done),
    lying: restoreLying(saved.lying),
    vents: restoreVents(saved.vents),
  };
}
