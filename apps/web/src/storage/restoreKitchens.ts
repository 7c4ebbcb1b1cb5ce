import {
  airSigns,
  coldSigns,
  cupboardSorts,
  drawerSorts,
  type Kitchen,
  type KitchenAnswers,
  mostDrawers,
  refrigeratorSizes,
  roomSigns,
  type TypedReading,
  wrapIds,
} from "@keepwright/planner";
import type { OwnKitchen } from "../state/plannerState.js";

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const oneOf = <Word extends string>(words: readonly Word[], value: unknown): Word | undefined =>
  words.find((word) => word === value);
const text = (value: unknown) => (typeof value === "string" ? value : undefined);
const truth = (value: unknown) => (typeof value === "boolean" ? value : undefined);

function reading(value: unknown): TypedReading | undefined {
  if (!isRecord(value) || typeof value.typed !== "string") return undefined;
  return { typed: value.typed, unit: value.unit === "°F" ? "°F" : "°C" };
}

function drawers(value: unknown): KitchenAnswers["drawers"] {
  if (!Array.isArray(value)) return undefined;
  return value.slice(0, mostDrawers).map((each) => oneOf(drawerSorts, each) ?? "unknown");
}

function wraps(value: unknown): KitchenAnswers["wraps"] {
  if (!Array.isArray(value)) return undefined;
  return wrapIds.filter((wrap) => wrap !== "none" && value.includes(wrap)) as Kitchen["wraps"];
}

/** The answers of which something can be made; what cannot counts as not given. */
export function restoreAnswers(saved: unknown): KitchenAnswers | undefined {
  if (!isRecord(saved)) return undefined;
  const answers = {
    refrigerator: oneOf(refrigeratorSizes, saved.refrigerator),
    litres: text(saved.litres),
    drawers: drawers(saved.drawers),
    door: truth(saved.door),
    cold: oneOf(coldSigns, saved.cold),
    coldReading: reading(saved.coldReading),
    room: oneOf(roomSigns, saved.room),
    roomReading: reading(saved.roomReading),
    air: oneOf(airSigns, saved.air),
    airReading: text(saved.airReading),
    cupboard: oneOf(cupboardSorts, saved.cupboard),
    cellar: truth(saved.cellar),
    cellarReading: reading(saved.cellarReading),
    balcony: truth(saved.balcony),
    balconyReading: reading(saved.balconyReading),
    wraps: wraps(saved.wraps),
  };
  return Object.fromEntries(Object.entries(answers).filter(([, value]) => value !== undefined));
}

/** The person's own kitchens; entries that are none are left out. Whether one can be planned with the planner says. */
export function restoreKitchens(value: unknown): readonly OwnKitchen[] {
  if (!Array.isArray(value)) return [];
  return value.flatMap((each: unknown): OwnKitchen[] => {
    if (!isRecord(each) || typeof each.key !== "string") return [];
    const { key, kitchen } = each;
    if (!isRecord(kitchen) || !Array.isArray(kitchen.places)) return [];
    const answers = restoreAnswers(each.answers);
    return [{ key, kitchen: kitchen as unknown as Kitchen, ...(answers && { answers }) }];
  });
}
