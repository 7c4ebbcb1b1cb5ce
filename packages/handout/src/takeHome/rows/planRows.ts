import type { Plan, PlannedLot } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import type { HandoutContext } from "../../view/context.js";
import { lotNames, placeNames } from "../../view/names.js";
import { begunPieces } from "../begunPieces.js";
import { goodUntil } from "../goodUntil.js";
import type { mealColumns, stayColumns } from "./columns.js";

/** A value in a row; null where there is none. */
export type Cell = string | number | null;
type RowOf<Columns extends readonly { readonly name: string }[]> = {
  readonly [Name in Columns[number]["name"]]: Cell;
};
export type StayRow = RowOf<typeof stayColumns>;
export type MealRow = RowOf<typeof mealColumns>;

/** A plan as rows of plain values: docs/guide/rows.md says what each is. */
export interface PlanRows {
  readonly version: 1;
  /** Units of the columns that have one. */
  readonly units: Readonly<Record<string, string>>;
  readonly stays: readonly StayRow[];
  readonly meals: readonly MealRow[];
}

export const rowUnits = {
  grams: "g",
  day: "d from the first day",
  portions: "portions",
  left_portions: "portions",
  chance_past_best: "1",
  quality: "1",
} as const;

type Names = ReadonlyMap<string, string>;

const shared = (plan: Plan, { id, lot, commodity }: PlannedLot, names: Names) => ({
  plan_from: plan.from,
  part: id,
  lot,
  kind: commodity,
  name: names.get(id) ?? id,
});

const noStay = {
  place: null,
  place_name: null,
  place_kind: null,
  wrap: null,
  from: null,
  to: null,
  moves_when: null,
} as const;

function stayRows(
  context: HandoutContext,
  plan: Plan,
  lot: PlannedLot,
  names: Names,
  places: Names,
): StayRow[] {
  const { why, date } = goodUntil(context, plan, lot);
  const away = why === "throw away";
  const [piece] = begunPieces(lot);
  const before = { ...shared(plan, lot, names), form: lot.form, grams: lot.grams };
  const after = {
    ready_on: lot.readyOnDay === null ? null : addDays(plan.from, lot.readyOnDay),
    eat_by: away ? null : date,
    eat_by_because: why,
    cut_on: piece?.cut ?? null,
    cut_eat_by: piece?.last ?? null,
    ends_by: lot.endedBy,
    left_portions: lot.leftPortions,
  };
  if (away) return [{ ...before, action: "throw away", stay: 1, ...noStay, ...after }];
  return lot.stays.map((stay, index) => ({
    ...before,
    action: "keep",
    stay: index + 1,
    place: stay.place,
    place_name: places.get(stay.place) ?? stay.place,
    place_kind: stay.placeKind,
    wrap: stay.wrap,
    from: stay.from,
    to: stay.to ?? null,
    moves_when: stay.moveWhen ?? null,
    ...after,
  }));
}

function mealRows(context: HandoutContext, plan: Plan, lot: PlannedLot, names: Names): MealRow[] {
  if (goodUntil(context, plan, lot).why === "throw away") return [];
  return lot.eatOn
    .filter(({ portions }) => portions > 0)
    .map(({ date, day, portions, grams, chancePastBest = null, quality = null }) => ({
      ...shared(plan, lot, names),
      date,
      day,
      portions,
      grams,
      chance_past_best: chancePastBest,
      quality,
    }));
}

/** A plan as rows: each part and stay, and each meal. What may not be eaten any more has no meal, no place and no day to be eaten by. */
export function planRows(context: HandoutContext, plan: Plan): PlanRows {
  const names = lotNames(context, plan);
  const places = placeNames(context, plan);
  return {
    version: 1,
    units: rowUnits,
    stays: plan.lots.flatMap((lot) => stayRows(context, plan, lot, names, places)),
    meals: plan.lots
      .flatMap((lot) => mealRows(context, plan, lot, names))
      .sort((one, other) => Number(one.day) - Number(other.day)),
  };
}
