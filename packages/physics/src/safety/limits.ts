import type { SafetyLimit } from "@keepwright/catalogue";

/** Limits for cut produce, as plain numbers. Local food-safety codes come first where they are stricter. */
export interface SafetyLimits {
  /** Warmest cold holding [°C]. */
  readonly coldHolding: number;
  /** Days of ready-to-eat produce held cold, the day of preparation counted as the first [d]. */
  readonly readyToEatDays: number;
  /** Hours out of refrigeration; the same in hot surroundings; hot above [h, h, °C]. */
  readonly unrefrigeratedHours: number;
  readonly unrefrigeratedHoursWhenHot: number;
  readonly hotAbove: number;
  /** Hours above cold holding in a warm refrigerator: time alone as the control [h]. */
  readonly timeControlHours: number;
}

/** The catalogue's limits (packages/catalogue/data/safety.json, with sources there) that the model uses, by id. */
export const safetyLimitIds: Record<keyof SafetyLimits, string> = {
  coldHolding: "controlled-cold-holding-at-most",
  readyToEatDays: "cut-ready-to-eat-days",
  unrefrigeratedHours: "refrigerate-cut-within",
  unrefrigeratedHoursWhenHot: "refrigerate-cut-within-when-hot",
  hotAbove: "hot-surroundings-above",
  timeControlHours: "unrefrigerated-cut-at-most",
};

/**
 * The limits without a catalogue at hand, equal to it (a test compares them): FDA Food Code 3-501.16, 3-501.17 and 3-501.19 (from memory),
 * CDC advice on cut produce (2 h; 1 h above 32 °C from memory).
 */
export const usualSafetyLimits: SafetyLimits = {
  coldHolding: 5,
  readyToEatDays: 7,
  unrefrigeratedHours: 2,
  unrefrigeratedHoursWhenHot: 1,
  hotAbove: 32,
  timeControlHours: 4,
};

/** The limits from the catalogue's table. Throws RangeError naming the id when one is missing: a limit is never guessed. */
export function safetyLimitsFrom(table: ReadonlyMap<string, SafetyLimit>): SafetyLimits {
  const limit = (name: keyof SafetyLimits): number => {
    const found = table.get(safetyLimitIds[name]);
    if (!found)
      throw new RangeError(
        `The safety limit "${safetyLimitIds[name]}" is missing. Add it to data/safety.json.`,
      );
    return found.value;
  };
  return {
    coldHolding: limit("coldHolding"),
    readyToEatDays: limit("readyToEatDays"),
    unrefrigeratedHours: limit("unrefrigeratedHours"),
    unrefrigeratedHoursWhenHot: limit("unrefrigeratedHoursWhenHot"),
    hotAbove: limit("hotAbove"),
    timeControlHours: limit("timeControlHours"),
  };
}
