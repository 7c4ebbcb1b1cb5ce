import { findingLines, jsonText, plainText, problemLines } from "@keepwright/handout";
import { InputError } from "@keepwright/planner";
import { CommanderError } from "commander";
import type { Door } from "./door/door.js";
import { type ExitCode, exitCodes } from "./exitCodes.js";
import { type AskedLanguage, askedLanguage, contextFor } from "./options/language.js";
import { type CommandOutcome, keepwrightProgram } from "./program.js";
import { plainFinding, UserError } from "./userError.js";

/**
 * An argument that begins with a dash but can be no option, such as a list with dashes ("- 2 apples"), gets a space before
 * it so that it is read as the words it is.
 */
export const asWords = (argument: string): string =>
  /^[-–—•*]+\s/.test(argument) || /^-[\d.,½¼¾]+.*\s/.test(argument) ? ` ${argument}` : argument;

/** Whether errors are to be told as JSON: asked for anywhere before a bare "--". */
function wantsJson(words: readonly string[]): boolean {
  const end = words.indexOf("--");
  return words.slice(0, end < 0 ? undefined : end).includes("--json");
}

/** The language of the answer as the words of a command line ask for it; English where they do not. */
function languageAsked(words: readonly string[]): AskedLanguage {
  const asked = words.map((word, index) =>
    ["-l", "--language"].includes(word) ? words[index + 1] : /^(?:--language=|-l)(.+)$/.exec(word)?.[1],
  );
  const languages = asked.flatMap((text) => askedLanguage(text ?? "") ?? []);
  return languages[0] ?? { name: "en" };
}

/** Any failure as something a person can put right; undefined for a fault of the program. */
function asUserError(error: unknown, words: readonly string[]): UserError | undefined {
  const context = contextFor({ units: "metric", language: languageAsked(words) });
  if (error instanceof UserError) {
    const { findings, details } = error;
    return error.inEnglish ? new UserError(findings, details, findingLines(context, findings)) : error;
  }
  if (error instanceof InputError) return new UserError(error.findings, {}, problemLines(context, error));
  if (error instanceof CommanderError) {
    const value = plainText(error.message.replace(/^error: /, "")).replace(/\.$/, "");
    return new UserError([{ thing: "command line", value, remedy: "See keepwright --help" }]);
  }
  return undefined;
}

function tellUserError(door: Door, error: UserError, json: boolean): ExitCode {
  if (json) {
    const { message, findings, details } = error;
    door.out(
      jsonText({
        error: { exitCode: exitCodes.badInput, message, problems: findings.map(plainFinding), ...details },
      }),
    );
  } else {
    door.err(`${error.message}\n`);
  }
  return exitCodes.badInput;
}

function tellFault(door: Door, error: unknown, json: boolean): ExitCode {
  const message = plainText(error instanceof Error ? `${error.name}: ${error.message}` : String(error));
  if (json) door.out(jsonText({ error: { exitCode: exitCodes.fault, message, problems: [] } }));
  else door.err(`This is a fault of keepwright itself, not yours. ${message}\n`);
  return exitCodes.fault;
}

const askedForHelp = (error: unknown): boolean => error instanceof CommanderError && error.exitCode === 0;

function failed(door: Door, error: unknown, words: readonly string[]): ExitCode {
  if (askedForHelp(error)) return exitCodes.done;
  const json = wantsJson(words);
  const mistake = asUserError(error, words);
  return mistake ? tellUserError(door, mistake, json) : tellFault(door, error, json);
}

function begun(words: readonly string[], door: Door, outcome: CommandOutcome): ExitCode {
  try {
    const program = keepwrightProgram(door, outcome);
    if (words.length === 0) {
      door.err(program.helpInformation());
      return exitCodes.badInput;
    }
    program.parse(words.map(asWords), { from: "user" });
    return outcome.code;
  } catch (error) {
    return failed(door, error, words);
  }
}

/** Runs one command line that is done in one go and returns the exit code. Never throws. */
export const run = (words: readonly string[], door: Door): ExitCode =>
  begun(words, door, { code: exitCodes.done });

/** Runs any command line to its end, also one that takes longer than one go. Never rejects. */
export async function runToEnd(words: readonly string[], door: Door): Promise<ExitCode> {
  const outcome: CommandOutcome = { code: exitCodes.done };
  const code = begun(words, door, outcome);
  try {
    return outcome.later ? await outcome.later() : code;
  } catch (error) {
    return failed(door, error, words);
  }
}
