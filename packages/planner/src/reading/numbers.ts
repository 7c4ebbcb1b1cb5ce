import type { Token } from "./tokens.js";

/** A count as it was written: a value, whether it was only a rough one, and where it ends. */
export interface ReadNumber {
  readonly value: number;
  /** "rough" for a range, a couple, "about"; "vague" for "a few" and "some". */
  readonly exactness: "exact" | "rough" | "vague";
  /** Pieces of something divided: "two halves", "3 quarters". */
  readonly divided?: boolean;
  /** Only the word for such pieces, without a number: the "halves" of "2 avocado halves". */
  readonly pieces?: boolean;
  /** Figures after the point or comma, where there is one. */
  readonly decimals?: number;
  /** "1,250" and "1.500": thousands or decimals, which only the unit tells. */
  readonly grouped?: "comma" | "point";
  /** "half of the": a part of the one thing, or of the several, named next. */
  readonly definite?: boolean;
  /** "A", or a part of "a": one thing is meant, and no share of several. */
  readonly article?: boolean;
  /** A share of what was told before, not a count: "half of them", "50 %". */
  readonly share?: boolean;
  /** Counted among what was told before: "2 of them", "both". */
  readonly ofThem?: boolean;
  /** No amount that could be taken, although it is written as one: a price, a measure of length, "some". */
  readonly unclear?: boolean;
  /** “Un cuarto de champiñones”: of a kilogram, where several are named. */
  readonly ofKilo?: boolean;
  /** All that the other parts leave: "the rest". */
  readonly rest?: boolean;
  readonly next: number;
}

const fractions: Record<string, number> = {
  "½": 1 / 2,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
};
const units = [
  ["zero", "cero", "no"],
  ["a", "an", "one", "un", "una", "uno", "single", "ones"],
  ["two", "dos", "both"],
  ["three", "tres"],
  ["four", "cuatro"],
  ["five", "cinco"],
  ["six", "seis"],
  ["seven", "siete"],
  ["eight", "ocho"],
  ["nine", "nueve"],
  ["ten", "diez"],
  ["eleven"],
  ["twelve", "doce"],
  ["thirteen", "trece"],
  ["fourteen", "catorce"],
  ["fifteen", "quince"],
  ["sixteen"],
  ["seventeen"],
  ["eighteen"],
  ["nineteen"],
];
const tens: Record<string, number> = {
  twenty: 20,
  veinte: 20,
  thirty: 30,
  treinta: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};
const words: Record<string, number> = Object.fromEntries(
  units.flatMap((names, value) => names.map((name) => [name, value])),
);
const parts: Record<string, number> = {
  half: 1 / 2,
  halves: 1 / 2,
  medio: 1 / 2,
  media: 1 / 2,
  quarter: 1 / 4,
  quarters: 1 / 4,
  mitad: 1 / 2,
  mitades: 1 / 2,
  cuarto: 1 / 4,
  cuartos: 1 / 4,
  third: 1 / 3,
  thirds: 1 / 3,
};
const spanishParts: ReadonlySet<string> = new Set("medio media mitad mitades cuarto cuartos".split(" "));
const severalParts: ReadonlySet<string> = new Set(["halves", "quarters", "thirds", "mitades", "cuartos"]);
const dozens: Record<string, number> = {
  dozen: 12,
  dozens: 12,
  doz: 12,
  docena: 12,
  docenas: 12,
  hundred: 100,
};
/** Rough counts in words. A few as three and several as four are common practice, no source; they are always shown as assumed. */
const rough: Record<string, { value: number; exactness: "rough" | "vague" }> = {
  couple: { value: 2, exactness: "rough" },
  pair: { value: 2, exactness: "exact" as "rough" },
  par: { value: 2, exactness: "rough" },
  few: { value: 3, exactness: "vague" },
  several: { value: 4, exactness: "vague" },
  varios: { value: 4, exactness: "vague" },
  varias: { value: 4, exactness: "vague" },
  algunos: { value: 3, exactness: "vague" },
  algunas: { value: 3, exactness: "vague" },
  pocos: { value: 3, exactness: "vague" },
  pocas: { value: 3, exactness: "vague" },
  unos: { value: 3, exactness: "vague" },
  unas: { value: 3, exactness: "vague" },
};
const has = <Value>(table: Record<string, Value>, key: string | undefined): key is string =>
  key !== undefined && Object.hasOwn(table, key);

const exact = (value: number, next: number): ReadNumber => ({ value, exactness: "exact", next });

/** What the spelling of figures tells beside their value. */
function spelling(text: string): Pick<ReadNumber, "decimals" | "grouped"> {
  const [, mark, after] = /^\d*([.,])(\d+)(?:e[+-]?\d+)?$/i.exec(text) ?? [];
  if (mark === undefined) return /e-/i.test(text) ? { decimals: Infinity } : {};
  const grouped = /^[1-9]\d{0,2}[.,]\d{3}$/.test(text) ? (mark === "," ? "comma" : "point") : undefined;
  return {
    ...(grouped === "comma" ? {} : { decimals: after!.length }),
    ...(grouped ? { grouped } : {}),
  };
}

/** "1.5", "1,5", "1,000", "12". Undefined when it is no one number ("1,2,3"). */
function digits(text: string): number | undefined {
  if (Object.hasOwn(fractions, text)) return fractions[text];
  if (/^[1-9]\d{0,2}(?:[\u00a0\u2009\u202f]\d{3})+$/.test(text)) return Number(text.replace(/\D/g, ""));
  if (/^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(text)) return Number(text.replaceAll(",", ""));
  if (/^\.\d+$/.test(text)) return Number(text);
  if (/^\d+(?:[.,]\d+)?(?:e[+-]?\d+)?$/i.test(text)) return Number(text.replace(",", "."));
  return undefined;
}

/** "1/2" from `at`, as a number below one. */
function slashFraction(tokens: readonly Token[], at: number): ReadNumber | undefined {
  const [above, slash, below] = tokens.slice(at, at + 3);
  if (above?.kind !== "number" || below?.kind !== "number" || !(slash?.text === "/" || slash?.text === "⁄"))
    return undefined;
  const value = Number(above.text) / Number(below.text);
  return value > 0 && value < 10 ? exact(value, at + 3) : undefined;
}

/**
 * "1 000", "12 050": thousands parted by one space. Only where the next group begins with 0, for "2 500 g" may as well
 * be two of 500 g; a space that does not break is always within a number and is read in `digits`.
 */
function inGroups(tokens: readonly Token[], at: number): ReadNumber | undefined {
  const first = tokens[at]!;
  if (!/^[1-9]\d{0,2}$/.test(first.text)) return undefined;
  let text = first.text;
  let next = at + 1;
  let begins = /^0\d{2}$/;
  for (let token = tokens[next]; token; token = tokens[next]) {
    if (token.kind !== "number" || token.from !== tokens[next - 1]!.to + 1 || !begins.test(token.text)) break;
    text += token.text;
    begins = /^\d{3}$/;
    next++;
  }
  return next > at + 1 ? exact(Number(text), next) : undefined;
}

function inDigits(tokens: readonly Token[], at: number): ReadNumber | undefined {
  const first = tokens[at];
  if (first?.kind !== "number") return undefined;
  const fraction = slashFraction(tokens, at);
  if (fraction) return throughPart(tokens, fraction);
  const grouped = inGroups(tokens, at);
  if (grouped) return grouped;
  const value = digits(first.text);
  if (value === undefined) return undefined;
  const after = tokens[at + 1];
  if (Number.isInteger(value) && value > 0 && value < 10 && has(parts, after?.folded))
    return throughPart(tokens, { ...exact(value * parts[after!.folded]!, at + 2), divided: true });
  if (Number.isInteger(value) && after && has(fractions, after.text))
    return exact(value + fractions[after.text]!, at + 2);
  const added = Number.isInteger(value) ? slashFraction(tokens, at + 1) : undefined;
  if (added && added.value < 1) return exact(value + added.value, added.next);
  const read = { ...exact(value, at + 1), ...spelling(first.text) };
  return value < 1 ? throughPart(tokens, read) : read;
}

const themWords = new Set(["them", "it", "which", "ellos", "ellas"]);
const articles = new Set(["a", "an", "un", "una"]);
const definiteWords = new Set(["the", "these", "those", "my", "our", "los", "las", "mis"]);

/** Where "of them" ends, when it begins at a token. */
export function afterOfThem(tokens: readonly Token[], at: number): number | undefined {
  const them = ["of", "de"].includes(tokens[at]?.folded ?? "") && tokens[at + 1];
  return them && themWords.has(them.folded) ? at + 2 : undefined;
}

/** Skips "of", "a", "an", "the" after a part: "half of an onion"; but "of them" is left standing. */
function throughPart(tokens: readonly Token[], read: ReadNumber): ReadNumber {
  let { next } = read;
  if (afterOfThem(tokens, next) !== undefined) return read;
  while (["of", "de"].includes(tokens[next]?.folded ?? "")) next++;
  const article = tokens[next]?.folded ?? "";
  if (definiteWords.has(article)) return { ...read, definite: true, next: next + 1 };
  if (articles.has(article)) return { ...read, article: true, next: next + 1 };
  const ofKilo = tokens[read.next]?.folded === "de" && !tokens[read.next - 1]!.folded.startsWith("mitad");
  return { ...read, ...(ofKilo ? { ofKilo } : {}), next };
}

function inWords(tokens: readonly Token[], at: number): ReadNumber | undefined {
  const word: string | undefined = tokens[at]?.folded;
  if (tokens[at]?.kind !== "word") return undefined;
  if (has(rough, word)) return { ...rough[word]!, next: at + 1 };
  if (has(tens, word)) {
    const one = tokens[at + 1]?.text === "-" ? at + 2 : at + 1;
    const unit = words[tokens[one]?.folded ?? ""];
    return unit !== undefined && unit > 0 && unit < 10 && tokens[one]!.folded.length > 2
      ? exact(tens[word]! + unit, one + 1)
      : exact(tens[word]!, at + 1);
  }
  if (has(parts, word))
    return throughPart(tokens, {
      ...exact(parts[word]!, at + 1),
      ...(severalParts.has(word) ? { pieces: true } : {}),
    });
  if (has(dozens, word)) return exact(dozens[word]!, at + 1);
  if (!has(words, word)) return undefined;
  const after = tokens[at + 1]?.folded;
  if (words[word] === 1 && has(rough, after)) return { ...rough[after]!, next: at + 2 };
  if (has(parts, after) && words[word]! < 10)
    return throughPart(tokens, { ...exact(words[word]! * parts[after]!, at + 2), divided: true });
  return { ...exact(words[word]!, at + 1), ...(articles.has(word) ? { article: true } : {}) };
}

/** "two and a half" and "a dozen": what may follow a plain number and change it. */
function extended(tokens: readonly Token[], read: ReadNumber): ReadNumber {
  const [first, second, third] = tokens.slice(read.next, read.next + 3).map((token) => token.folded);
  if (has(dozens, first)) return { ...read, value: read.value * dozens[first]!, next: read.next + 1 };
  if (first !== "and" && first !== "y") return read;
  if ((second === "a" || second === "an") && has(parts, third))
    return { ...read, value: read.value + parts[third]!, next: read.next + 3 };
  // "2 y medio", but not "2 and medio kilo": the joint and the part are of one language.
  const sameLanguage = (first === "y") === spanishParts.has(second ?? "");
  if (has(parts, second) && sameLanguage && !["a", "an", "of"].includes(third ?? ""))
    return { ...read, value: read.value + parts[second]!, next: read.next + 2 };
  return read;
}

function plain(tokens: readonly Token[], at: number): ReadNumber | undefined {
  const read = inDigits(tokens, at) ?? inWords(tokens, at);
  return read && extended(tokens, read);
}

const rangeWords = new Set(["-", "–", "—", "to", "or", "~", "a", "o"]);

/** The number that begins at a token, in digits or words, with fractions and ranges; undefined when there is none. */
export function numberAt(tokens: readonly Token[], at: number): ReadNumber | undefined {
  const first = plain(tokens, at);
  if (!first) return undefined;
  const link = tokens[first.next];
  if (!link || !rangeWords.has(link.folded)) return first;
  // "a" links two numbers only in Spanish figures ("2 a 3"); in words it is an article ("one a bunch").
  if (link.folded === "a" && (tokens[at]?.kind !== "number" || tokens[first.next + 1]?.kind !== "number"))
    return first;
  const second = plain(tokens, first.next + 1);
  if (!second || second.value <= first.value) return first;
  const grouped = first.grouped === second.grouped ? first.grouped : undefined;
  return {
    value: (first.value + second.value) / 2,
    exactness: "rough",
    ...(grouped ? { grouped } : {}),
    next: second.next,
  };
}
