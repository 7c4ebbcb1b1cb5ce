import type { BoundLot } from "../problem/bindHaul.js";

/**
 * Whether a lot has a safe time: what is cut, and kinds sold under time and temperature control as they are (ready-washed cut leaves, seed
 * sprouts; the catalogue's `controlledAsSold`, with sources there). Everything else whole has none.
 */
export const hasSafeTime = ({ form, produce }: Pick<BoundLot, "form" | "produce">): boolean =>
  form.cut || produce.controlledAsSold === true;
