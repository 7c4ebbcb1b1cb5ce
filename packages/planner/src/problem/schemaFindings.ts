import type { z } from "zod";
import { type FindingCode, type FindingValues, told } from "./findingCode.js";
import type { Finding } from "./inputError.js";
import { mostDaysAhead, wantedDayForms } from "./wanted.js";

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

/** By this a pattern is known to be that of a day. */
const datePattern = "\\d{4}-\\d{2}-\\d{2}";

type Issue = z.core.$ZodIssue;

const kinds: Readonly<Record<string, string>> = {
  string: "a text in quotes",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list in [ ]",
  object: "a group of fields in { }",
};

type Remedy = readonly [remedy: string, code: FindingCode, values?: FindingValues];

function tooSmall({ origin, minimum, inclusive }: z.core.$ZodIssueTooSmall): Remedy {
  const least = Number(minimum);
  if (origin === "array") return [`Name at least ${least}.`, "file too few", { least }];
  if (origin === "string") return ["Write something here; it may not be empty.", "file text empty"];
  return inclusive
    ? [`Write ${least} or more.`, "file too small", { least }]
    : [`Write a number above ${least}.`, "file not above", { least }];
}

function tooBig({ origin, maximum }: z.core.$ZodIssueTooBig): Remedy {
  const most = Number(maximum);
  if (origin === "array") return [`Name ${most} at most.`, "file too many", { most }];
  if (origin === "string") return [`Write it in ${most} letters at most.`, "file text too long", { most }];
  return [`Write ${most} or less.`, "file too big", { most }];
}

/** What would work instead, in our own words; the schema's own message where there are none. */
function remedyFor(issue: Issue): Remedy {
  if (issue.message === wantedDayForms)
    return [`Write ${wantedDayForms}.`, "file wanted day", { most: mostDaysAhead }];
  switch (issue.code) {
    case "invalid_type": {
      const { expected } = issue;
      const known = Object.hasOwn(kinds, expected);
      return [
        `Give ${kinds[expected] ?? expected}.`,
        "file kind of value",
        known ? { valueKind: expected } : { expected },
      ];
    }
    case "invalid_value": {
      const choices = issue.values.map((value) => JSON.stringify(value));
      return [`Write ${choices.join(" or ")}.`, "file one of", { choices }];
    }
    case "too_small":
      return tooSmall(issue);
    case "too_big":
      return tooBig(issue);
    case "unrecognized_keys": {
      const keys = issue.keys.map((key) => `"${key}"`);
      return [`Take out ${keys.join(", ")}: no field has that name.`, "file no such field", { keys }];
    }
    case "invalid_union":
      return issue.message === "Invalid input"
        ? ["Write it in one of the forms that the guide to kitchens and hauls shows.", "file form"]
        : [`Give ${issue.message}.`, "file other", { why: issue.message }];
    case "invalid_format":
      return issue.format === "regex" && issue.pattern?.includes(datePattern)
        ? ["Write a day as year-month-day, for example 2026-06-13.", "file day"]
        : [`Correct it: ${issue.message}.`, "file other", { why: issue.message }];
    default:
      return [`Correct it: ${issue.message}.`, "file other", { why: issue.message }];
  }
}

/** Schema faults as findings, each with the value that stands there. */
export function schemaFindings(root: unknown, whole: string, error: z.ZodError): Finding[] {
  return error.issues.map((issue) => {
    const [remedy, code, values] = remedyFor(issue);
    const thing = thingAt(root, issue.path, whole);
    const value = valueAt(root, issue.path);
    const at = thing.slice(whole.length).trim();
    return {
      thing,
      value: shownValue(value),
      remedy,
      ...told(code, { whole, at, stands: value === undefined ? undefined : shownValue(value), ...values }),
    };
  });
}
