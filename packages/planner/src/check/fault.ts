/** What a plan can break, by name. */
export type PlanRule =
  | "shape"
  | "household"
  | "known things"
  | "part names"
  | "grams"
  | "pieces"
  | "state on arrival"
  | "preparation"
  | "stays in order"
  | "move to somewhere"
  | "wrap at hand"
  | "wrap suits"
  | "vents"
  | "litres"
  | "overflow"
  | "portions"
  | "portions a day"
  | "days away"
  | "same thing a day"
  | "ready to eat"
  | "dates"
  | "cut in the refrigerator"
  | "safety limit"
  | "freezing"
  | "cautions"
  | "life"
  | "chance"
  | "waste"
  | "objective"
  | "wish"
  | "replayed move"
  | "replayed ripeness"
  | "replayed life"
  | "replayed ending"
  | "replayed chance"
  | "replayed quality"
  | "replayed waste"
  | "replayed air"
  | "replayed spread"
  | "replayed wish";

/** One thing that is wrong with a plan: which rule, about what, the value found, and what it should have been. */
export interface PlanFault {
  readonly rule: PlanRule;
  /** Id of the part, lot or place, and the day where there is one. */
  readonly what: string;
  readonly value: number | string;
  readonly limit: number | string;
  readonly unit: string;
}

/** Figures that were merely written down and read again agree this closely; anything more is a difference. */
const rounding = 1e-6;

/** Two figures for the same thing, by default alike but for rounding. NaN is like nothing. */
export const alike = (one: number, other: number, relative = rounding, least = rounding): boolean =>
  Math.abs(one - other) <= Math.max(least, relative * Math.max(Math.abs(one), Math.abs(other)));

/** A fault where the value is not the one it should be. */
export const unless = (
  holds: boolean,
  rule: PlanRule,
  what: string,
  value: number | string,
  limit: number | string,
  unit = "",
): PlanFault[] => (holds ? [] : [{ rule, what, value, limit, unit }]);

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
