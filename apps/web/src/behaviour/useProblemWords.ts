import { findingLine, type HandoutContext } from "@keepwright/handout";
import { useDesk } from "./desk.js";
import type { Asking } from "./useAsking.js";

type Problem = Pick<Asking<unknown>, "problem" | "findings">;

/** What is wrong with what was given, in the language of the page; empty where something only stopped, undefined where nothing went wrong. */
export function problemWords(
  { problem, findings }: Problem,
  context: HandoutContext | undefined,
): string | undefined {
  if (problem === undefined) return undefined;
  return findings && context ? findings.map((finding) => findingLine(context, finding)).join(" ") : "";
}

export const useProblemWords = (of: Problem): string | undefined =>
  problemWords(of, useDesk().worked?.context);
