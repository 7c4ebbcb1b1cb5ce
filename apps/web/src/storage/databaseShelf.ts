import { liveQuery } from "dexie";
import { type Entry, type History, noHistory, type Step, taken } from "../state/history/history.js";
import { isEmpty, patchBetween } from "../state/history/patch.js";
import type { PlannerState } from "../state/plannerState.js";
import type { Unused } from "./check.js";
import { Database, type NowRow } from "./database.js";
import type { Aside, LocalCopy, ReadCopy } from "./localCopy.js";
import { readStep } from "./readStep.js";
import { type RestoreWith, restoreAll } from "./restore.js";
import type { Forgotten, Held, KeptAside, Shelf } from "./shelf.js";
import { wholeKitchens } from "./wholeKitchens.js";

/** Steps at hand in a page, to name the next one and to undo at once; the others are fetched as they are come to. */
const atHand = 20;
/** Steps kept for good. Declared preference, no source: more than an evening's typing. */
export const mostSteps = 500;
/** Tabs whose newest change is remembered. Declared preference, no source: far more than are open at a time. */
const mostTabs = 50;

const nothingYet: NowRow = { key: "now", at: 0, last: 0, revision: 0, seen: {} };

interface ShelfOptions extends RestoreWith {
  /** The clock [ms since 1970]. */
  readonly clock: () => number;
}

/** Everything in the device's database. Changes from any tab are applied to the newest state, one after another. */
export class DatabaseShelf implements Shelf {
  readonly #how: ShelfOptions;
  readonly #database: Database;

  constructor(how: ShelfOptions, name = "keepwright") {
    this.#how = { ...how, kitchenDoor: wholeKitchens };
    this.#database = new Database(name);
  }

  open(read: ReadCopy | undefined, laid: readonly Aside[]): Promise<Held> {
    return this.#within(async () => {
      await this.#setAside(laid);
      const copy = await this.#checked(read);
      const row = await this.#repairedRow();
      const moved = await this.#takeInto(withCopy(row, copy), recovered(row, copy, this.#how));
      if (moved.state !== undefined || row.revision > 0) await this.#database.now.put(moved);
      return this.#held(moved);
    });
  }

  take(entries: readonly Entry[]): Promise<Held> {
    return this.#within(async () => this.#held(await this.#takeInto(await this.#row(), entries)));
  }

  watch(changed: (held: Held) => void): () => void {
    const { now, steps, asides } = this.#database;
    const read = async () => this.#held(await this.#row());
    const watching = liveQuery(() => this.#database.transaction("r", [now, steps, asides], read)).subscribe({
      next: changed,
      error: () => undefined,
    });
    return () => watching.unsubscribe();
  }

  forget(): Promise<{ readonly held: Held; readonly forgotten: Forgotten }> {
    const { now, steps, asides } = this.#database;
    return this.#within(async () => {
      const row = await this.#row();
      const history = await this.#wholeHistory(row);
      const kept = await this.asides();
      await Promise.all([steps.clear(), asides.clear()]);
      const left: NowRow = { ...nothingYet, last: row.last, at: row.last, revision: row.revision + 1 };
      await now.put(left);
      return { held: await this.#held(left), forgotten: { history, asides: kept } };
    });
  }

  bringBack({ history, asides }: Forgotten): Promise<Held> {
    return this.#within(async () => {
      const row = await this.#row();
      const since = await this.#wholeHistory(row);
      const back = withSince(history, since, this.#how.otherwise, this.#how.clock());
      await this.#database.steps.clear();
      await this.#database.asides.bulkPut([...asides]);
      return this.#held(await this.#write(row, noHistory(since.state), back, row.seen));
    });
  }

  async asides(): Promise<readonly KeptAside[]> {
    return (await this.#database.asides.toArray()) as KeptAside[];
  }

  dropAside(number: number): Promise<Held> {
    return this.#within(async () => {
      await this.#database.asides.delete(number);
      return this.#held(await this.#row());
    });
  }

  /** Lets go of the database, so that another connection may delete it. */
  close(): void {
    this.#database.close();
  }

  #within<Result>(work: () => Promise<Result>): Promise<Result> {
    const { now, steps, asides } = this.#database;
    return this.#database.transaction("rw", [now, steps, asides], work);
  }

  async #row(): Promise<NowRow> {
    return rowFrom(await this.#database.now.get("now"));
  }

  #state({ state }: NowRow): PlannerState {
    return state === undefined ? this.#how.otherwise : restoreAll(state, this.#how).state;
  }

  #read(rows: readonly unknown[]): readonly Step[] {
    return rows.flatMap((each) => readStep(each, this.#how) ?? []);
  }

  async #history(row: NowRow): Promise<History> {
    const { steps } = this.#database;
    const past = await steps.where("number").belowOrEqual(row.at).reverse().limit(atHand).toArray();
    const future = await steps.where("number").above(row.at).toArray();
    return {
      state: this.#state(row),
      past: this.#read(past.reverse()),
      future: this.#read(future),
      last: row.last,
    };
  }

  async #wholeHistory(row: NowRow): Promise<History> {
    const steps = this.#read(await this.#database.steps.toArray());
    return {
      state: this.#state(row),
      past: steps.filter(({ number }) => number <= row.at),
      future: steps.filter(({ number }) => number > row.at),
      last: row.last,
    };
  }

  async #held(row: NowRow): Promise<Held> {
    const { steps, asides } = this.#database;
    return {
      history: await this.#history(row),
      revision: row.revision,
      seen: row.seen,
      steps: await steps.where("number").belowOrEqual(row.at).count(),
      asides: await asides.count(),
    };
  }

  /** Writes what is different from before; steps that stayed the same are left alone. */
  async #write(row: NowRow, before: History, after: History, seen: NowRow["seen"]): Promise<NowRow> {
    const { now, steps } = this.#database;
    const known = new Set([...before.past, ...before.future]);
    await steps.bulkPut([...after.past, ...after.future].filter((step) => !known.has(step)));
    await steps
      .where("number")
      .belowOrEqual(after.last - mostSteps)
      .delete();
    const beforeFuture = after.future[0] ? after.future[0].number - 1 : after.last;
    const at = after.past.at(-1)?.number ?? beforeFuture;
    const { state, last } = after;
    const next: NowRow = { key: "now", state, at, last, revision: row.revision + 1, seen };
    await now.put(next);
    return next;
  }

  async #takeInto(row: NowRow, entries: readonly Entry[]): Promise<NowRow> {
    let current = row;
    for (const entry of entries) {
      if ((current.seen[entry.by] ?? 0) >= entry.number) continue;
      const before = await this.#history(current);
      current = await this.#write(current, before, taken(before, entry), seenWith(current.seen, entry));
    }
    return current;
  }

  async #setAside(records: readonly Aside[]): Promise<void> {
    const { asides } = this.#database;
    const kept = new Set((await asides.toArray()).map(({ content }) => content));
    for (const { content, unused } of records)
      if (!kept.has(content)) await asides.add({ content, unused, at: this.#how.clock() });
  }

  /** The copy once more, with its kitchens looked at more closely than there was time for before the first paint. */
  async #checked(read: ReadCopy | undefined): Promise<LocalCopy | undefined> {
    if (!read) return undefined;
    const { state, unused } = restoreAll(read.fields, this.#how);
    if (unused.length > 0) await this.#setAside([{ content: read.saved, unused }]);
    return { state, of: read.of };
  }

  /** The row as it stands, repaired; what could not be used of it is set aside whole. */
  async #repairedRow(): Promise<NowRow> {
    const { steps } = this.#database;
    const row = await this.#row();
    const all = await steps.toArray();
    const broken = all.filter((each) => readStep(each, this.#how) === undefined);
    await this.#setAside(broken.map((each) => asideOf(each, [])));
    await steps.bulkDelete(broken.map(({ number }) => number));
    if (row.state === undefined) return row;
    const { state, unused, usable } = restoreAll(row.state, this.#how);
    if (usable) {
      if (unused.length > 0) await this.#setAside([asideOf(row.state, unused)]);
      return { ...row, state };
    }
    // Steps lead nowhere without the state that they led to.
    await this.#setAside([asideOf({ state: row.state, steps: all }, unused)]);
    await steps.clear();
    return { ...row, state: undefined, at: row.last };
  }
}

function asideOf(value: unknown, unused: readonly Unused[]): Aside {
  return { content: JSON.stringify(value, undefined, 2) ?? String(value), unused };
}

function rowFrom(value: unknown): NowRow {
  if (typeof value !== "object" || value === null) return nothingYet;
  const { state, at, last, revision, seen } = value as Partial<Record<keyof NowRow, unknown>>;
  const count = (given: unknown): number => (Number.isSafeInteger(given) ? (given as number) : 0);
  const numbers = typeof seen === "object" && seen !== null ? Object.entries(seen) : [];
  return {
    key: "now",
    ...(state !== undefined && { state }),
    at: count(at),
    last: count(last),
    revision: count(revision),
    seen: Object.fromEntries(numbers.map(([by, number]) => [by, count(number)])),
  };
}

/** The newest tabs come last, and the oldest are forgotten. */
function seenWith(seen: NowRow["seen"], { by, number }: Entry): NowRow["seen"] {
  const others = Object.entries(seen).filter(([each]) => each !== by);
  return Object.fromEntries([...others.slice(1 - mostTabs), [by, number]]);
}

/** Where the database holds nothing yet, the copy is what there is: the record of an older version, or one that outlived the database. */
const withCopy = (row: NowRow, copy: LocalCopy | undefined): NowRow =>
  row.state !== undefined || !copy
    ? row
    : {
        ...row,
        state: copy.state,
        revision: row.revision + 1,
        seen: { ...row.seen, [copy.of.by]: copy.of.number },
      };

/** What a tab wrote in its copy and could not bring into the database before it was ended, as a step of its own. */
function recovered(row: NowRow, copy: LocalCopy | undefined, { clock }: ShelfOptions): readonly Entry[] {
  if (!copy || row.state === undefined) return [];
  const change = { change: "replace", state: copy.state, how: "recovered" } as const;
  return [{ ...copy.of, at: clock(), act: { act: "change", change } }];
}

/** The history there was before all was forgotten; what was entered since then can be had from it by doing it again. */
function withSince(all: History, since: History, otherwise: PlannerState, at: number): History {
  const last = Math.max(all.last, since.last);
  const back: History = { ...all, last };
  const tip = [...since.future].reduce((history) => taken(history, redo), since).state;
  if (isEmpty(patchBetween(otherwise, tip))) return back;
  const change = { change: "replace", state: tip, how: "recovered" } as const;
  const entry = { by: "before all was forgotten", number: 1, at, act: { act: "change", change } } as const;
  return taken(taken(back, entry), { ...entry, act: { act: "undo" } });
}

const redo: Entry = { by: "", number: 0, at: 0, act: { act: "redo" } };
