import type { PlannerState } from "../state/plannerState.js";
import type { Unused } from "./check.js";
import { type RestoreWith, restoreAll } from "./restore.js";

/** Where the copy for the first paint lies; up to version 2 it was all there was. */
export const localKey = "keepwright.haul";
/** What could not be read lies under keys that begin so, until the database has it. */
export const localAsidePrefix = "keepwright.haul.unreadable";

export type LocalStore = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">;

/** Which of a tab's changes a copy holds. */
export interface CopyOf {
  readonly by: string;
  readonly number: number;
}

export interface LocalCopy {
  readonly state: PlannerState;
  readonly of: CopyOf;
}

/** A copy that was read, with what it was read from. */
export interface ReadCopy extends LocalCopy {
  readonly fields: unknown;
  readonly saved: string;
}

/** A record that could not be used, or not all of it, as it was. */
export interface Aside {
  readonly content: string;
  readonly unused: readonly Unused[];
}

/** Reaching for the store can itself be refused, so it is reached for only when it is used. */
export const deviceStore = (): LocalStore => localStorage;

function parsed(saved: string): unknown {
  try {
    return JSON.parse(saved);
  } catch {
    return undefined;
  }
}

/** Copies of versions before do not say whose they are: each is told from others by what is in it, so that it is taken only once. */
function copyOf(value: unknown, saved: string): CopyOf {
  const { by, number } = typeof value === "object" && value !== null ? (value as Partial<CopyOf>) : {};
  if (typeof by === "string" && Number.isSafeInteger(number)) return { by, number: number as number };
  return { by: `a version before, ${sum(saved)}`, number: 1 };
}

/** FNV-1a over UTF-16 units, 32 bits: enough to tell one's own records from one another. */
function sum(text: string): string {
  let value = 0x811c9dc5;
  for (let index = 0; index < text.length; index++)
    value = Math.imul(value ^ text.charCodeAt(index), 0x01000193);
  return (value >>> 0).toString(16);
}

/**
 * The copy of the newest state, read at once so that the first paint need not wait for the database. What cannot be used of it is laid under a
 * key of its own first. A refused store has no copy.
 */
export function readCopy(how: RestoreWith, store: () => LocalStore, asideKey: string): ReadCopy | undefined {
  try {
    const saved = store().getItem(localKey);
    if (saved === null) return undefined;
    const given = parsed(saved);
    const { kept, ...fields } = (typeof given === "object" && given !== null ? given : {}) as {
      readonly kept?: unknown;
    };
    const { state, unused, usable } = restoreAll(Array.isArray(given) ? given : fields, how);
    if (unused.length > 0 && !isAside(store(), saved)) store().setItem(asideKey, saved);
    return usable ? { state, fields, saved, of: copyOf(kept, saved) } : undefined;
  } catch {
    return undefined;
  }
}

/** What lies in the copy's place, whatever it is. */
export function rawCopy(store: () => LocalStore): string | null {
  try {
    return store().getItem(localKey);
  } catch {
    return null;
  }
}

/** Takes the copy away if it still is the one that was read: another tab may have written a newer one since. */
export function dropCopy(raw: string | null, store: () => LocalStore): void {
  if (raw !== null && rawCopy(store) === raw) store().removeItem(localKey);
}

/** Writes the copy. False where the device would not take it. */
export function writeCopy({ state, of }: LocalCopy, store: () => LocalStore): boolean {
  try {
    store().setItem(localKey, JSON.stringify({ ...state, kept: of }));
    return true;
  } catch {
    return false;
  }
}

function asideKeys(store: LocalStore): string[] {
  const keys = Array.from({ length: store.length }, (_, index) => store.key(index));
  return keys.filter((key) => key?.startsWith(localAsidePrefix)) as string[];
}

const isAside = (store: LocalStore, content: string): boolean =>
  asideKeys(store).some((key) => store.getItem(key) === content);

/** What was laid aside here, for the database to take, with what could not be used of each. */
export function readAsides(how: RestoreWith, store: () => LocalStore): Aside[] {
  try {
    const own = store();
    return asideKeys(own).flatMap((key) => {
      const content = own.getItem(key);
      return content === null ? [] : [{ content, unused: restoreAll(parsed(content), how).unused }];
    });
  } catch {
    return [];
  }
}

/** Takes away those of the records laid aside that the database has by now. */
export function dropAsides(taken: readonly Aside[], store: () => LocalStore): void {
  try {
    const own = store();
    for (const key of asideKeys(own))
      if (taken.some(({ content }) => content === own.getItem(key))) own.removeItem(key);
  } catch {
    // It stays where it is, and the database will find that it has it already.
  }
}

/** Takes away everything of this page. */
export function forgetCopy(store: () => LocalStore): void {
  try {
    const own = store();
    for (const key of [localKey, ...asideKeys(own)]) own.removeItem(key);
  } catch {
    // A refused store holds nothing.
  }
}

/** Whether the device takes anything at all. */
export function takesAnything(store: () => LocalStore): boolean {
  const key = "keepwright.trial";
  try {
    store().setItem(key, "");
    store().removeItem(key);
    return true;
  } catch {
    return false;
  }
}
