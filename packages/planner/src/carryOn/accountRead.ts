import type { Catalogue } from "@keepwright/catalogue";
import type { CalendarDate } from "@keepwright/quantities";
import type { Lot } from "../problem/lot.js";

/** What has to be known to read an account: what there was, where it may lie, and the day it is. */
export interface HappenedContext {
  readonly catalogue: Catalogue;
  readonly lots: readonly Pick<Lot, "id" | "commodity" | "typed">[];
  /** `also`: what else it is called, as in another language. */
  readonly places: readonly {
    readonly id: string;
    readonly name: string;
    readonly kind: string;
    readonly also?: readonly string[];
  }[];
  readonly on: CalendarDate;
}

/** An account as a file would hold it, before it is checked. */
export interface ReadAccount {
  version: 1;
  followed?: boolean;
  lots: Record<string, unknown>[];
  cameHome: object[];
}
