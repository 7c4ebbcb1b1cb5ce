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

type Issue = z.core.$ZodIssue;

const kinds: Readonly<Record<string, string>> = {
  string: "a text in quotes",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list in [ ]",
  object: "a group of fields in { }",
};

function tooSmall(issue: z.core.$ZodIssueTooSmall): string {
  if (issue.origin === "array") return `Name at least ${issue.minimum}.`;
  if (issue.origin === "string") return "Write something here; it may not be empty.";
  return issue.inclusive ? `Write ${issue.minimum} or more.` : `Write a number above ${issue.minimum}.`;
}

function tooBig(issue: z.core.$ZodIssueTooBig): string {
  if (issue.origin === "array") return `Name ${issue.maximum} at most.`;
  if (issue.origin === "string") return `Write it in ${issue.maximum} letters at most.`;
  return `Write ${issue.maximum} or less.`;
}

/** What would work instead, in our own words; the schema's own message where there are none. */
function remedyFor(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return `Give ${kinds[issue.expected] ?? issue.expected}.`;
    case "invalid_value":
      return `Write ${issue.values.map((value) => JSON.stringify(value)).join(" or ")}.`;
    case "too_small":
      return tooSmall(issue);
    case "too_big":
      return tooBig(issue);
    case "unrecognized_keys":
      return `Take out ${issue.keys.map((key) => `"${key}"`).join(", ")}: no field has that name.`;
    case "invalid_union":
      return issue.message === "Invalid input"
        ? "Write it in one of the forms that the guide to kitchens and hauls shows."
        : `Give ${issue.message}.`;
    default:
      return `Correct it: ${issue.message}.`;
  }
}

/** Schema faults as findings, each with the value that stands there. */
export function schemaFindings(root: unknown, whole: string, error: z.ZodError): Finding[] {
  return error.issues.map((issue) => ({
    thing: thingAt(root, issue.path, whole),
    value: shownValue(valueAt(root, issue.path)),
    remedy: remedyFor(issue),
  }));
}
