import type { Catalogue } from "@keepwright/catalogue";
import { timeWords } from "./ageWords.js";
import { isCounted, withPlantParts, withShapes } from "./behindNames.js";
import { negationAt, withNegations, withoutPronouns, withWordyParts } from "./context.js";
import { countAt } from "./counts.js";
import { dateWords } from "./dateWords.js";
import type { Element } from "./elements.js";
import { nameAt, type SpellingGuesses, sameNameFrom } from "./names.js";
import { noProduceAt } from "./noProduceWords.js";
import { markAt as notKeptAt } from "./notKeptWords.js";
import { packageAt } from "./packages.js";
import { connectives, descriptors, joiners, joiningMarks, orWords, roughly, sizes } from "./plainWords.js";
import { remarkAt } from "./remarks.js";
import { isShape } from "./shapes.js";
import { stateAt } from "./states.js";
import type { Token } from "./tokens.js";
import { type Unit, unitNamed } from "./units.js";
import { withVarieties } from "./varieties.js";

const hardMarks = new Set([";", ".", "!", "?", "。", "；"]);

/** Mark-up that parts the items of pasted lists; any other is asked about. */
const layout = /^<\/?(?:br|div|li|ol|p|table|tbody|td|th|tr|ul)\b[^<>]*>$/i;
/** A price follows, or nothing that is known. */
const isUnclear = (token: Token) => token.text === "@" || /^[%‰٪]$/.test(token.text);
const isMarkUp = (token: Token) => token.text.startsWith("<") && token.text.length > 1;

function markAt(token: Token, at: number): Element {
  const place = { first: at, next: at + 1 };
  if (token.text === "-" && !token.spaced) return { type: "separator", mark: "hyphen", ...place };
  if (isMarkUp(token) && !layout.test(token.text)) return { type: "unknown", markUp: true, ...place };
  if (joiningMarks.has(token.text) || isMarkUp(token)) return { type: "separator", mark: "soft", ...place };
  if (hardMarks.has(token.text)) return { type: "separator", mark: "hard", ...place };
  if ("([{".includes(token.text)) return { type: "separator", mark: "open", ...place };
  if (")]}".includes(token.text)) return { type: "separator", mark: "close", ...place };
  if (token.text === "~") return { type: "descriptor", roughly: true, ...place };
  return /^[\p{P}\p{C}\p{Z}]$/u.test(token.text) && !isUnclear(token)
    ? { type: "connective", ...place }
    : { type: "unknown", ...place };
}

function plainWordAt(token: Token, at: number): Element | undefined {
  const place = { first: at, next: at + 1 };
  const word = token.folded;
  if (joiners.has(word)) return { type: "separator", mark: "soft", word: true, ...place };
  if (Object.hasOwn(sizes, word)) return { type: "size", size: sizes[word]!, ...place };
  if (roughly.has(word) || descriptors.has(word))
    return { type: "descriptor", roughly: roughly.has(word), ...place };
  if (connectives.has(word))
    return { type: "connective", ...(orWords.has(word) ? { or: true } : {}), ...place };
  return undefined;
}

/** The full stop of "2 lb. apples" belongs to the unit. */
const afterUnit = (tokens: readonly Token[], at: number): number =>
  tokens[at + 1]?.text === "." && !tokens[at + 1]!.spaced && at + 2 < tokens.length ? at + 2 : at + 1;

/** A shape counted ("2 slices"), or one of it ("wedge of cabbage"): a unit, where elsewhere it only says that all is cut. */
function shapeAt(tokens: readonly Token[], at: number, counted: boolean): Unit | undefined {
  const { folded } = tokens[at]!;
  const one = !folded.endsWith("s") && ["of", "de"].includes(tokens[at + 1]?.folded ?? "");
  const unit = counted || one ? unitNamed(folded, true) : undefined;
  return unit?.of === "household" && isShape(unit.name) ? unit : undefined;
}

/** Everything but misspelt names: the element that begins at a token. */
function elementAt(
  catalogue: Catalogue,
  tokens: readonly Token[],
  at: number,
  afterNumber: boolean,
  counted: boolean,
): Element {
  const token = tokens[at]!;
  const name = token.kind === "word" ? nameAt(catalogue, tokens, at) : undefined;
  const other = notKeptAt(tokens, at);
  const told = stateAt(tokens, at);
  // "2 pieces of honeydew" is an amount.
  const state = counted && told?.change.piecesOf ? undefined : told;
  if (other && (!name || other.next > name.next) && (!state || other.next >= state.next))
    return { type: "not fresh", mark: other.mark, remark: other.remark, first: at, next: other.next };
  const remark = state ? undefined : remarkAt(tokens, at);
  if (remark) return remark;
  const box = packageAt(tokens, at);
  if (box && (!name || box.next > name.next))
    return { type: "package", unit: box.unit, behind: box.behind, first: at, next: box.next };
  const shape = name ? undefined : shapeAt(tokens, at, counted);
  if (shape) return { type: "unit", unit: shape, first: at, next: at + 1 };
  // "green beans" is a name, "green" alone a state: the longer wins, unless what follows the state names the same kind.
  if (state && (!name || state.next >= name.next || sameNameFrom(catalogue, tokens, state.next, name)))
    return { type: "state", change: state.change, first: at, next: state.next };
  const unit = unitNamed(token.folded, afterNumber);
  const afterOf = ["of", "de"].includes(tokens[at + 1]?.folded ?? "") ? at + 2 : at + 1;
  const unitFirst =
    unit &&
    (!name ||
      name.next === at + 1 ||
      ((afterNumber || afterOf === at + 2) && sameNameFrom(catalogue, tokens, afterOf, name)));
  if (unit && unitFirst) return { type: "unit", unit, first: at, next: afterUnit(tokens, at) };
  if (name) return { type: "name", name: name.name, first: at, next: name.next };
  const count = countAt(tokens, at);
  if (count) return count;
  return token.kind === "mark"
    ? markAt(token, at)
    : (negationAt(tokens, at) ?? plainWordAt(token, at) ?? { type: "unknown", first: at, next: at + 1 });
}

/** Where "and a half" ends, in "a pound and a half of cherries"; undefined when a name follows ("1 lb and half a melon"). */
function andAHalf(tokens: readonly Token[], at: number): number | undefined {
  if (!["and", "y"].includes(tokens[at]?.folded ?? "")) return undefined;
  const half = ["a", "an"].includes(tokens[at + 1]?.folded ?? "") ? at + 2 : at + 1;
  const closes = tokens[half + 1] === undefined || ["of", "de"].includes(tokens[half + 1]!.folded);
  return ["half", "medio", "media"].includes(tokens[half]?.folded ?? "") && closes ? half + 1 : undefined;
}

/** "A pound and a half" and “kilo y medio”: the number before the unit grows by a half, or is one and a half where none stands there. */
function withHalf(before: Element[], unit: Element, next: number): Element[] {
  const last = before.at(-1);
  if (last?.type !== "number") {
    const number = { value: 1.5, exactness: "exact", next: unit.first } as const;
    const place = { first: unit.first, next: unit.first };
    return [
      { type: "number", number, negative: false, times: false, ...place },
      { ...unit, next },
    ];
  }
  before[before.length - 1] = { ...last, number: { ...last.number, value: last.number.value + 0.5 } };
  return [{ ...unit, next }];
}

/** "Apple butter": what is no produce, right behind one thing's name, may be the second half of another name. */
const endsName = (last: Element | undefined, found: Element): boolean =>
  last?.type === "name" && last.name.singular && found.type === "name" && found.name.notKept === "no produce";

function lexExactly(catalogue: Catalogue, tokens: readonly Token[]): Element[] {
  const elements: Element[] = [];
  for (let at = 0; at < tokens.length; ) {
    const last = elements.at(-1);
    const afterNumber =
      last?.type === "number" ||
      last?.type === "size" ||
      (last?.type === "separator" && last.mark === "hyphen" && elements.at(-2)?.type === "number");
    const found = elementAt(catalogue, tokens, at, afterNumber, isCounted(elements, elements.length));
    const element = endsName(last, found)
      ? ({ type: "unknown", first: at, next: found.next } as const)
      : found;
    const half = element.type === "unit" ? andAHalf(tokens, element.next) : undefined;
    elements.push(...(half === undefined ? [element] : withHalf(elements, element, half)));
    at = half ?? element.next;
  }
  return elements;
}

/** May a misspelt name hold it? Colours are in many names, ripeness in none. */
const isInNames = (element: Element) =>
  element.type === "state"
    ? element.change.colour !== undefined
    : ["unknown", "descriptor", "unit", "size"].includes(element.type);

/** Gives unknown words that are near a name that name, unless a known name follows: then they describe it. */
function withGuesses(
  tokens: readonly Token[],
  elements: readonly Element[],
  guesses: SpellingGuesses,
): Element[] {
  const mayBeNamed: boolean[] = [];
  for (const element of elements)
    for (let index = element.first; index < element.next; index++) mayBeNamed[index] = isInNames(element);
  const stops = (token: number) => !mayBeNamed[token];
  const result: Element[] = [];
  for (let index = 0; index < elements.length; ) {
    const element = elements[index]!;
    const run = elements.slice(index).findIndex((other) => other.type !== "unknown");
    const describes = run >= 0 && elements[index + run]?.type === "name";
    const { folded } = tokens[element.first]!;
    const ofTime = timeWords.has(folded) || dateWords.has(folded);
    const guess =
      element.type === "unknown" && !describes && !ofTime && noProduceAt(tokens, element.first) === undefined
        ? guesses.at(tokens, element.first, stops)
        : undefined;
    if (guess) {
      result.push({ type: "name", name: guess.name, first: element.first, next: guess.next });
      while (index < elements.length && elements[index]!.first < guess.next) index++;
    } else {
      result.push(element);
      index++;
    }
  }
  return result;
}

const wordsInPlace = (tokens: readonly Token[], elements: readonly Element[]) =>
  withWordyParts(tokens, withoutPronouns(tokens, elements));

/** The elements of one line's tokens, in order, covering every token. */
export function lex(catalogue: Catalogue, tokens: readonly Token[], guesses: SpellingGuesses): Element[] {
  const withWhole = (elements: readonly Element[]) =>
    withPlantParts(catalogue, tokens, withShapes(catalogue, tokens, elements));
  const exact = withWhole(wordsInPlace(tokens, lexExactly(catalogue, tokens)));
  // What stands behind a misspelt name is looked at once more.
  return withNegations(tokens, withVarieties(tokens, withWhole(withGuesses(tokens, exact, guesses))));
}
