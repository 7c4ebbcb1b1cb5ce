import type { StateChange } from "./stateWords.js";
import type { Token } from "./tokens.js";

/** "A bit green": these take something off what follows, so that their "a" counts nothing. */
const weakening = [
  ["a", "little", "bit"],
  ["a", "wee", "bit"],
  ["a", "tiny", "bit"],
  ["a", "bit"],
  ["a", "little"],
  ["a", "touch"],
  ["un", "poquito"],
  ["un", "poco"],
  ["un", "pelin"],
  ["algo"],
];
/** And these take nothing off. */
const plain = [["bastante"], ["quite"], ["fairly"], ["rather"], ["todavia"], ["aun"]];

export interface Degree {
  readonly weakens: boolean;
  readonly next: number;
}

/** A phrase of degree that begins at a token: "a bit", “un poco”. */
export function degreeAt(tokens: readonly Token[], at: number): Degree | undefined {
  const stands = (words: readonly string[]) =>
    words.every((word, index) => tokens[at + index]?.folded === word);
  const weak = weakening.find(stands);
  const found = weak ?? plain.find(stands);
  return found && { weakens: weak !== undefined, next: at + found.length };
}

/** A state of that degree: a bit green is on the way to ripe. */
export function weakened(change: StateChange, { weakens }: Degree): StateChange {
  if (!weakens || change.ripeness === undefined) return change;
  if (change.ripeness === "unripe") return { ...change, ripeness: "turning" };
  return change.ripeness === "very ripe" ? { ...change, ripeness: "ripe" } : change;
}
