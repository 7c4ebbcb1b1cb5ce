import type { PlannerState } from "../state/plannerState.js";
import { restore } from "./restore.js";

const key = "keepwright.haul";

/** Reads what was kept on this device. A refused or broken store gives the worked example. */
export function load(): PlannerState {
  try {
    const saved = localStorage.getItem(key);
    return restore(saved === null ? undefined : JSON.parse(saved));
  } catch {
    return restore(undefined);
  }
}

/** Keeps the state on this device. Returns false when the device would not take it, so that the page can say so. */
export function save(state: PlannerState): boolean {
  try {
    localStorage.setItem(key, JSON.stringify(state));
    return true;
  } catch {
    return false;
  }
}
