import type { Column } from "./columns.js";
import type { Entry, LinearModel } from "./linearModel.js";
import { addPlaced, type Placed } from "./placed.js";

/** A condition on what is placed where one option holds: what all of it gives, and what some columns add, is no more, or no less, than a limit. */
export interface Condition {
  readonly limit: number;
  readonly atLeast: boolean;
  /** What the whole lot gives by a column. */
  readonly given: (column: Column) => number;
  /** Columns that are 0 where the option does not hold. */
  readonly terms?: readonly Entry[];
}

/** Options of the air of which one holds, whatever lies where; each with what must hold of what is placed then. */
export interface Axis {
  readonly options: readonly (readonly Condition[])[];
  /** By option: a column of the linear programme, 1 where it holds. */
  readonly shares: readonly number[];
}

/** What a unit costs that a condition is missed by [g]: so much that none is where it can be met, and the programme has a solution whatever it is told of. No bound is too high by it. */
const missingCosts = 1e4;

/** Columns for options of which one holds: relaxed to shares that add up to 1. */
export function shareColumns(model: LinearModel, options: readonly unknown[]): number[] {
  const shares = options.map(() => model.column(0, 1));
  model.row(
    1,
    1,
    shares.map((share): Entry => [share, 1]),
  );
  return shares;
}

/**
 * Parts of a level, one for each option: the level where the option holds, else 0.
 *
 * @param total column of the level
 * @param ranges by option: what it lies between where that holds
 */
export function partColumns(
  model: LinearModel,
  total: number,
  shares: readonly number[],
  ranges: readonly { readonly least: number; readonly most: number }[],
): number[] {
  const sum = model.row(0, 0, [[total, -1]]);
  return shares.map((share, option) => {
    const { least, most } = ranges[option]!;
    const part = model.column(0);
    model.add(sum, part, 1);
    model.row(0, Number.POSITIVE_INFINITY, [
      [part, 1],
      [share, -least],
    ]);
    model.row(Number.NEGATIVE_INFINITY, 0, [
      [part, 1],
      [share, -most],
    ]);
    return part;
  });
}

/** The vent of a box is set the same whichever of two axes of its air tells of it. */
export function ventRows(
  model: LinearModel,
  ones: readonly { readonly setting: unknown }[],
  { shares }: Axis,
  others: readonly { readonly setting: unknown }[],
  { shares: otherShares }: Axis,
): void {
  const settings = new Set([...ones, ...others].map(({ setting }) => setting));
  if (settings.size < 2) return;
  for (const setting of settings) {
    const entries = (
      options: readonly { readonly setting: unknown }[],
      of: readonly number[],
      sign: number,
    ) => options.flatMap((option, at): Entry[] => (option.setting === setting ? [[of[at]!, sign]] : []));
    model.row(0, 0, [...entries(ones, shares, 1), ...entries(others, otherShares, -1)]);
  }
}

/** What of one lot gives the same under every option, and does not pay by option: told apart by option here. */
interface Giver {
  readonly lot: number;
  readonly given: readonly (readonly number[])[];
  readonly placed: Placed[];
}

/** A row for every condition of an option, yet without what is placed. */
const conditionRows = (model: LinearModel, conditions: readonly Condition[], share: number): number[] =>
  conditions.map(({ limit, atLeast, terms = [] }) =>
    model.row(atLeast ? 0 : Number.NEGATIVE_INFINITY, atLeast ? Number.POSITIVE_INFINITY : 0, [
      [share, -limit],
      [model.column(missingCosts), atLeast ? 1 : -1],
      ...terms,
    ]),
  );

/**
 * What must hold of what is placed under each option, in its share. A lot's portions that are placed under an option are no more than its share of the lot: the convex hull of the
 * union of what may be under each (Balas 1979, Annals of Discrete Mathematics 5:3–51; from memory).
 *
 * @param portions by lot
 */
export function axisRows(
  model: LinearModel,
  which: number,
  { options, shares }: Axis,
  placed: readonly Placed[],
  portions: readonly number[],
): void {
  const rows = options.map((conditions, option) => conditionRows(model, conditions, shares[option]!));
  const hereRows = options.map(() => new Map<number, number>());
  const here = (option: number, lot: number): number => {
    const known =
      hereRows[option]!.get(lot) ??
      model.row(Number.NEGATIVE_INFINITY, 0, [[shares[option]!, -portions[lot]!]]);
    hereRows[option]!.set(lot, known);
    return known;
  };
  const givers = new Map<string, Giver>();
  const givenBy = new Map<Column, readonly (readonly number[])[]>();
  for (const one of placed) {
    const { column } = one;
    const { index: lot, portions: all } = column.way.lot;
    let given = givenBy.get(column);
    if (!given) {
      given = options.map((conditions) => conditions.map((condition) => condition.given(column) / all));
      givenBy.set(column, given);
    }
    const option = one.options.get(which);
    if (option !== undefined) {
      addPlaced(here(option, lot), one, 1);
      given[option]!.forEach((value, condition) => {
        addPlaced(rows[option]![condition]!, one, value);
      });
      continue;
    }
    if (given.every((by) => by.every((value) => value === 0))) continue;
    const key = `${lot} ${given.join(";")}`;
    const giver = givers.get(key) ?? { lot, given, placed: [] };
    givers.set(key, giver);
    giver.placed.push(one);
  }
  for (const { lot, given, placed: all } of givers.values()) {
    const together = model.row(0, 0);
    for (const one of all) addPlaced(together, one, -1);
    options.forEach((_, option) => {
      const part = model.column(0);
      model.add(together, part, 1);
      model.add(here(option, lot), part, 1);
      given[option]!.forEach((value, condition) => {
        model.add(rows[option]![condition]!, part, value);
      });
    });
  }
}
