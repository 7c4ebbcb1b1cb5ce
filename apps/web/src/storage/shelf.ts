import type { Entry, History } from "../state/history/history.js";
import type { Aside, ReadCopy } from "./localCopy.js";

/** What the device keeps, as far as a page needs it at hand: the state, the newest steps, and those undone. */
export interface Held {
  readonly history: History;
  /** Counts up with every change, in whatever tab. */
  readonly revision: number;
  /** Number of the newest change of each tab that is in it. */
  readonly seen: Readonly<Record<string, number>>;
  /** How many steps can be undone. */
  readonly steps: number;
  readonly asides: number;
}

export interface KeptAside extends Aside {
  readonly number: number;
  /** When it was set aside [ms since 1970]. */
  readonly at: number;
}

/** Everything there was before all was forgotten, so that it can be brought back. */
export interface Forgotten {
  readonly history: History;
  readonly asides: readonly KeptAside[];
}

/** Where everything is kept for good. Every promise fails where the device refuses. */
export interface Shelf {
  /** Moves in what lay elsewhere, repairs, and gives what is kept. */
  readonly open: (copy: ReadCopy | undefined, asides: readonly Aside[]) => Promise<Held>;
  /** Does what was done in a page to the newest state, all of it or nothing. What was taken before is not taken twice. */
  readonly take: (entries: readonly Entry[]) => Promise<Held>;
  /** Tells of changes, whichever tab made them, until it is stopped. */
  readonly watch: (changed: (held: Held) => void) => () => void;
  readonly forget: () => Promise<{ readonly held: Held; readonly forgotten: Forgotten }>;
  readonly bringBack: (forgotten: Forgotten) => Promise<Held>;
  readonly asides: () => Promise<readonly KeptAside[]>;
  readonly dropAside: (number: number) => Promise<Held>;
}
