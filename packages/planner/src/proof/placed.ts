import type { Column } from "./columns.js";

/** A column of the relaxation in the linear programme: its portions, and those eaten on each day on which they can be. */
export interface Placed {
  readonly column: Column;
  readonly portions: number;
  readonly eaten: readonly { readonly day: number; readonly index: number }[];
}
