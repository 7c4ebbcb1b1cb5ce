import { type UnitSystem, type Units, unitSystems, unitsOf } from "@keepwright/handout";
import { isOrdinary } from "../state/kitchenOf.js";
import { languageKeys } from "../state/language.js";
import {
  dayRange,
  type OwnKitchen,
  type PlannerState,
  peopleRange,
  portionRange,
} from "../state/plannerState.js";
import { type RegionChoice, regions } from "../state/region.js";
import { type At, type Check, choice, isRecord, number, type Unused, unusable, within } from "./check.js";
import { keptFields } from "./keptFields.js";
import { restoreClass } from "./restoreClass.js";
import { restoreKitchens } from "./restoreKitchens.js";
import {
  fromDay,
  restoreBefore,
  restoreCorrections,
  restoreDays,
  restoreLying,
  restoreMeant,
  restoreVents,
  restoreWords,
} from "./restoreParts.js";
import type { KitchenDoor } from "./wholeKitchens.js";

/** What a broken part is replaced by, and the kinds a correction may name. */
export interface RestoreWith {
  readonly otherwise: PlannerState;
  readonly kinds: ReadonlySet<string>;
  /** Absent before the first paint: then kitchens are checked by their shape alone. */
  readonly kitchenDoor?: KitchenDoor;
}

export interface Restored {
  readonly state: PlannerState;
  /** Everything that could not be used; empty where all of it could. */
  readonly unused: readonly Unused[];
  /** False where it was no saved state at all, and `state` is what was to be opened otherwise. */
  readonly usable: boolean;
}

const system = choice(unitSystems);
const language = choice(["device", ...languageKeys] as const);
const region: Check<RegionChoice> = choice(["device" as const, ...new Set([...regions.en, ...regions.es])]);
const people = number(peopleRange.least, peopleRange.most, { whole: true });
const portions = number(portionRange.least, portionRange.most, { whole: true });
const days = number(dayRange.least, dayRange.most, { whole: true });

/** What a version before did not have is no fault. */
const may = <Value>(value: unknown, check: Check<Value>, at: At, otherwise: Value): Value =>
  value === undefined ? otherwise : (check(value, at) ?? otherwise);

/** Until version 2 one word stood for both. */
function restoreUnits(value: unknown, at: At, otherwise: Units): Units {
  if (!isRecord(value)) {
    const both: UnitSystem | undefined = may<UnitSystem | undefined>(value, system, at, undefined);
    return both ? unitsOf(both) : otherwise;
  }
  return {
    temperature: may(value.temperature, system, within(at, "temperature"), otherwise.temperature),
    mass: may(value.mass, system, within(at, "mass"), otherwise.mass),
  };
}

function restoreKitchen(
  value: unknown,
  at: At,
  kitchens: readonly OwnKitchen[],
  otherwise: PlannerState,
): string {
  const known = (key: unknown): key is string =>
    typeof key === "string" && (isOrdinary(key) || kitchens.some((own) => own.key === key));
  if (value !== undefined && !known(value)) unusable(value, at, { want: "known kitchen" });
  return known(value) ? value : otherwise.kitchen;
}

/** Versions in which this state has been kept; what was kept before they were counted has none. */
const versions: readonly unknown[] = [1, 2, 3, 4, 5];

const fields: ReadonlySet<string> = new Set(["version", ...keptFields]);

/**
 * The one door for whatever was saved before, by this version or an older one: repairs what can be repaired, keeps the person's words whatever
 * else is broken, and tells everything that it could not use.
 */
export function restoreAll(saved: unknown, { otherwise, kinds, kitchenDoor }: RestoreWith): Restored {
  const unused: Unused[] = [];
  const whole: At = { field: "", report: (each) => unused.push(each) };
  const at = (name: keyof PlannerState): At => within(whole, name);
  if (!isRecord(saved)) {
    unusable(saved, whole, { want: "group" });
    return { state: otherwise, unused, usable: false };
  }
  if (typeof saved.text !== "string") {
    unusable(saved.text, at("text"), { want: "text", most: Number.MAX_SAFE_INTEGER });
    return { state: otherwise, unused, usable: false };
  }
  for (const key of Object.keys(saved))
    if (!fields.has(key)) unusable(saved[key], within(whole, key), { want: "nothing" });
  if (saved.version !== undefined && !versions.includes(saved.version))
    unusable(saved.version, at("version"), { want: "choice", choices: versions.map(String) });
  const kitchens = restoreKitchens(saved.kitchens, at("kitchens"), kitchenDoor);
  const state: PlannerState = {
    version: 5,
    text: saved.text,
    corrections: restoreCorrections(saved.corrections, at("corrections"), kinds),
    // Until version 4 every list was asked about anew.
    meant: restoreMeant(saved.meant, at("meant"), kinds),
    kitchen: restoreKitchen(saved.kitchen, at("kitchen"), kitchens, otherwise),
    kitchens,
    people: may(saved.people, people, at("people"), otherwise.people),
    days: may(saved.days, days, at("days"), otherwise.days),
    portions: may(saved.portions, portions, at("portions"), otherwise.portions),
    away: restoreDays(saved.away, at("away")),
    units: restoreUnits(saved.units, at("units"), otherwise.units),
    language: may(saved.language, language, at("language"), "device"),
    region: may(saved.region, region, at("region"), "device"),
    done: restoreWords(saved.done, at("done")),
    lying: restoreLying(saved.lying, at("lying")),
    vents: restoreVents(saved.vents, at("vents")),
    chosen: restoreLying(saved.chosen, at("chosen")),
    // Until version 3 every plan began today.
    from: may(saved.from, fromDay, at("from"), "today"),
    before: restoreBefore(saved.before, at("before")),
    missed: restoreWords(saved.missed, at("missed")),
    classForm: restoreClass(saved.classForm, at("classForm")),
  };
  return { state, unused, usable: true };
}

/** The state alone. */
export const restore = (saved: unknown, how: RestoreWith): PlannerState => restoreAll(saved, how).state;
