import { plainText } from "@keepwright/handout";
import type { Finding } from "@keepwright/planner";

/** Something the person can put right: what is wrong, with what stands there, and what would work. */
export class UserError extends Error {
  readonly findings: readonly Finding[];
  /** More that belongs in the JSON of the error: candidates, questions. */
  readonly details: Readonly<Record<string, unknown>>;
  /** Its message is English whatever language is asked for: findings with a code can be told in another. */
  readonly inEnglish: boolean;
  /** `message`: the same as sentences in the language of the answer; left out: the findings as they stand. */
  constructor(
    findings: readonly Finding[],
    details: Readonly<Record<string, unknown>> = {},
    message?: string,
  ) {
    super(message ?? findings.map(findingLine).join("\n"));
    this.inEnglish = message === undefined;
    this.name = "UserError";
    this.findings = findings;
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

/** A finding as JSON has it: what it says in English. */
export const plainFinding = ({ thing, value, remedy }: Finding): Finding => ({ thing, value, remedy });

export const findingLine = ({ thing, value, remedy }: Finding): string =>
  plainText(`${thing}: ${value}. ${remedy}`);

export const userError = (thing: string, value: string, remedy: string): UserError =>
  new UserError([{ thing, value, remedy }]);
