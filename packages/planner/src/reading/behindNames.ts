import type { Catalogue, Commodity } from "@keepwright/catalogue";
import type { Element, ElementOf } from "./elements.js";
import { isCutBehindName, shapeNamed } from "./shapes.js";
import type { Token } from "./tokens.js";
import { type Unit, unitNamed } from "./units.js";

type Organ = Commodity["organ"];
type Name = ElementOf<"name">;

interface PlantPart {
  readonly words: ReadonlySet<string>;
  /** Kinds of these organs are that part themselves: spinach leaves are spinach. */
  readonly own: ReadonlySet<Organ>;
}
const part = (words: string, own: readonly Organ[]): PlantPart => ({
  words: new Set(words.split(" ")),
  own: new Set(own),
});

/** Parts of a plant by their words. Of a kind that is another part of it they are no produce known here, and may be unsafe to eat. */
const plantParts: readonly PlantPart[] = [
  part("leaf leaves foliage hoja hojas", ["leaf", "head", "herb"]),
  part("greens", ["leaf", "head"]),
  part("tops frond fronds shoot shoots tendrils", []),
  part("flower flowers blossom blossoms flor flores", ["flower"]),
  part("seed seeds pip pips semilla semillas pepita pepitas", ["seed"]),
  // Those of apricots are unsafe, and those of sweet corn are cut from the cob: neither is the kind as it came.
  part("kernel kernels", []),
  part("stem stems", ["leaf", "herb", "stem", "flower", "fungus"]),
  part("peel peels zest rind rinds cascara cascaras", []),
];
const leafWords: ReadonlySet<string> = new Set("leaf leaves hoja hojas".split(" "));

const isKnownName = (element: Element | undefined): element is Name =>
  element?.type === "name" && element.name.kinds.length > 0 && !element.name.unsure;

/** Is the part what is eaten of every kind that the name may mean, or at least of one? */
function isItself(catalogue: Catalogue, name: Name, { own }: PlantPart): boolean {
  return name.name.kinds.some((kind) => {
    const commodity = catalogue.commodities.get(kind);
    return commodity !== undefined && own.has(commodity.organ);
  });
}

/** The part named by an element of one word that has no other sense of its own there; a state ("leaves on") has. */
function partNamed(tokens: readonly Token[], element: Element | undefined): PlantPart | undefined {
  if (!element || element.next !== element.first + 1) return undefined;
  if (!["unknown", "descriptor", "unit", "name"].includes(element.type)) return undefined;
  return plantParts.find(({ words }) => words.has(tokens[element.first]!.folded));
}

const joinsToNumber = new Set<Element["type"]>(["size", "descriptor", "state", "connective"]);
/** Does a number without a unit stand before a place: "10 (fresh) basil …"? */
export function isCounted(elements: readonly Element[], before: number): boolean {
  let at = before - 1;
  while (at >= 0 && joinsToNumber.has(elements[at]!.type)) at--;
  return elements[at]?.type === "number";
}

/** Where the word directly behind a name stands, beyond a hyphen and words that change nothing ("grape vine leaves"). */
function wordBehind(tokens: readonly Token[], elements: readonly Element[], name: number): number {
  let at = name + 1;
  const hyphen = elements[at];
  if (hyphen?.type === "separator" && hyphen.mark === "hyphen") at++;
  while (elements[at]?.type === "descriptor" && !partNamed(tokens, elements[at])) at++;
  return at;
}

/** The same words as a name that no kind has. */
const withoutKind = (name: Name, first: number, next: number): Name => ({
  ...name,
  name: {
    ...name.name,
    kinds: [],
    implied: [],
    misspelt: false,
    singular: false,
    plural: false,
    noKind: true,
  },
  first,
  next,
});

/** "Taro leaves", “hojas de taro”: another part of the plant than the kind is, so no kind. */
export function withPlantParts(
  catalogue: Catalogue,
  tokens: readonly Token[],
  elements: readonly Element[],
): Element[] {
  const result = [...elements];
  for (let at = 0; at < result.length; at++) {
    const name = result[at]!;
    if (!isKnownName(name)) continue;
    const end = wordBehind(tokens, result, at);
    const behind = partNamed(tokens, result[end]);
    if (behind) {
      const { first, next } = result[end]!;
      if (!isItself(catalogue, name, behind)) {
        result.splice(at, end + 1 - at, withoutKind(name, name.first, next));
        continue;
      }
      const word = tokens[first]!.folded;
      const unit = leafWords.has(word) && isCounted(result, at) ? unitNamed(word, true) : undefined;
      result[end] = unit
        ? { type: "unit", unit, first, next }
        : { type: "descriptor", roughly: false, first, next };
    }
    const start = partAhead(tokens, result, at);
    const ahead = start === undefined ? undefined : partNamed(tokens, result[start]);
    if (start === undefined || !ahead) continue;
    const { first, next } = result[start]!;
    if (!isItself(catalogue, name, ahead)) {
      result.splice(start, at + 1 - start, withoutKind(name, first, name.next));
      at = start;
    } else if (next === first + 1 && tokens[first]!.folded.endsWith("s") && !isCounted(result, start)) {
      result[start] = { type: "descriptor", roughly: false, first, next };
    }
  }
  return result;
}

/** Where the word stands that "of" joins to a name behind it: the "leaves" of "leaves of the taro". */
function partAhead(tokens: readonly Token[], elements: readonly Element[], name: number): number | undefined {
  let at = name - 1;
  while (
    elements[at]?.type === "connective" &&
    !["of", "de", "del"].includes(tokens[elements[at]!.first]!.folded)
  )
    at--;
  return elements[at]?.type === "connective" ? at - 1 : undefined;
}

const hasUnit = (catalogue: Catalogue, name: Name, wanted: string) =>
  name.name.kinds.some((kind) =>
    catalogue.commodities.get(kind)?.household.units.some((unit) => unit.name === wanted),
  );

/** Behind a name it is a piece cut from it, where before the name it would be one whole. */
const onePiece = (word: string): Unit => ({ of: "household", name: "piece", container: false, word });

/**
 * Shapes behind a name: pieces cut from it ("mango cubes", "celery sticks"), or, counted, a unit that only some kinds have
 * ("3 lemon wedges"), so that nobody's four slices of an apple become four apples.
 */
export function withShapes(
  catalogue: Catalogue,
  tokens: readonly Token[],
  elements: readonly Element[],
): Element[] {
  return elements.map((element, index): Element => {
    const { first, next } = element;
    const word = tokens[first]!.folded;
    const either = element.type === "unit" && isCutBehindName(word);
    const shape = element.type === "state" && next === first + 1 ? shapeNamed(word) : undefined;
    if (!either && shape === undefined) return element;
    const before = elements[index - 1];
    const hyphen = before?.type === "separator" && before.mark === "hyphen";
    const at = hyphen ? index - 2 : index - 1;
    const name = elements[at];
    if (!isKnownName(name)) return element;
    if (isCounted(elements, at)) {
      const unit = word.startsWith("piece") ? onePiece(word) : unitNamed(word, true);
      return unit ? { type: "unit", unit, first, next } : element;
    }
    if (!either) return element;
    // Asparagus grows as spears; "spears" behind it says nothing more.
    if (word.startsWith("spear") && hasUnit(catalogue, name, "spear"))
      return word.endsWith("s") ? { type: "descriptor", roughly: false, first, next } : element;
    return { type: "state", change: { form: "cut" }, first, next };
  });
}
