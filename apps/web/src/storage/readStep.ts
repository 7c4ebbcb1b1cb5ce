import type { Step } from "../state/history/history.js";
import type { Patch, Splice } from "../state/history/patch.js";
import { namedSteps, plainSteps, type StepName } from "../state/history/stepName.js";
import type { PlannerState } from "../state/plannerState.js";
import { isRecord } from "./check.js";
import { type RestoreWith, restore } from "./restore.js";

/** One side of a patch, each of its fields repaired as in a saved state. */
function fields(value: unknown, how: RestoreWith): Patch["before"] | undefined {
  if (!isRecord(value)) return undefined;
  const restored = restore({ ...value, text: "" }, how);
  // A kitchen that was described then and is not now is known by its key all the same: undoing goes back through the step that forgot it.
  const repaired = typeof value.kitchen === "string" ? { ...restored, kitchen: value.kitchen } : restored;
  const names = Object.keys(repaired) as (keyof PlannerState)[];
  return Object.fromEntries(
    names.filter((key) => key !== "text" && Object.hasOwn(value, key)).map((key) => [key, repaired[key]]),
  );
}

function splice(value: unknown): Splice | undefined {
  if (!isRecord(value)) return undefined;
  const { start, removed, inserted } = value;
  const fits = Number.isInteger(start) && typeof removed === "string" && typeof inserted === "string";
  return fits ? { start: start as number, removed, inserted } : undefined;
}

function name(value: unknown): StepName {
  const { what, words, more } = isRecord(value) ? value : {};
  const known = [...namedSteps, ...plainSteps].find((each) => each === what) ?? "other";
  return {
    what: known,
    words: typeof words === "string" ? words : "",
    ...(Number.isSafeInteger(more) && { more: more as number }),
  };
}

/** A step of the history as it was kept; nothing where it cannot be undone by any longer. */
export function readStep(row: unknown, how: RestoreWith): Step | undefined {
  if (!isRecord(row) || !isRecord(row.patch)) return undefined;
  const { number, by, at, longest, patch } = row;
  const before = fields(patch.before, how);
  const after = fields(patch.after, how);
  const text = splice(patch.text);
  if (typeof number !== "number" || !before || !after || (patch.text !== undefined && !text))
    return undefined;
  return {
    number,
    name: name(row.name),
    patch: { ...(text && { text }), before, after },
    by: typeof by === "string" ? by : "",
    at: typeof at === "number" ? at : 0,
    longest: typeof longest === "number" ? longest : 0,
  };
}
