import type { Element } from "./elements.js";
import { afterOfThem, numberAt, type ReadNumber } from "./numbers.js";
import type { Token } from "./tokens.js";

const minus = new Set(["-", "−", "–"]);
const times = new Set(["x", "×", "*"]);
const currency = /^\p{Sc}$/u;
const currencyWords = new Set(
  "dollar dollars usd euro euros eur cent cents pence quid bucks peso pesos mxn gbp centavos centimos".split(
    " ",
  ),
);
const rateWords = new Set(["per", "por"]);
const percentWords = new Set(["%", "٪", "percent", "pct"]);
const inchMarks = new Set(['"', "'", "″", "′", "”", "’"]);

/** Where "%", "percent", "per cent" or "por ciento" ends, when it begins at a token. */
function afterPercent(tokens: readonly Token[], at: number): number | undefined {
  if (percentWords.has(tokens[at]?.folded ?? "")) return at + 1;
  const both = `${tokens[at]?.folded} ${tokens[at + 1]?.folded}`;
  return both === "per cent" || both === "por ciento" ? at + 2 : undefined;
}

/** The inch mark of `6" cucumber`; not the quotation mark that closes what was opened before. */
function isInchMark(tokens: readonly Token[], at: number): boolean {
  const mark = tokens[at];
  if (!mark || mark.spaced || !inchMarks.has(mark.text)) return false;
  return !tokens.slice(0, at).some(({ text }) => text === mark.text || "“‘".includes(text));
}

/** What stands right behind a number and changes what it is: a share, one of those told before, or no amount at all. */
function qualified(tokens: readonly Token[], number: ReadNumber): ReadNumber {
  const { next } = number;
  const percent = afterPercent(tokens, next);
  if (percent !== undefined) {
    const of = afterOfThem(tokens, percent) ?? percent;
    return { ...number, value: number.value / 100, share: true, ofThem: true, next: of };
  }
  const behind = tokens[next];
  if (
    behind &&
    (currency.test(behind.text) || currencyWords.has(behind.folded) || rateWords.has(behind.folded))
  )
    return { ...number, unclear: true, next: next + 1 };
  if (isInchMark(tokens, next)) return { ...number, unclear: true, next: next + 1 };
  const them = afterOfThem(tokens, next);
  if (them === undefined) return number;
  const { divided: _, ...plain } = number;
  return { ...plain, ofThem: true, ...(number.value < 1 ? { share: true } : {}), next: them };
}

const everyOne = new Set(["both", "ambos", "ambas"]);

/** A number with its sign, with "x" before or after it, and with what makes it a share or a price. */
export function countAt(tokens: readonly Token[], at: number): Element | undefined {
  const first = tokens[at]!;
  if (times.has(first.folded)) {
    const number = numberAt(tokens, at + 1);
    return number && tokens[at + 1]!.kind === "number"
      ? { type: "number", number, negative: false, times: true, first: at, next: number.next }
      : undefined;
  }
  const priced = (currency.test(first.text) || first.text === "@") && tokens[at + 1]?.kind === "number";
  const negative =
    minus.has(first.text) && first.spaced && tokens[at + 1]?.kind === "number" && !tokens[at + 1]!.spaced;
  const plain = numberAt(tokens, negative || priced ? at + 1 : at);
  if (!plain) return undefined;
  const read = qualified(tokens, plain);
  const number = {
    ...read,
    ...(priced ? { unclear: true } : {}),
    ...(everyOne.has(first.folded) ? { ofThem: true } : {}),
  };
  const multiplied = times.has(tokens[number.next]?.folded ?? "");
  return {
    type: "number",
    number,
    negative,
    times: multiplied,
    first: at,
    next: multiplied ? number.next + 1 : number.next,
  };
}
