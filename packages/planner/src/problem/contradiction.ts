import type { Finding } from "./inputError.js";

/** In which way two parts of a kitchen contradict one another. */
export const contradictionKinds = [
  "same id",
  "kitchen without a name",
  "place without a name",
  "same name",
  "in no refrigerator",
  "not for a refrigerator",
  "unknown refrigerator",
  "vent without rates",
  "rates without vent",
  "rates out of order",
  "place freezes",
  "as warm as the room",
  "warmer than the room",
  "colder than the room",
  "lit",
  "more room than air",
  "larger than the refrigerator",
  "refrigerator as warm as the room",
  "refrigerator freezes",
  "coil warmer than the air",
] as const;
export type ContradictionKind = (typeof contradictionKinds)[number];

/** A contradiction within a kitchen, also as data, so that it can be told in any language. Temperatures in °C, room in L, rates in volumes an hour. */
export interface Contradiction extends Finding {
  readonly because: ContradictionKind;
  readonly values: Readonly<Record<string, string | number>>;
}
