import type { PlannerState } from "../state/plannerState.js";
import { type RestoreWith, restore } from "./restore.js";

export const storageKey = "keepwright.haul";

/** Where a value that could not be read is put, so that keeping the next state does not destroy it. */
export const setAsideKey = "keepwright.haul.unreadable";

type Store = Pick<Storage, "getItem" | "setItem">;

/** Reaching for the store can itself be refused, so it is reached for only when it is used. */
const device = (): Store => localStorage;

/** Reads what was kept on this device. A refused or broken store gives the state to open otherwise. */
export function load(how: RestoreWith, store: () => Store = device): PlannerState {
  try {
    const saved = store().getItem(storageKey);
    if (saved === null) return how.otherwise;
    const state = restore(parsed(saved), how);
    if (state === how.otherwise) store().setItem(setAsideKey, saved);
    return state;
  } catch {
    return how.otherwise;
  }
}

function parsed(saved: string): unknown {
  try {
    return JSON.parse(saved);
  } catch {
    return undefined;
  }
}

/** Keeps the state on this device. Returns false when the device would not take it, so that the page can say so. */
export function save(state: PlannerState, store: () => Store = device): boolean {
  try {
    store().setItem(storageKey, JSON.stringify(state));
    return true;
  } catch {
    return false;
  }
}
