import type { Commodity } from "@keepwright/catalogue";
import type { Lot } from "../problem/lot.js";
import { askedAge, extraDaysOf, type SaidAge, tellsAge } from "./ages.js";
import { type AmountFault, faultOf } from "./amountFaults.js";
import { type Amount, inKilos } from "./amounts.js";
import { conflicting, greenIsUnripe, type Marks, marksOf, relation } from "./contrast.js";
import { statesOfPart, wishIn } from "./laterParts.js";
import type { Part, Said } from "./parts.js";
import type { Assumption } from "./reading.js";
import type { StateChange } from "./stateWords.js";
import { isHeavy, type Weighed, weigh } from "./weigh.js";

/** A lot before it is placed in the text, or the reason why there is none. */
export interface DraftLot {
  readonly lot: Omit<Lot, "id" | "typed">;
  readonly sureOfAmount: number;
  readonly assumed: readonly Assumption[];
  /** Why the amount has to be asked about although the lot stands. */
  readonly asks?: Doubt;
  /** A day it is wanted for was told, but not so that it can be taken. */
  readonly asksWhen?: true;
  /** How old it is was told, but not so that it can be taken, or only by a day. */
  readonly asksAge?: Pick<SaidAge, "since">;
}
type Doubt = Extract<AmountFault["reason"], "contradictory" | "no amount">;

/** Two amounts for one lot agree when they differ by no more than this share. */
const agreement = 0.15;

/** How sure an amount is that may be another. Our own scale, below `askBelow`. */
const sureOfDoubtful = 0.3;
/** Leaves that draw water out of what they stand on; on other kinds "with leaves" says nothing. */
const bearsTops = (commodity: Commodity) =>
  commodity.water.transpirationWithTops !== undefined ||
  commodity.preparation.some((entry) => entry.do === "twist off leaves");

function draft(
  commodity: Commodity,
  weighed: Weighed,
  states: readonly StateChange[],
  asks?: Doubt,
): DraftLot {
  const state: StateChange = Object.assign(
    {},
    ...states.filter((change) => !change.byColour || greenIsUnripe.has(commodity.id)),
  );
  const ripens = commodity.ripening !== undefined;
  const cut =
    state.form === "cut" ||
    (state.form === undefined &&
      (weighed.partOfOne || weighed.cut === true || (state.begun === true && weighed.pieces !== undefined)));
  const wish = wishIn(states, ripens);
  const age = askedAge(states, cut);
  const assumed = [...weighed.assumed];
  if (cut && state.form === undefined && weighed.partOfOne) assumed.push("cut, because half of one");
  if (ripens && state.ripeness === undefined) assumed.push("usual ripeness");
  if (cut && !states.some(tellsAge)) assumed.push("cut today");
  return {
    lot: {
      commodity: commodity.id,
      grams: Math.round(weighed.grams * 100) / 100 || weighed.grams,
      ...(weighed.pieces !== undefined ? { pieces: weighed.pieces } : {}),
      ...(ripens && state.ripeness !== undefined ? { ripeness: state.ripeness } : {}),
      form: cut ? "cut" : "whole",
      tops: state.tops === true && bearsTops(commodity),
      washed: state.washed ?? false,
      extraDays: extraDaysOf(states, cut),
      ...(wish !== undefined && wish !== "unclear" ? { wanted: wish } : {}),
    },
    sureOfAmount: asks ? Math.min(weighed.sure, sureOfDoubtful) : weighed.sure,
    assumed,
    ...(asks ? { asks } : {}),
    ...(wish === "unclear" ? { asksWhen: true } : {}),
    ...(age && { asksAge: age }),
  };
}

/** The whole's weight where it is told twice: a mass told beside a bag or a count is the better of the two. */
function reconciled(
  commodity: Commodity,
  whole: Weighed,
  amount: Amount | undefined,
  restated: readonly Amount[],
): { whole: Weighed; contradictory: boolean } {
  let result = whole;
  let contradictory = false;
  for (const other of restated) {
    const second = weigh(commodity, other);
    if (second === "unknown unit" || faultOf(other, second, commodity)) contradictory = true;
    else if (other.ofOne && amount)
      result = { ...result, grams: second.grams * amount.count, sure: second.sure };
    else if (other.unit?.of === "mass" && amount?.unit?.of !== "mass" && (amount?.count ?? 1) <= 1)
      result = { ...second, ...(whole.pieces ? { pieces: whole.pieces } : {}) };
    else if (Math.abs(second.grams / result.grams - 1) > agreement) contradictory = true;
  }
  return { whole: result, contradictory };
}

/** "1.5 avocados": one whole, and half of one that was cut, unless the form was told. */
function partedWhole(weighed: Weighed, states: readonly StateChange[]): { whole: Weighed; cut?: Weighed } {
  const { broken, ...plain } = weighed;
  if (!broken || states.some(({ form }) => form !== undefined)) return { whole: plain };
  const grams = plain.grams * broken.share;
  return {
    whole: { ...plain, grams, pieces: broken.whole },
    cut: { ...plain, grams: plain.grams - grams, partOfOne: true },
  };
}

/** A further amount of the kind, weighed: within the first amount, or beside it. */
interface Further {
  readonly part: Part;
  readonly weighed: Weighed;
  readonly beside: boolean;
  /** May it as well be meant in another way? */
  readonly doubtful: boolean;
}

/** What is left of the whole when its parts are taken out, or undefined when they are more than the whole. */
function remainder(
  whole: Weighed,
  within: readonly Further[],
  amount: Amount | undefined,
): Weighed | "nothing" | undefined {
  const { pieces: all = 0, ...plain } = whole;
  const parts = within.map(({ weighed }) => weighed);
  const taken = parts.reduce((sum, part) => sum + (part.pieces ?? 0), 0);
  const pieces = parts.every((part) => part.pieces !== undefined) ? all - taken : 0;
  // Counted pieces are taken out by number, so that small ones leave large ones of full weight.
  const alike = within.every(
    ({ part }) => part.amount.share || part.amount.unit?.word === amount?.unit?.word,
  );
  const left =
    alike && all > 0 && all - taken === pieces
      ? (whole.grams * pieces) / all
      : whole.grams - parts.reduce((sum, part) => sum + part.grams, 0);
  if (left < -1e-6 * whole.grams) return undefined;
  if (left <= 1e-6 * whole.grams) return "nothing";
  return { ...plain, grams: left, ...(pieces > 0 ? { pieces } : {}) };
}

/** Is "half" a share of the whole here? A piece cannot be half ripe and half hard, but it can be half cut. */
function isShare({ amount, states, before }: Part): boolean {
  if (amount.share) return true;
  const bare = amount.count > 0 && amount.count < 1 && !amount.unit && !amount.divided && !amount.article;
  return (
    bare &&
    !before &&
    states.some(({ form, ...others }) => Object.keys(others).length > 0 && form === undefined)
  );
}

function shareOf(whole: Weighed, part: Part): Further {
  const { pieces, ...rest } = whole;
  const count = (pieces ?? 0) * part.amount.count;
  const even = Number.isInteger(count);
  return {
    part,
    weighed: {
      ...rest,
      grams: whole.grams * part.amount.count,
      ...(even && count > 0 ? { pieces: count } : {}),
    },
    beside: false,
    // Half of three pieces is no number of pieces; half a head is half of one.
    doubtful: !even && (pieces ?? 1) > 1,
  };
}

function furtherOf(
  commodity: Commodity,
  part: Part,
  whole: Weighed,
  first: Marks,
  size: Amount["size"],
): Further | AmountFault {
  const marks = marksOf(part.states, part.amount.size, greenIsUnripe.has(commodity.id));
  const { ripeness: _, ...others } = marks;
  const saysNothing = commodity.ripening === undefined && Object.keys(others).length === 0;
  if (isShare(part) && part.amount.count <= 1) {
    const share = shareOf(whole, part);
    return { ...share, doubtful: share.doubtful || saysNothing };
  }
  const weighed = weigh(commodity, part.amount, size);
  const fault = faultOf(part.amount, weighed, commodity);
  if (fault || weighed === "unknown unit") return fault!;
  const how = part.amount.ofThem ? "part" : relation(first, marks);
  const fits = weighed.grams < whole.grams * (1 - 1e-6);
  const halfOfSeveral = part.amount.count < 1 && !part.amount.unit && (whole.pieces ?? 2) > 1;
  return {
    part,
    weighed,
    beside: how === "beside" || (how === "either" && !fits),
    doubtful: how === "either" || saysNothing || halfOfSeveral,
  };
}

/** Lots of the amounts alone, each in its states, where no whole was told: "avocados: 2 ripe and 1 hard". */
function partsAlone(commodity: Commodity, said: Said): DraftLot[] | AmountFault {
  const lots: DraftLot[] = [];
  for (const { amount, states } of said.parts) {
    const weighed = weigh(commodity, amount, said.size);
    const fault = faultOf(amount, weighed, commodity);
    if (fault || weighed === "unknown unit") return fault!;
    lots.push(
      draft(commodity, weighed, statesOfPart(said.states, states), said.doubtful ? "no amount" : undefined),
    );
  }
  return lots;
}

/** The first amount, weighed, and whether what is told of it besides agrees. */
function wholeOf(
  commodity: Commodity,
  said: Said,
): { whole: Weighed; contradictory: boolean } | { fault: AmountFault } {
  const amount = inKilos(said.amount, said.plural);
  const first = weigh(commodity, amount, said.size, said.singular, said.inPackage);
  const fault = faultOf(amount, first, commodity, said.plural);
  if (fault || first === "unknown unit") return { fault: fault! };
  const pieces = !amount && isHeavy(commodity) && said.states.some(({ piecesOf }) => piecesOf);
  if (said.amount?.share || pieces)
    return { fault: { ask: "how much", reason: "no amount", word: commodity.names.en.one } };
  return reconciled(commodity, first, amount, said.restated);
}

/** Why the amounts of a clause have to be asked about, where they do. */
function doubtOf(
  said: Said,
  { whole, contradictory }: { whole: Weighed; contradictory: boolean },
  further: readonly Further[],
  rest: Weighed | "nothing" | undefined,
  greenMeansUnripe: boolean,
): Doubt | undefined {
  if (contradictory || rest === undefined) return "contradictory";
  const within = further.filter(({ beside }) => !beside);
  const [only] = within;
  const namesRest = said.parts.some(({ amount }) => amount.rest);
  const doubts = [
    said.doubtful,
    said.orHalf && whole.pieces !== 1,
    further.some((each) => each.doubtful),
    said.parts.some(({ amount }) => amount.unclear),
    namesRest && (rest === "nothing" || within.length === 0 || !said.amount),
    // "1 avocado, 1 hard": nobody says so of one and the same.
    only !== undefined &&
      within.length === 1 &&
      rest === "nothing" &&
      !only.part.amount.ofThem &&
      !whole.broken,
    conflicting(said.states, greenMeansUnripe),
    !said.amount && said.states.some(({ leftOver }) => leftOver),
    ...said.parts.map(({ states }) => conflicting(states, greenMeansUnripe)),
  ];
  return doubts.includes(true) ? "no amount" : undefined;
}

/** Lots of one kind from what was said of it; the first fault in an amount instead, where there is one. */
export function draftLots(commodity: Commodity, said: Said): DraftLot[] | AmountFault {
  const alone = said.parts.length > 0 && said.parts.every(({ amount }) => !amount.ofThem);
  if (!said.amount && alone) return partsAlone(commodity, said);
  const told = wholeOf(commodity, said);
  if ("fault" in told) return told.fault;
  const { whole: unbroken, cut } = partedWhole(told.whole, said.states);
  const partCut: StateChange[] = unbroken.partOfOne ? [{ form: "cut" }] : [];
  const first = marksOf([...partCut, ...said.states], said.amount?.size, greenIsUnripe.has(commodity.id));
  const further: Further[] = [];
  const ofRest = said.parts.filter(({ amount }) => amount.rest);
  const measured = said.parts.filter(({ amount }) => !amount.unclear && !amount.rest && amount.count !== 0);
  for (const part of measured) {
    const read = furtherOf(commodity, part, unbroken, first, said.size);
    if ("ask" in read) return read;
    further.push(read);
  }
  const within = further.filter(({ beside }) => !beside);
  const beside = further.filter((each) => each.beside);
  const rest = remainder(unbroken, within, said.amount);
  const asks = doubtOf(said, told, further, rest, greenIsUnripe.has(commodity.id));
  const lotsOf = (some: readonly Further[]) =>
    some.map(({ part, weighed }) => draft(commodity, weighed, statesOfPart(said.states, part.states), asks));
  if (rest === undefined) return [draft(commodity, told.whole, said.states, asks), ...lotsOf(beside)];
  const restStates = statesOfPart(
    said.states,
    ofRest.flatMap(({ states }) => states),
  );
  return [
    ...(rest === "nothing" ? [] : [draft(commodity, rest, restStates, asks)]),
    ...lotsOf(within),
    ...(cut ? [draft(commodity, cut, said.states, asks)] : []),
    ...lotsOf(beside),
  ];
}
