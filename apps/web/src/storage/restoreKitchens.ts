import {
  airSigns,
  coldSigns,
  cupboardSorts,
  drawerSorts,
  type KitchenAnswers,
  mostDrawers,
  refrigeratorSizes,
  roomSigns,
  type TypedReading,
  wrapIds,
} from "@keepwright/planner";
import type { OwnKitchen } from "../state/plannerState.js";
import {
  type At,
  type Check,
  choice,
  flag,
  group,
  isRecord,
  item,
  list,
  someOf,
  unusable,
  within,
} from "./check.js";
import { checkKitchen } from "./checkKitchen.js";
import type { KitchenDoor } from "./wholeKitchens.js";

const mostKitchens = 100;
const mostWraps = 100;
const longestTyped = 1000;

/** What was typed stays as it was, also where it is empty or will not do. */
const typed: Check<string> = (value, at) =>
  typeof value === "string" ? value : unusable(value, at, { want: "text", most: longestTyped });
const reading = group<TypedReading>({ typed, unit: choice(["°C", "°F"] as const) });

const answerFields = {
  refrigerator: choice(refrigeratorSizes),
  litres: typed,
  drawers: list(choice(drawerSorts), 0, mostDrawers),
  door: flag,
  cold: choice(coldSigns),
  coldReading: reading,
  room: choice(roomSigns),
  roomReading: reading,
  air: choice(airSigns),
  airReading: typed,
  cupboard: choice(cupboardSorts),
  cellar: flag,
  cellarReading: reading,
  balcony: flag,
  balconyReading: reading,
  wraps: list(choice(wrapIds.filter((wrap) => wrap !== "none")), 0, mostWraps),
} satisfies { readonly [field in keyof KitchenAnswers]-?: Check<unknown> };

function ownKitchen(value: unknown, at: At, door: KitchenDoor | undefined): OwnKitchen | undefined {
  if (!isRecord(value)) return unusable(value, at, { want: "group" });
  const key = typed(value.key, within(at, "key"));
  const answers =
    value.answers === undefined
      ? undefined
      : someOf<KitchenAnswers>(value.answers, within(at, "answers"), answerFields);
  const where = within(at, "kitchen");
  const given = checkKitchen(value.kitchen, where);
  const sound = given && (!door || door.agrees(given, where)) ? given : undefined;
  const kitchen = sound ?? (answers && door?.describe(answers, nameOf(value.kitchen)));
  return key !== undefined && kitchen ? { key, kitchen, ...(answers && { answers }) } : undefined;
}

const nameOf = (kitchen: unknown): string =>
  isRecord(kitchen) && typeof kitchen.name === "string" ? kitchen.name : "";

/** Kitchens that can be planned for; each under a key of its own. */
export function restoreKitchens(
  value: unknown,
  at: At,
  door: KitchenDoor | undefined,
): readonly OwnKitchen[] {
  if (value === undefined) return [];
  if (!Array.isArray(value)) {
    unusable(value, at, { want: "list" });
    return [];
  }
  const keys = new Set<string>();
  return value.flatMap((each: unknown, index) => {
    const where = item(at, index);
    if (index >= mostKitchens) {
      unusable(each, where, { want: "length", least: 0, most: mostKitchens });
      return [];
    }
    const own = ownKitchen(each, where, door);
    if (!own) return [];
    if (keys.has(own.key)) {
      unusable(own.key, within(where, "key"), { want: "nothing" });
      return [];
    }
    keys.add(own.key);
    return [own];
  });
}
