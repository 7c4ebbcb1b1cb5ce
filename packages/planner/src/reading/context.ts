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
  "number",
  "unit",
]);

/** A word that may deny the name after it ("not", "sin", "instead of"). */
export function negationAt(tokens: readonly Token[], at: number): Element | undefined {
  const word = tokens[at]!.folded;
  if (negators.has(word)) return { type: "negation", first: at, next: at + 1 };
  return negatingPairs.has(`${word} ${tokens[at + 1]?.folded}`)
    ? { type: "negation", first: at, next: at + 2 }
    : undefined;
}

/** The first element from a place on that is not of the given types. */
const beyond = (elements: readonly Element[], from: number, types: ReadonlySet<Element["type"]>) =>
  elements.slice(from).find((element) => !types.has(element.type));

const alternatives = new Set(["or", "o", "u"]);

/** Keeps a negation only where a name follows it; it reaches over "or" to the next name. Elsewhere it is a word not understood. */
export function withNegations(tokens: readonly Token[], elements: readonly Element[]): Element[] {
  let reaches = false;
  return elements.map((element, index): Element => {
    if (element.type === "separator" || element.type === "unknown") reaches = false;
    const alternative = element.type === "connective" && alternatives.has(tokens[element.first]!.folded);
    if (element.type !== "negation" && !(alternative && reaches)) return element;
    const denies = beyond(elements, index + 1, passedOver)?.type === "name";
    reaches = denies;
    const { first, next } = element;
    return { type: denies ? "negation" : alternative ? "connective" : "unknown", first, next };
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
