import { type Act, type Entry, type History, noHistory, taken } from "../state/history/history.js";
import { sharing } from "../state/history/sharing.js";
import type { StepName } from "../state/history/stepName.js";
import type { PlannerChange, PlannerState } from "../state/plannerState.js";
import {
  type Aside,
  dropAsides,
  dropCopy,
  forgetCopy,
  type LocalStore,
  localAsidePrefix,
  type ReadCopy,
  rawCopy,
  readAsides,
  readCopy,
  takesAnything,
  writeCopy,
} from "./localCopy.js";
import type { RestoreWith } from "./restore.js";
import type { Forgotten, Held, KeptAside, Shelf } from "./shelf.js";

/** How what was entered is kept. */
export type Keeping =
  | "opening"
  | "kept"
  /** The copy is there, but not the history: it lasts until the page is closed. */
  | "without history"
  /** Nothing is kept: it is on this page until it is closed. */
  | "refused";

export interface Kept {
  readonly state: PlannerState;
  readonly keeping: Keeping;
  /** What would be undone, and what done again. */
  readonly undo: StepName | "forgotten" | undefined;
  readonly redo: StepName | undefined;
  /** How many steps can be undone. */
  readonly steps: number;
  /** Records that could not be used and were set aside. */
  readonly asides: number;
}

interface KeeperOptions extends RestoreWith {
  readonly store: () => LocalStore;
  readonly openShelf: () => Promise<Shelf>;
  /** A name for this tab that no other has had. */
  readonly by: string;
  /** The clock [ms since 1970]. */
  readonly clock: () => number;
}

/**
 * Keeps what is entered. A change is on the page at once, in the copy before the next line runs, and in the database soon after, where it is
 * applied to the newest state from whichever tab. What the database has taken is what counts: the page shows it, with what is still under way on top.
 */
export class Keeper {
  readonly #options: KeeperOptions;
  readonly #copy: ReadCopy | undefined;
  /** What lay in the copy's place at first, whether it could be read or not. */
  readonly #raw: string | null;
  readonly #listeners = new Set<() => void>();
  #view: History;
  #held: Held | undefined;
  #shelf: Shelf | undefined;
  #failed = false;
  #copied = true;
  /** Number of this tab's last change. */
  #number = 0;
  #underWay: readonly Entry[] = [];
  #forgotten: Forgotten | undefined;
  /** Bringing in what is under way, while that has not begun. */
  #bringing: Promise<void> | undefined;
  /** Everything asked of the database until now, one after another. */
  #work: Promise<void> = Promise.resolve();
  #current: Kept;

  constructor(options: KeeperOptions) {
    this.#options = options;
    this.#raw = rawCopy(options.store);
    this.#copy = readCopy(options, options.store, `${localAsidePrefix}.${options.by}`);
    this.#view = noHistory(this.#copy?.state ?? options.otherwise);
    this.#current = this.#snapshot();
  }

  readonly now = (): Kept => this.#current;

  readonly listen = (changed: () => void): (() => void) => {
    this.#listeners.add(changed);
    return () => this.#listeners.delete(changed);
  };

  /** Opens what is kept for good, and gives a function that stops watching it. */
  start(): () => void {
    let stop: (() => void) | undefined;
    let stopped = false;
    this.#work = this.#work.then(() => (this.#shelf ? undefined : this.#open()));
    void this.#work.then(() => {
      if (!stopped) stop = this.#shelf?.watch((held) => this.#accept(held));
    });
    void this.#bringIn();
    return () => {
      stopped = true;
      stop?.();
    };
  }

  change(change: PlannerChange): void {
    const from = this.#view.state.text;
    this.#act({ act: "change", change, ...(change.change === "text" && { from }) });
  }

  undo(): void {
    const { undo } = this.#current;
    if (undo === "forgotten") this.#bringBack();
    else if (undo) this.#act({ act: "undo" });
  }

  redo(): void {
    if (this.#current.redo) this.#act({ act: "redo" });
  }

  /** Forgets everything; it can be undone until the page is closed. False where the device would not let go of it. */
  async forget(): Promise<boolean> {
    await this.#bringIn();
    if (this.#shelf) {
      let forgotten: Forgotten | undefined;
      await this.#then(async (shelf) => {
        const result = await shelf.forget();
        forgotten = result.forgotten;
        this.#forgotten = forgotten;
        return result.held;
      });
      if (!forgotten) return false;
    } else {
      this.#forgotten = { history: this.#view, asides: [] };
      this.#view = noHistory(this.#options.otherwise);
    }
    forgetCopy(this.#options.store);
    this.#tell();
    return true;
  }

  /** What was set aside, oldest first; where there is no database, what waits for one. */
  async asides(): Promise<readonly KeptAside[]> {
    if (this.#shelf) return this.#shelf.asides();
    return this.#localAsides().map((aside, index) => ({
      ...aside,
      number: index,
      at: this.#options.clock(),
    }));
  }

  async dropAside({ number, content, unused }: KeptAside): Promise<void> {
    if (this.#shelf) return this.#then((shelf) => shelf.dropAside(number));
    dropAsides([{ content, unused }], this.#options.store);
    this.#tell();
  }

  /** Resolves when everything done until now is kept, or cannot be. */
  settled(): Promise<void> {
    return this.#work;
  }

  #localAsides(): readonly Aside[] {
    return readAsides(this.#options, this.#options.store);
  }

  #keeping(): Keeping {
    if (this.#failed) return this.#copied ? "without history" : "refused";
    return this.#held ? "kept" : "opening";
  }

  #snapshot(): Kept {
    const { state, past, future } = this.#view;
    return {
      state,
      keeping: this.#keeping(),
      undo: past.at(-1)?.name ?? (this.#forgotten && "forgotten"),
      redo: future[0]?.name,
      steps: Math.max(this.#held?.steps ?? 0, past.length),
      asides: this.#held?.asides ?? this.#localAsides().length,
    };
  }

  #tell(): void {
    const next = sharing(this.#current, this.#snapshot());
    if (next === this.#current) return;
    this.#current = next;
    for (const listener of this.#listeners) listener();
  }

  #accept(next: Held): void {
    if (this.#held && next.revision < this.#held.revision) return;
    this.#held = next;
    const seen = next.seen[this.#options.by] ?? 0;
    this.#underWay = this.#underWay.filter(({ number }) => number > seen);
    const view = this.#underWay.reduce(taken, next.history);
    this.#view = { ...view, state: sharing(this.#view.state, view.state) };
    this.#tell();
  }

  #fail(): void {
    this.#failed = true;
    this.#copied &&= takesAnything(this.#options.store);
    this.#tell();
  }

  /** Does one thing after another with the database; what fails leaves everything to be tried again with the next change. */
  #then(task: (shelf: Shelf) => Promise<Held | undefined>): Promise<void> {
    this.#work = this.#work.then(async () => {
      if (!this.#shelf) return;
      try {
        const next = await task(this.#shelf);
        this.#failed = false;
        if (next) this.#accept(next);
        else this.#tell();
      } catch {
        this.#fail();
      }
    });
    return this.#work;
  }

  /** Once it begins it takes all that is under way by then: what comes before that need not be brought in by itself. */
  #bringIn(): Promise<void> {
    if (this.#bringing) return this.#bringing;
    const own = this.#then(async (shelf) => {
      this.#bringing = undefined;
      return this.#underWay.length > 0 ? shelf.take(this.#underWay) : undefined;
    });
    this.#bringing = own;
    void own.then(() => {
      if (this.#bringing === own) this.#bringing = undefined;
    });
    return own;
  }

  #act(act: Act): void {
    const { by, clock } = this.#options;
    const entry: Entry = { by, number: this.#number + 1, at: clock(), act };
    const view = taken(this.#view, entry);
    if (view === this.#view) return;
    this.#view = view;
    this.#number += 1;
    // Without a database there is nothing to bring it into: the copy and the page are all.
    if (this.#shelf || !this.#failed) this.#underWay = [...this.#underWay, entry];
    this.#writeCopy(this.#number);
    this.#tell();
    void this.#bringIn();
  }

  /** Number 0 says that nothing is in the copy that the database has not. */
  #writeCopy(number: number): void {
    const { by, store } = this.#options;
    this.#copied = writeCopy({ state: this.#view.state, of: { by, number } }, store);
  }

  #bringBack(): void {
    const forgotten = this.#forgotten;
    if (!forgotten) return;
    this.#forgotten = undefined;
    if (this.#shelf) {
      void this.#then((shelf) => shelf.bringBack(forgotten)).then(() => this.#writeCopy(0));
      return;
    }
    this.#view = forgotten.history;
    this.#number += 1;
    this.#writeCopy(this.#number);
    this.#tell();
  }

  async #open(): Promise<void> {
    const { openShelf, store } = this.#options;
    try {
      const shelf = await openShelf();
      const laid = this.#localAsides();
      const held = await shelf.open(this.#copy, laid);
      this.#shelf = shelf;
      this.#accept(held);
      dropAsides(laid, store);
      // The database has what was in it by now, if only among what was set aside.
      if (this.#underWay.length > 0) return;
      if (held.revision > 0) this.#writeCopy(0);
      else dropCopy(this.#raw, store);
    } catch {
      this.#underWay = [];
      this.#fail();
    }
  }
}
