import type { BoundLot } from "../../problem/bindHaul.js";
import type { Lot } from "../../problem/lot.js";
import { dailyLimit } from "../../rules/portionsADay.js";
import { eatingDays, type PartToEat } from "../../schedule/eatingDays.js";
import { gramCost, type PartCosts } from "../../schedule/partCosts.js";
import type { Planned } from "../planned.js";

/** Portions of a lot as a lot of its own; pieces are whole where they are as large as a portion. */
export function shareOf(bound: BoundLot, portions: number): Lot {
  const { lot } = bound;
  const { pieces, ...rest } = lot;
  const share = portions / bound.portions;
  return {
    ...rest,
    grams: lot.grams * share,
    ...(pieces !== undefined && { pieces: Math.max(1, Math.round(pieces * share)) }),
  };
}

/**
 * By how much [share] the chance of being past its best must fall before something is put off to the second day: a sack that keeps for months is bought
 * once. Declared preference, no source.
 */
const leastSaved = 0.05;

/** Cost of a portion [g] eaten so many days after it came home; Infinity before it is ripe, and once it is no longer safe. */
function costAtAge(costs: PartCosts, grams: number, daysAway: readonly number[], age: number): number {
  if (age < costs.readyDay) return Number.POSITIVE_INFINITY;
  if (!Number.isFinite(costs.costs[age]!) && !daysAway.includes(age)) return Number.POSITIVE_INFINITY;
  return grams * gramCost(costs.chancePast[age]!, costs.quality[age]!);
}

/** A part whose portions may come home on either day: each planned day costs what the better of the two costs on it. */
interface EitherShop extends PartToEat {
  /** Whether a portion eaten on a planned day is better bought on the second. */
  readonly second: readonly boolean[];
}

function eitherShop({ prepared, evaluation }: Planned, part: number, day: number): EitherShop {
  const { problem } = prepared;
  const { lot: index, portions } = evaluation.choice.parts[part]!;
  const lot = problem.lots[index]!;
  const costs = evaluation.costs[part]!;
  const { days, daysAway } = problem.household;
  const { chancePast } = costs;
  const later = (on: number): number =>
    on < day || daysAway.includes(on) || chancePast[on]! - chancePast[on - day]! < leastSaved
      ? Number.POSITIVE_INFINITY
      : costAtAge(costs, lot.gramsPerPortion, daysAway, on - day);
  const each = Array.from({ length: days }, (_, on) => ({ first: costs.costs[on]!, second: later(on) }));
  return {
    group: index,
    portions,
    costs: each.map(({ first, second }) => Math.min(first, second)),
    costLeft: costs.costLeft,
    takesPlace: !lot.commodity.household.seasoning,
    dailyLimit: dailyLimit(lot, problem.household),
    second: each.map(({ first, second }) => second < first),
  };
}

/**
 * Portions of each lot that are better bought on the second day, whole pieces together: the cheapest eating days where each portion may come home on
 * either, with the lives the plan gives each part, counted from the day it comes home. What is left over is put off too, unless it keeps.
 */
export function boughtSecond(base: Planned, day: number): number[] {
  const { prepared, evaluation } = base;
  const parts = evaluation.choice.parts.map((_, part) => eitherShop(base, part, day));
  const { eaten, left } = eatingDays(parts, prepared.table, prepared.pace);
  return prepared.problem.lots.map(({ index, portions, splitUnit }) => {
    const second = parts.reduce((sum, part, at) => {
      if (part.group !== index) return sum;
      const late = eaten[at]!.reduce((some, count, on) => some + (part.second[on] ? count : 0), 0);
      const keeps = evaluation.costs[at]!.chancePastLeft <= leastSaved;
      return sum + late + (keeps ? 0 : left[at]!);
    }, 0);
    return Math.min(portions, Math.round(second / splitUnit) * splitUnit);
  });
}
