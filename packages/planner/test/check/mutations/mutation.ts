import type { CheckRequest, PlanRule } from "../../../src/check/index.js";
import type { Plan, PlannedLot } from "../../../src/problem/plan.js";

/** One way to spoil a valid plan, and the rule that must notice. */
export interface Mutation {
  readonly rule: PlanRule;
  readonly what: string;
  readonly change: (
    plan: Plan,
    request: { -readonly [Key in keyof CheckRequest]: CheckRequest[Key] },
  ) => void;
}

export const part = (plan: Plan, id: string): PlannedLot => plan.lots.find((lot) => lot.id === id)!;
export const place = (plan: Plan, id: string) => plan.places.find((one) => one.place === id)!;

export function moveTo(lot: PlannedLot, to: string, kind: PlannedLot["stays"][number]["placeKind"]): void {
  lot.stays[0]!.place = to;
  lot.stays[0]!.placeKind = kind;
}

/** Moves the only (or first) meal of a part to another day, with its date. */
export function eatOn(lot: PlannedLot, day: number): void {
  lot.eatOn[0]!.day = day;
  lot.eatOn[0]!.date = `2026-06-${13 + day}`;
}
