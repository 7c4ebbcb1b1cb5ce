import type { OrdinaryKitchenKey } from "@keepwright/planner";
import type { Correction, Corrections } from "./corrections.js";

/** Everything the person entered. The plan is computed from it and is not kept. */
export interface PlannerState {
  readonly version: 1;
  readonly text: string;
  readonly corrections: Corrections;
  readonly kitchen: OrdinaryKitchenKey;
  readonly people: number;
  readonly days: number;
  readonly units: "metric" | "us";
}

export type PlannerChange =
  | { readonly change: "text"; readonly text: string }
  | { readonly change: "correct"; readonly key: string; readonly correction: Correction }
  | { readonly change: "as read"; readonly key: string }
  | { readonly change: "kitchen"; readonly kitchen: OrdinaryKitchenKey }
  | { readonly change: "people"; readonly people: number }
  | { readonly change: "days"; readonly days: number }
  | { readonly change: "units"; readonly units: PlannerState["units"] }
  | { readonly change: "replace"; readonly state: PlannerState };

export const peopleRange = { least: 1, most: 12 } as const;
export const dayRange = { least: 3, most: 21 } as const;

function withoutKey(corrections: Corrections, key: string): Corrections {
  const { [key]: _, ...rest } = corrections;
  return rest;
}

/** Corrections of lines that are no longer in the text stay, so that undoing a deletion in the text brings them back. */
export function plannerReducer(state: PlannerState, change: PlannerChange): PlannerState {
  switch (change.change) {
    case "text":
      return { ...state, text: change.text };
    case "correct": {
      const correction = { ...state.corrections[change.key], ...change.correction };
      return { ...state, corrections: { ...state.corrections, [change.key]: correction } };
    }
    case "as read":
      return { ...state, corrections: withoutKey(state.corrections, change.key) };
    case "kitchen":
      return { ...state, kitchen: change.kitchen };
    case "people":
      return { ...state, people: change.people };
    case "days":
      return { ...state, days: change.days };
    case "units":
      return { ...state, units: change.units };
    case "replace":
      return change.state;
  }
}

/** Nothing typed yet. The kitchen, the people and the units stay: they do not change from one haul to the next. */
export const cleared = (state: PlannerState): PlannerState => ({ ...state, text: "", corrections: {} });

/** The example's haul and people, in the kitchen and units already chosen. */
export const opened = (example: PlannerState, state: PlannerState): PlannerState => ({
  ...example,
  kitchen: state.kitchen,
  units: state.units,
});

/** Whether what is on the page is still the example, untouched. */
export const isExample = (state: PlannerState, example: PlannerState): boolean =>
  state.text === example.text && Object.keys(state.corrections).length === 0;
