import { Dexie, type Table } from "dexie";
import type { KeptAside } from "./shelf.js";

/** The one row that says how things stand now. After everything was forgotten only the revision is left in it. */
export interface NowRow {
  readonly key: "now";
  readonly state?: unknown;
  /** Number of the newest step that is done; those above it were undone. */
  readonly at: number;
  /** Number of the newest step there ever was. */
  readonly last: number;
  readonly revision: number;
  readonly seen: Readonly<Record<string, number>>;
}

/** The device's database, as decision 0012 describes it. */
export class Database extends Dexie {
  readonly now!: Table<NowRow, "now">;
  readonly steps!: Table<{ readonly number: number }, number>;
  readonly asides!: Table<Omit<KeptAside, "number"> & { readonly number?: number }, number>;

  constructor(name: string) {
    super(name);
    this.version(1).stores({ now: "key", steps: "number", asides: "++number" });
  }
}
