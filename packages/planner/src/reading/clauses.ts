import { sharedOut } from "./amountOfEach.js";
import { contrasted } from "./contrast.js";
import { type Element, statesOf } from "./elements.js";

/** What belongs to one name: the elements before it, those right after it, and later remarks ("…, 1 ripe"). */
export interface Clause {
  readonly before: readonly Element[];
  /** Absent where words stand without any name. */
  readonly name?: Extract<Element, { type: "name" }>;
  /** In it, separators part the remarks from one another. */
  readonly after: Element[];
  /** An amount told for this name with others ("2 each of apples and pears"); it stands elsewhere. */
  readonly lent?: readonly Element[];
  /** May an amount in `after` belong to the next name? */
  doubtful?: boolean;
  /** Does a full stop or semicolon part it from what was before? */
  readonly afterHard?: boolean;
}

const saysSomething = (element: Element) => element.type !== "connective" && element.type !== "separator";
/** Words that stand for something of their own, and speak of no name beside them. */
const unclear = (element: Element) =>
  element.type === "unknown" || (element.type === "not fresh" && !element.remark);

/** What is said to be cut or begun is never taken for whole because of a word beside it that is not understood. */
const tellsCut = (element: Element) =>
  element.type === "state" && (element.change.form === "cut" || element.change.begun === true);

interface Segment {
  readonly elements: Element[];
  readonly bracketed: boolean;
  readonly afterHard: boolean;
  /** The joining word before it ("and"), not a mark. */
  readonly afterWord: boolean;
}

/** Parts of a line between commas, "and", full stops and brackets. */
function segmentsOf(elements: readonly Element[]): Segment[] {
  const segments: Segment[] = [];
  let depth = 0;
  let current: Segment = { elements: [], bracketed: false, afterHard: true, afterWord: false };
  const close = (hard: boolean, afterWord: boolean) => {
    const said = current.elements.some(saysSomething);
    if (said) segments.push(current);
    const afterHard = hard || (!said && current.afterHard);
    current = { elements: [], bracketed: depth > 0, afterHard, afterWord };
  };
  for (const [index, element] of elements.entries()) {
    if (element.type !== "separator" || joinsNumberAndUnit(elements, index)) {
      if (element.type !== "separator") current.elements.push(element);
      continue;
    }
    if (element.mark === "open") depth++;
    if (element.mark === "close") depth = Math.max(0, depth - 1);
    close(element.mark === "hard", element.mark === "soft" && element.word === true);
  }
  close(false, false);
  return segments;
}

/** The hyphen of "5-lb bag". */
const joinsNumberAndUnit = (elements: readonly Element[], index: number) => {
  const [before, mark, after] = [elements[index - 1], elements[index], elements[index + 1]];
  return (
    before?.type === "number" &&
    mark?.type === "separator" &&
    mark.mark === "hyphen" &&
    after?.type === "unit"
  );
};

const isAmount = (element: Element | undefined) => element?.type === "number" || element?.type === "unit";

/** A remark that stands behind what it speaks of: "with tops", "3 days old", and words not understood. */
const standsBehind = (element: Element) =>
  element.type === "unknown" ||
  (element.type === "package" && element.behind) ||
  (element.type === "not fresh" && element.mark === "in oil") ||
  (element.type === "state" &&
    [
      element.change.tops,
      element.change.extraDays,
      element.change.since,
      element.change.ageAsked,
      element.change.wanted,
    ].some((said) => said !== undefined));

/** Where the words between two names part: the last amount and all after it go with the second name. */
function parting(between: readonly Element[], amountsTrail: boolean): number {
  const denied = between.findIndex(({ type }) => type === "negation");
  if (denied >= 0) return denied;
  let last = between.findLastIndex(isAmount);
  if (last < 0) return between.findLastIndex(standsBehind) + 1;
  if (amountsTrail) return between.length;
  const trailingUnit = last === 0 && between[0]!.type === "unit" && between[1]?.type !== "connective";
  if (trailingUnit) return 1;
  for (let before = between[last - 1]; before; before = between[last - 1]) {
    const joined =
      before.type === "number" ||
      before.type === "size" ||
      (before.type === "unit" && between[last]!.type === "unit");
    if (!joined) break;
    last--;
  }
  return last;
}

/** Parts a run of words with several names, as speech gives it, into a clause for each name. */
function clausesOfRun(elements: readonly Element[], afterHard: boolean): Clause[] {
  const names = elements.flatMap((element, index) => (element.type === "name" ? [{ element, index }] : []));
  const firstName = names[0]!.index;
  const trail =
    !elements.slice(0, firstName).some(isAmount) && elements.slice(names.at(-1)!.index).some(isAmount);
  let start = 0;
  return names.map(({ element, index }, order) => {
    const nextName = names[order + 1]?.index ?? elements.length;
    const between = elements.slice(index + 1, nextName);
    const end = order === names.length - 1 ? between.length : parting(between, trail);
    const clause: Clause = {
      before: elements.slice(start, index),
      name: element,
      after: between.slice(0, end),
      ...(afterHard && order === 0 ? { afterHard } : {}),
    };
    start = index + 1 + end;
    return clause;
  });
}

const isMarkUp = (element: Element) => element.type === "unknown" && element.markUp === true;

/** Takes back what mark-up cut off from the name after it, so that its amount is not lost: "2 lb <script> (1) apples". */
function leftAroundMarkUp(clauses: Clause[]): Element[] {
  const from = clauses.findLastIndex((clause) => clause.name) + 1;
  const left = clauses.slice(from).flatMap((clause) => clause.before);
  if (!left.some(isMarkUp) || !left.some(isAmount)) return [];
  clauses.length = from;
  return left;
}

/** "3 avocados, 1 ripe and 2 green tomatoes": the ripe one may be an avocado or a tomato. */
function mayBelongToNext(words: readonly Element[], next: Segment | undefined): boolean {
  const name = next?.elements.findIndex(({ type }) => type === "name") ?? -1;
  const ofThem = words.some((word) => word.type === "number" && word.number.ofThem);
  if (!next?.afterWord || name < 0 || ofThem || !words.some(isAmount)) return false;
  const ahead = next.elements.slice(0, name);
  return ahead.some(isAmount) && contrasted(statesOf(words), statesOf(ahead));
}

/**
 * The clauses of one line. A part without a name belongs to the name before it ("3 avocados, 1 ripe"; "apples (washed)"),
 * or, at the start of a line, to the name after it ("2 lb, apples"). Unknown words stand alone.
 */
export function clausesOf(elements: readonly Element[]): Clause[] {
  const clauses: Clause[] = [];
  let waiting: Element[] = [];
  const orphan = (words: readonly Element[]) => clauses.push({ before: words, after: [] });
  const segments = segmentsOf(elements);
  for (const [index, { elements: words, bracketed, afterHard }] of segments.entries()) {
    const last = clauses.at(-1);
    if (words.some((word) => word.type === "name")) {
      if (!words.some(isAmount)) waiting = [...leftAroundMarkUp(clauses), ...waiting];
      clauses.push(...clausesOfRun([...waiting, ...words], afterHard));
      waiting = [];
    } else if (last?.name && (bracketed || !words.some(unclear) || words.some(tellsCut)) && !afterHard) {
      if (mayBelongToNext(words, segments[index + 1])) last.doubtful = true;
      last.after.push(parted(words), ...words);
    } else if (words.some(unclear) || last) {
      orphan([...waiting, ...words]);
      waiting = [];
    } else {
      waiting.push(...words);
    }
  }
  if (waiting.length > 0) orphan(waiting);
  return sharedOut(clauses);
}

/** A separator of no width before words. */
const parted = ([word]: readonly Element[]): Element => ({
  type: "separator",
  mark: "soft",
  first: word!.first,
  next: word!.first,
});
