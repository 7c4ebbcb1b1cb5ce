import type { Catalogue } from "@keepwright/catalogue";
import type { CalendarDate } from "@keepwright/quantities";
import { agedItems } from "./agesOfLots.js";
import { clausesOf } from "./clauses.js";
import { withAgesAsked } from "./cutLines.js";
import { itemsOf, strangeWords } from "./items.js";
import { lex } from "./lex.js";
import { lineBefore, rememberLine } from "./linesBefore.js";
import { SpellingGuesses } from "./names.js";
import { connectives, joiningMarks } from "./plainWords.js";
import { mostLots, type NotUnderstood, type Reading, type UnderstoodLot } from "./reading.js";
import { bulletLength, linesOf, type Token, tokensOf, withoutControlSequences } from "./tokens.js";

type Item = UnderstoodLot | NotUnderstood;

/** Questions are bounded too: a pasted book is one question, not thousands. */
const mostItems = 200;
/** Characters of one line that are looked at; a longer line is no line of a shopping list. */
const longestLine = 4000;

const meaningless = /^[\p{P}\p{C}\p{Z}]$/u;
const carriesMeaning = (token: Token) =>
  token.kind === "number" ||
  (token.kind === "word"
    ? !connectives.has(token.folded)
    : !meaningless.test(token.text) && !joiningMarks.has(token.text));

/** Questions about tokens that no item covers, neighbours together, so that nothing typed is ever dropped. */
function leftovers(text: string, tokens: readonly Token[], items: readonly Item[]): NotUnderstood[] {
  const found: NotUnderstood[] = [];
  let run: Token[] = [];
  const close = () => {
    if (run.length === 0) return;
    const from = run[0]!.from;
    const to = run.at(-1)!.to;
    const typed = text.slice(from, to);
    found.push({ kind: "question", typed, from, to, questions: [strangeWords(typed, run)] });
    run = [];
  };
  for (const token of tokens) {
    const covered = items.some((item) => item.from <= token.from && token.to <= item.to);
    if (covered) close();
    else if (carriesMeaning(token)) run.push(token);
  }
  close();
  return found;
}

function readLine(
  catalogue: Catalogue,
  text: string,
  line: string,
  start: number,
  guesses: SpellingGuesses,
): readonly Item[] {
  // Where something was blanked the line says less than what was typed.
  const alike = text.startsWith(line, start);
  const before = alike ? lineBefore(catalogue, line, start, guesses) : undefined;
  if (before) return before;
  guesses.startLine();
  const skipped = bulletLength(line);
  const tokens = tokensOf(line.slice(skipped), start + skipped);
  const elements = lex(catalogue, tokens, guesses);
  const items = clausesOf(elements).flatMap((clause) => itemsOf(catalogue, text, tokens, clause));
  const all = [...items, ...leftovers(text, tokens, items)].sort((one, other) => one.from - other.from);
  const read = withAgesAsked(catalogue, all, tokens, elements);
  const asked = guesses.askedInLine();
  if (alike && asked) rememberLine(catalogue, line, { start, items: read, asked });
  return read;
}

/** Everything from a position on as one question. */
function theRest(text: string, from: number): Item[] {
  const typed = text.slice(from).trimEnd();
  return typed.trim() === ""
    ? []
    : [
        {
          kind: "question",
          typed,
          from,
          to: from + typed.length,
          questions: [{ ask: "too many lots", word: typed.slice(0, 80) }],
        },
      ];
}

/** Where the items must stop, so that there are at most `mostLots` lots and `mostItems` items. */
function roomFor(items: readonly Item[], more: readonly Item[]): number {
  let lots = items.filter((item) => item.kind === "lot").length;
  for (const [index, item] of more.entries()) {
    if (item.kind === "lot") lots++;
    if (lots > mostLots || items.length + index >= mostItems) return index;
  }
  return more.length;
}

/**
 * Reads what a person typed, pasted or spoke of what came home. Each lot says what was understood, how surely, and what
 * was taken for granted; whatever was not understood comes back as a question. Never throws, whatever the text; the same
 * text on the same day gives the same reading. `on`: the day it is now, by which "since Monday" is understood; without it it is asked.
 */
export function readHaul(text: string, catalogue: Catalogue, on?: CalendarDate): Reading {
  return { items: typeof text === "string" ? agedItems(itemsIn(text, catalogue), on) : [] };
}

function itemsIn(text: string, catalogue: Catalogue): readonly Item[] {
  const items: Item[] = [];
  const guesses = new SpellingGuesses(catalogue);
  for (const { line, start } of linesOf(withoutControlSequences(text))) {
    const read = readLine(catalogue, text, line.slice(0, longestLine), start, guesses);
    const room = roomFor(items, read);
    items.push(...read.slice(0, room));
    if (room < read.length) return [...items, ...theRest(text, read[room]!.from)];
    if (line.length > longestLine) return [...items, ...theRest(text, start + longestLine)];
  }
  return items;
}
