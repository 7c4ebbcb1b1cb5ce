import type { Kitchen } from "../problem/kitchen.js";

/** The questions that a kitchen is described by, in the order in which they are asked. */
export const kitchenQuestions = [
  "refrigerator",
  "drawers",
  "door",
  "cold",
  "room",
  "air",
  "cupboard",
  "cellar",
  "wraps",
] as const;
export type KitchenQuestion = (typeof kitchenQuestions)[number];

/** How large: none at all, by the height of a person, or by the litres told on it. */
export const refrigeratorSizes = ["none", "hip", "shoulder", "overhead", "litres"] as const;
/** Whether air can be let into a drawer. */
export const drawerSorts = ["slide", "plain", "unknown"] as const;
/** What happens in the refrigerator, or that it was read. */
export const coldSigns = ["freezes", "ordinary", "turns", "reading"] as const;
export const roomSigns = ["cool", "ordinary", "hot", "reading"] as const;
export const airSigns = ["dry", "ordinary", "damp", "reading"] as const;
export const cupboardSorts = ["none", "cool", "warm"] as const;
export const mostDrawers = 4;

/** A reading as it was typed, so that one that will not do is not lost, and its unit does not change when the display's does. */
export interface TypedReading {
  readonly typed: string;
  readonly unit: "°C" | "°F";
}

/**
 * What a person said of their kitchen. What is absent they did not say or do not know: there the ordinary kitchen stands.
 * Whatever was typed stays, also beside another answer chosen later.
 */
export interface KitchenAnswers {
  readonly refrigerator?: (typeof refrigeratorSizes)[number];
  readonly litres?: string;
  readonly drawers?: readonly (typeof drawerSorts)[number][];
  /** Whether there are shelves in the door. */
  readonly door?: boolean;
  readonly cold?: (typeof coldSigns)[number];
  readonly coldReading?: TypedReading;
  readonly room?: (typeof roomSigns)[number];
  readonly roomReading?: TypedReading;
  readonly air?: (typeof airSigns)[number];
  readonly airReading?: string;
  readonly cupboard?: (typeof cupboardSorts)[number];
  readonly cellar?: boolean;
  readonly cellarReading?: TypedReading;
  readonly balcony?: boolean;
  readonly balconyReading?: TypedReading;
  readonly wraps?: Kitchen["wraps"];
}
