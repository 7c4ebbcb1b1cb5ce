import { type Catalogue, commodityOf } from "@keepwright/catalogue";
import { tellsAge } from "./ages.js";
import { type Item, isCut } from "./agesOfLots.js";
import { timeWords } from "./ageWords.js";
import { dateWords } from "./dateWords.js";
import type { Element } from "./elements.js";
import type { UnderstoodLot } from "./reading.js";
import { strayNumbers } from "./strayNumbers.js";
import type { Token } from "./tokens.js";

/** Elements whose words are not looked at one by one: what they tell was understood as a whole. */
const understood: ReadonlySet<Element["type"]> = new Set(["state", "name", "number", "unit", "not fresh"]);
/** A guess at the name of a shorter word is as likely no name at all ("wks", "sept"). */
const shortestGuessed = 5;
const eatenWords: ReadonlySet<string> = new Set("eaten used gone finished".split(" "));
/** Words by which a day is one that is to come, never the one of the cutting. */
const toCome: ReadonlySet<string> = new Set(
  "by for within want wants wanted need needs needed serve tomorrow tonight para quiero queremos manana".split(
    " ",
  ),
);

/** A line with something in it that is cut. */
class CutLine {
  constructor(
    private readonly tokens: readonly Token[],
    private readonly elements: readonly Element[],
  ) {}

  private wordsOf({ first, next }: Element): readonly Token[] {
    return this.tokens.slice(first, next);
  }

  /** What stands between two places in the text. */
  between(from: number, to: number): readonly Element[] {
    return this.elements.filter(
      ({ first, next }) =>
        next > first && this.tokens[first]!.from >= from && this.tokens[next - 1]!.to <= to,
    );
  }

  /** Were these words left without a meaning? */
  isUnread(element: Element): boolean {
    if (element.type === "unknown") return !this.isBehindHalf(element);
    if (element.type !== "name") return false;
    const { misspelt, unsure } = element.name;
    const length = this.wordsOf(element).reduce((sum, { folded }) => sum + folded.length, 0);
    return unsure === true || (misspelt && length < shortestGuessed);
  }

  /** "A half-eaten melon": read as half of one. */
  private isBehindHalf({ first, next }: Element): boolean {
    const hyphen = this.tokens[first - 1]?.text === "-" ? 1 : 0;
    const half = this.tokens[first - 1 - hyphen]?.folded === "half";
    return half && next === first + 1 && eatenWords.has(this.tokens[first]!.folded);
  }

  /** Is a day told that may as well be the one of the cutting as one it is wanted for? */
  isDoubtfulDay(element: Element): boolean {
    if (element.type !== "state" || element.change.wanted === undefined) return false;
    return !this.wordsOf(element).some(({ folded }) => toCome.has(folded));
  }

  /** Do these words speak of a time that was not understood? */
  isDoubtfulTime(element: Element): boolean {
    if (understood.has(element.type)) return false;
    return this.wordsOf(element).some(({ folded }) => timeWords.has(folded) || dateWords.has(folded));
  }

  isUnclear(element: Element): boolean {
    return this.isUnread(element) || this.isDoubtfulTime(element) || this.isDoubtfulDay(element);
  }

  strayNumbers(elements: readonly Element[]): boolean {
    return strayNumbers(this.tokens, elements);
  }

  /** Does an item stand for produce of its own, so that the words beyond it are not of what is before it? */
  parts({ from, to }: Item): boolean {
    return this.between(from, to).some((element) => element.type === "name" && !this.isUnread(element));
  }

  /** The part of it between full stops and semicolons in which a place of the text is. */
  sentenceAround(place: number): readonly Element[] {
    const ends = this.elements
      .filter((element) => element.type === "separator" && element.mark === "hard")
      .map(({ first }) => this.tokens[first]!.from);
    const from = Math.max(0, ...ends.filter((end) => end <= place));
    return this.between(from, Math.min(Infinity, ...ends.filter((end) => end > place)));
  }
}

const toldAge = (element: Element) => element.type === "state" && tellsAge(element.change);
/** "Leftover melon", "precut melon": it was not cut today, so without a day its age is not known. */
const cutBefore = (element: Element) => element.type === "state" && element.change.cutBefore === true;
const isControlledOnceCut = ({ lot }: UnderstoodLot, catalogue: Catalogue): boolean =>
  commodityOf(catalogue, lot.commodity).cut.timeTemperatureControl.value;

/** Does anything in the line leave in doubt how old what is cut in it is? */
function isDoubtful(
  item: UnderstoodLot,
  items: readonly Item[],
  line: CutLine,
  catalogue: Catalogue,
): boolean {
  const others = items.filter((other) => line.parts(other));
  const from = Math.max(0, ...others.filter(({ to }) => to <= item.from).map(({ to }) => to));
  const to = Math.min(Infinity, ...others.filter((one) => one.from >= item.to).map((one) => one.from));
  const beside = line.between(from, to);
  if (beside.some((element) => line.isUnclear(element)) || line.strayNumbers(beside)) return true;
  const own = line.between(item.from, item.to);
  if (own.some(toldAge)) return false;
  if (own.some(cutBefore) && isControlledOnceCut(item, catalogue)) return true;
  return [...beside, ...line.sentenceAround(item.from)].some(
    (element) => toldAge(element) || line.isDoubtfulTime(element),
  );
}

/**
 * What is left over or was sold cut, of a kind that is safe for some days only, is asked how old it is where no day is told: it was not cut today.
 * What is cut, and has in its line anything that was not read as kind, amount, state or a clear age: how old it is is asked, since what was not read may tell it.
 * A word counts up to the next lot on either side, one of time in all of the sentence; so does a time told of another lot, where none is told of this one.
 */
export function withAgesAsked(
  catalogue: Catalogue,
  items: readonly Item[],
  tokens: readonly Token[],
  elements: readonly Element[],
): Item[] {
  if (!items.some(isCut)) return [...items];
  const line = new CutLine(tokens, elements);
  return items.map((item) => {
    if (!isCut(item) || !isDoubtful(item, items, line, catalogue)) return item;
    const asked = item.questions.some((one) => one.ask === "how old" && one.since === undefined);
    return asked ? item : { ...item, questions: [{ ask: "how old", word: item.typed }, ...item.questions] };
  });
}
