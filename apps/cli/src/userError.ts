import { plainText } from "@keepwright/handout";
import type { Finding } from "@keepwright/planner";

/** Something the person can put right: what is wrong, with what stands there, and what would work. */
export class UserError extends Error {
  readonly findings: readonly Finding[];
  /** More that belongs in the JSON of the error: candidates, questions. */
  readonly details: Readonly<Record<string, unknown>>;
  /** `message`: the same as sentences in the language of the answer; left out: the findings as they stand. */
  constructor(
    findings: readonly Finding[],
    details: Readonly<Record<string, unknown>> = {},
    message: string = findings.map(findingLine).join("\n"),
  ) {
    super(message);
    this.name = "UserError";
    this.findings = findings.map(({ thing, value, remedy }) => ({ thing, value, remedy }));
    this.details = details;
  }
}

/** Longest piece of an input that is shown back. */
const longestShown = 100;

/** What was given, in quotes, shortened, with control characters made visible. */
export function quoted(text: string): string {
  const shown = [...plainText(text)];
  return `“${shown.length > longestShown ? `${shown.slice(0, longestShown).join("")}…` : shown.join("")}”`;
}

export const findingLine = ({ thing, value, remedy }: Finding): string =>
  plainText(`${thing}: ${value}. ${remedy}`);

export const userError = (thing: string, value: string, remedy: string): UserError =>
  new UserError([{ thing, value, remedy }]);
