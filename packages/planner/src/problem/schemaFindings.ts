import type { z } from "zod";
import type { Finding } from "./inputError.js";

const longest = 80;

/** A value as text, shortened, with control characters and mark-up made harmless by quoting. */
export function shownValue(value: unknown): string {
  if (value === undefined) return "nothing is given";
  let text: string;
  try {
    text = JSON.stringify(value) ?? String(value);
  } catch {
    text = String(value);
  }
  return text.length > longest ? `${text.slice(0, longest)}…` : text;
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let value: unknown = root;
  for (const key of path) {
    if (value === null || typeof value !== "object") return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

/** The name of the nearest thing on the path that has one, else the path itself. */
function thingAt(root: unknown, path: readonly PropertyKey[], whole: string): string {
  const named = valueAt(root, path.slice(0, 2)) as { id?: unknown } | undefined;
  const steps = path.map((step) => (typeof step === "number" ? `[${step + 1}]` : String(step)));
  const place = steps.join(" ").replace(/ \[/g, "[");
  if (named && typeof named === "object" && typeof named.id === "string") {
    return `${whole} ${place} (id ${shownValue(named.id)})`;
  }
  return place === "" ? whole : `${whole} ${place}`;
}

/** Schema faults as findings, each with the value that stands there. */
export function schemaFindings(root: unknown, whole: string, error: z.ZodError): Finding[] {
  return error.issues.map((issue) => ({
    thing: thingAt(root, issue.path, whole),
    value: shownValue(valueAt(root, issue.path)),
    remedy: `Correct it: ${issue.message}`,
  }));
}
