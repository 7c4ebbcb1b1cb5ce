import type { Element, ElementOf } from "./elements.js";
import type { Token } from "./tokens.js";

type NumberElement = ElementOf<"number">;

const passedOver = new Set<Element["type"]>(["size", "descriptor", "connective"]);
const articles: ReadonlySet<string> = new Set("a an un una".split(" "));
/** Before a number these make it a day of the month. */
const dayLeads: ReadonlySet<string> = new Set("del el on the since desde dia of from".split(" "));
/** Shares that people write as one number over another; any other such pair is rather a date. */
const shares: ReadonlySet<string> = new Set(["1/2", "1/3", "2/3", "1/4", "3/4", "1/8"]);

/** "Leftover half onion": what is left over is mostly told before its amount. */
const isCutting = (element: Element): boolean =>
  element.type === "state" &&
  !element.change.leftOver &&
  (element.change.form === "cut" || element.change.begun === true);

/** The element behind a number, over a hyphen and words that change nothing. */
function behind(elements: readonly Element[], index: number): Element | undefined {
  let at = index + 1;
  const hyphen = elements[at];
  if (hyphen?.type === "separator" && hyphen.mark === "hyphen") at++;
  while (elements[at] && passedOver.has(elements[at]!.type)) at++;
  return elements[at];
}

/** Is it written as a day may be: 9/6, 9-6, 9.6? */
function mayBeDate(text: string, value: number): boolean {
  const [over] = /\d+\s*\/\s*\d+/.exec(text) ?? [];
  if (over !== undefined) return !shares.has(over.replace(/\s/g, ""));
  if (/\d\s*[-–]\s*\d/.test(text)) return true;
  return /\d[.,]\d/.test(text) && !Number.isInteger(value * 4);
}

/** Counted with "x", of those told before, or with a unit: surely an amount. */
function isAmount({ number, times }: NumberElement, next: Element | undefined): boolean {
  return times || number.ofThem === true || next?.type === "unit" || next?.type === "package";
}

/** Behind the word that says it is cut, a number is an amount only of a part in another state: "2 cut, 1 ripe". */
const isOfPart = (next: Element | undefined): boolean =>
  next?.type === "state" &&
  (next.change.form !== undefined || next.change.begun === true || next.change.ripeness !== undefined);

/**
 * Is there a number, among the elements around something cut, that may tell when it was cut: one without a unit behind the word for the cutting, a
 * second one without a unit, one written as a date is, or one that is led as a day is?
 */
export function strayNumbers(tokens: readonly Token[], elements: readonly Element[]): boolean {
  const cutting = elements.findIndex(isCutting);
  const name = elements.findIndex(({ type }) => type === "name");
  const start = cutting >= 0 ? cutting : name;
  let bare = 0;
  return elements.some((element, index) => {
    if (element.type !== "number") return false;
    const next = behind(elements, index);
    if (isAmount(element, next)) return false;
    const words = tokens.slice(element.first, element.next);
    if (words.every(({ folded }) => articles.has(folded))) return false;
    const led = dayLeads.has(tokens[element.first - 1]?.folded ?? "");
    if (led && words[0]?.kind === "number") return true;
    if (mayBeDate(words.map(({ text }) => text).join(""), element.number.value)) return true;
    if (next?.type === "number" && words[0]?.kind === "number" && tokens[next.first]?.kind === "number")
      return true;
    if (isOfPart(next)) return false;
    // “Repollo 1/2”, "2 avocado halves".
    if (cutting < 0 && element.number.value < 1) return false;
    bare++;
    return bare > 1 || index > start;
  });
}
