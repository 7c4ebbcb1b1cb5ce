import type { WrapId } from "@keepwright/catalogue";

/** Wraps taken to keep smells in and out. Common practice, no source: a closed bag, foil, or a box with a lid. */
export const isAirtight = (wrap: WrapId): boolean =>
  wrap === "closed film bag" || wrap === "lidded box" || wrap === "foil";
