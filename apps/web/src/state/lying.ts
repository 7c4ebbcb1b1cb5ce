import { type Arrangement, arrangementOfPlan, type Kitchen, type Lot, type Plan } from "@keepwright/planner";
import type { Lying, PlannerState } from "./plannerState.js";
import { isLeftOut, type ReadLine } from "./readLots.js";

/** A lot of the plan with the key of the line it was read from. */
export interface KeyedLot {
  readonly key: string;
  readonly lot: Lot;
}

/** The lots to plan with the keys of their lines. */
export const keyedLots = (lines: readonly ReadLine[]): readonly KeyedLot[] =>
  lines.flatMap((line) => (line.lot && !isLeftOut(line) ? [{ key: line.key, lot: line.lot }] : []));

type Said = Pick<PlannerState, "lying" | "vents">;

const own = <Value>(record: Readonly<Record<string, Value>>, key: string): Value | undefined =>
  Object.hasOwn(record, key) ? record[key] : undefined;

/** Where a lot is said to lie; a place that the kitchen does not have says nothing. */
export function lyingOf({ lying }: Pick<Said, "lying">, key: string, kitchen: Kitchen): Lying | undefined {
  const said = own(lying, key);
  if (said === undefined || said === "as planned") return said;
  return kitchen.places.some(({ id }) => id === said.place) ? said : undefined;
}

const ventsThatTurn = ({ places }: Kitchen) => places.filter(({ vent }) => vent === "choose");

/**
 * What the person said, as an arrangement of these lots in this kitchen. A lot as planned lies in the plan's parts and moves as the plan moves it.
 * Undefined where nothing is said that counts here.
 */
export function arrangementSaid(
  said: Said,
  lots: readonly KeyedLot[],
  kitchen: Kitchen,
  plan: Plan,
): Arrangement | undefined {
  const planned = arrangementOfPlan(plan).lots;
  const placed = lots.flatMap(({ key, lot: { id } }): Arrangement["lots"] => {
    const at = lyingOf(said, key, kitchen);
    if (at === undefined) return [];
    if (at === "as planned") return planned.filter(({ lot }) => lot === id);
    return [{ lot: id, place: at.place, wrap: at.wrap, done: [] }];
  });
  const vents = ventsThatTurn(kitchen).flatMap(({ id }) => {
    const setting = own(said.vents, id);
    return setting === undefined ? [] : [{ place: id, setting }];
  });
  return placed.length + vents.length === 0 ? undefined : { version: 1, lots: placed, vents };
}

/** Everything as in the plan, vents too. */
export const allAsPlanned = (lots: readonly KeyedLot[], plan: Plan): Said => ({
  lying: Object.fromEntries(lots.map(({ key }) => [key, "as planned"])),
  vents: Object.fromEntries(plan.vents.map(({ place, setting }) => [place, setting])),
});

/**
 * Everything in the refrigerator as it comes: the roomiest places first, as far as it fits, the rest wherever there is room; loose, but for
 * what is cut, which stays covered as the plan covers it. Vents are as nobody has touched them. Undefined without a refrigerator.
 */
export function allInRefrigerator(lots: readonly KeyedLot[], kitchen: Kitchen, plan: Plan): Said | undefined {
  const roomiest = (places: Kitchen["places"]) => [...places].sort((one, other) => other.litres - one.litres);
  const cold = roomiest(kitchen.places.filter(({ refrigerator }) => refrigerator !== undefined));
  const warm = roomiest(kitchen.places.filter(({ refrigerator }) => refrigerator === undefined));
  const [first] = cold;
  if (!first) return undefined;
  const left = new Map([...cold, ...warm].map(({ id, litres }) => [id, litres]));
  const lying = lots.map(({ key, lot }): [string, Lying] => {
    const parts = plan.lots.filter((part) => part.lot === lot.id);
    const litres = parts.reduce((sum, part) => sum + part.litres, 0);
    // What is cut belongs in the cold however full it is.
    const place =
      [...cold, ...(lot.form === "cut" ? [] : warm)].find(({ id }) => left.get(id)! >= litres) ?? first;
    left.set(place.id, left.get(place.id)! - litres);
    const wrap = lot.form === "cut" ? (parts[0]?.stays[0]?.wrap ?? "none") : "none";
    return [key, { place: place.id, wrap }];
  });
  return { lying: Object.fromEntries(lying), vents: {} };
}

/** The first place of a lot as it lies, to be drawn: where it is said, or where the plan has it. Undefined where nothing is said. */
export function drawnPlace(said: Lying | undefined, id: string, plan: Plan): string | undefined {
  if (said === undefined) return undefined;
  if (said !== "as planned") return said.place;
  return plan.lots.find(({ lot }) => lot === id)?.stays[0]?.place;
}
