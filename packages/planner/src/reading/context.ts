import type { Element } from "./elements.js";
import type { Token } from "./tokens.js";

/** Words that say of the name after them that it did not come home. */
const negators = new Set(
  "not without except excepting excluding minus neither nor sin excepto salvo menos ni".split(" "),
);
const negatingPairs = new Set(["instead of", "rather than", "en vez", "out of", "in place"]);
const passedOver = new Set<Element["type"]>([
  "negation",
  "connective",
  "descriptor",
  "size",
  "state",
  "package",
  "number",
  "unit",
]);

/** A word that may deny the name after it ("not", "sin", "instead of"). */
export function negationAt(tokens: readonly Token[], at: number): Element | undefined {
  const word = tokens[at]!.folded;
  if (word === "w" && tokens[at + 1]?.text === "/" && tokens[at + 2]?.folded === "o")
    return { type: "negation", first: at, next: at + 3 };
  if (negators.has(word)) return { type: "negation", first: at, next: at + 1 };
  return negatingPairs.has(`${word} ${tokens[at + 1]?.folded}`)
    ? { type: "negation", first: at, next: at + 2 }
    : undefined;
}

/** The first element from a place on that is not of the given types. */
const beyond = (elements: readonly Element[], from: number, types: ReadonlySet<Element["type"]>) =>
  elements.slice(from).find((element) => !types.has(element.type));

const additions = new Set(["and", "y", "e"]);
/** Beyond "and", a name with an amount of its own came home after all: "not pears and 3 plums". */
const passedOverAfterAnd = new Set([...passedOver].filter((type) => type !== "number" && type !== "unit"));

/**
 * Keeps a negation only where a name follows it; elsewhere it is a word not understood. It reaches over "or" and "and" to
 * the next name, and so does "no", which is read as a count of nothing.
 */
export function withNegations(tokens: readonly Token[], elements: readonly Element[]): Element[] {
  let reaches = false;
  return elements.map((element, index): Element => {
    const { type, first, next } = element;
    const { folded } = tokens[first]!;
    const or = type === "connective" && element.or === true;
    const and = type === "separator" && additions.has(folded);
    const end = beyond(elements, index + 1, and ? passedOverAfterAnd : passedOver);
    const denies = end?.type === "name";
    if (type === "negation" || ((or || and) && reaches && denies)) {
      reaches = denies;
      return { type: denies ? "negation" : "unknown", first, next };
    }
    if (type === "number" && folded === "no") reaches = denies;
    else if (type === "separator" || type === "unknown") reaches = false;
    return element;
  });
}

const vagueShares = new Set(
  "some most mostly many part partly mainly algunos algunas unos unas muchos muchas parte".split(" "),
);
const restWords = new Set(
  "rest remainder remaining other others resto demas otro otra otros otras".split(" "),
);
const saidOfThem = new Set<Element["type"]>(["connective", "descriptor", "size", "state"]);

/**
 * "Some ripe": a part that nobody could weigh; "the rest hard": what the other parts leave. Before a name, "some" only
 * stands for "a few or more" and says nothing.
 */
export function withWordyParts(tokens: readonly Token[], elements: readonly Element[]): Element[] {
  return elements.map((element, index): Element => {
    const { first, next } = element;
    const { folded } = tokens[first]!;
    const rest = restWords.has(folded);
    if (next !== first + 1 || !(rest || vagueShares.has(folded))) return element;
    if (element.type === "name" || element.type === "state") return element;
    const end = beyond(elements, index + 1, saidOfThem);
    if (end !== undefined && end.type !== "separator") return element;
    const stop = end === undefined ? elements.length : elements.indexOf(end);
    if (!elements.slice(index + 1, stop).some(({ type }) => type === "state")) return element;
    const which = rest ? { rest } : { unclear: true };
    const number = { value: 1, exactness: "vague", ofThem: true, ...which, next } as const;
    return { type: "number", number, negative: false, times: false, first, next };
  });
}

const describing = new Set<Element["type"] | undefined>(["state", "size", "descriptor"]);

/** "A hard one": here "one" counts nothing. */
export function withoutPronouns(tokens: readonly Token[], elements: readonly Element[]): Element[] {
  return elements.map((element, index): Element => {
    const { type, first, next } = element;
    if (type !== "number" || !["one", "ones"].includes(tokens[first]!.text.toLowerCase())) return element;
    const after = elements[index + 1]?.type;
    const ends = after === undefined || after === "separator" || after === "number";
    const stands = next === first + 1 && ends && describing.has(elements[index - 1]?.type);
    return stands ? { type: "descriptor", roughly: false, first, next } : element;
  });
}
