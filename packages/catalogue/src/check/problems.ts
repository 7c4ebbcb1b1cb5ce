import type { z } from "zod";

/** Thrown when the catalogue's data breaks its own rules. Each problem names the record, the field, the value and a remedy. */
export class CatalogueError extends Error {
  readonly problems: readonly string[];

  constructor(problems: readonly string[]) {
    super(
      `The catalogue has ${problems.length === 1 ? "a fault" : `${problems.length} faults`}:\n${problems.join("\n")}`,
    );
    this.name = "CatalogueError";
    this.problems = problems;
  }
}

const longestValueShown = 80;

/** The value as it would be written in JSON, cut short when long. */
export function shown(value: unknown): string {
  const text = value === undefined ? "missing" : (JSON.stringify(value) ?? String(value));
  return text.length > longestValueShown ? `${text.slice(0, longestValueShown)}…` : text;
}

const valueAt = (record: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, key) => (value as Record<PropertyKey, unknown> | null | undefined)?.[key],
    record,
  );

type Issue = z.core.$ZodIssue;

/** What would be accepted in place of the value that was not. */
function remedy(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return `write ${/^[aeiou]/.test(issue.expected) ? "an" : "a"} ${issue.expected}`;
    case "invalid_value":
      return `write ${issue.values.map((value) => shown(value)).join(" or ")}`;
    case "too_small":
      return `write ${issue.origin === "number" ? "a number of" : "a length of"} at least ${issue.minimum}`;
    case "too_big":
      return `write ${issue.origin === "number" ? "a number of" : "a length of"} at most ${issue.maximum}`;
    case "unrecognized_keys":
      return `remove or respell ${issue.keys.map((key) => `"${key}"`).join(", ")}`;
    default:
      return issue.message;
  }
}

/** One line for each fault that a schema found in a record. */
export const describeIssues = (record: unknown, name: string, issues: readonly Issue[]): string[] =>
  issues.map((issue) => {
    const path = issue.path.map(String).join(".") || "the record";
    return `${name}: ${path} is ${shown(valueAt(record, issue.path))}; ${remedy(issue)}.`;
  });
