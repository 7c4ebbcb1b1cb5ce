import { eatingHabits, type LotDay, nextToNothing, type SideDay, type TwoWays } from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";
import { massWords } from "../words/amounts.js";
import { dayWords } from "../words/dates.js";
import { plainText } from "../words/plainText.js";
import type { HandoutContext } from "./context.js";
import { type EndedLot, endingWords } from "./endingWords.js";
import { placeNames, wholeLotNames } from "./names.js";

/** A mass in words, with its range where that is known, and as figures to draw [g]. */
export interface TwoWaysFigure {
  /** The expected mass alone. */
  readonly short: string;
  /** With the range of the draws, where that says more. */
  readonly words: string;
  /** That range alone; empty where there is none. */
  readonly range: string;
  readonly grams: number;
  readonly low: number;
  readonly high: number;
}

export interface TwoWaysSide {
  readonly eaten: TwoWaysFigure;
  readonly lost: TwoWaysFigure;
  readonly left: TwoWaysFigure;
}

/** A lot on one side: its state in words with why, where it lies, and what has become of it [g]. */
export interface TwoWaysCell {
  readonly state: LotDay["state"];
  readonly words: string;
  /** What ends it, where it is going or gone; empty otherwise. */
  readonly ending: string;
  readonly places: string;
  readonly eaten: number;
  readonly lost: number;
  readonly left: number;
}

export interface TwoWaysRow {
  readonly lot: string;
  readonly name: string;
  readonly unsorted: TwoWaysCell;
  readonly planned: TwoWaysCell;
}

export interface TwoWaysEvening {
  readonly day: number;
  readonly heading: string;
  /** A heading of a column or an axis. */
  readonly short: string;
  /** What it comes to, in one sentence. */
  readonly told: string;
  readonly unsorted: TwoWaysSide;
  readonly planned: TwoWaysSide;
  readonly rows: readonly TwoWaysRow[];
}

/** One haul laid two ways, in words. */
export interface TwoWaysView {
  readonly title: string;
  readonly lead: string;
  /** How things lie on the first side; what both sides share; that it is a model; where the ranges come from. */
  readonly notes: readonly string[];
  readonly sides: { readonly unsorted: string; readonly planned: string };
  readonly fates: { readonly eaten: string; readonly lost: string; readonly left: string };
  readonly thing: string;
  readonly lots: string;
  /** What it comes to in the end. */
  readonly sum: string;
  /** What came home [g]. */
  readonly brought: number;
  readonly evenings: readonly TwoWaysEvening[];
}

function figure(
  { speaker, units }: HandoutContext,
  grams: number,
  range: { readonly low: number; readonly high: number } | undefined,
): TwoWaysFigure {
  const mass = (value: number): string =>
    value < nextToNothing ? speaker.say("twoWays.none") : massWords(speaker, units, value);
  const { low, high } = range ?? { low: grams, high: grams };
  const short = mass(grams);
  const figures = { short, grams, low, high };
  if (!range || mass(low) === mass(high)) return { ...figures, words: short, range: "" };
  const range80 =
    low < nextToNothing
      ? speaker.say("beside.range.upTo", { high: mass(high) })
      : speaker.say("beside.range", { low: mass(low), high: mass(high) });
  // An average may lie outside the range of most cases: a watermelon that is lost one time in twenty.
  const told = grams < low || grams > high ? speaker.say("twoWays.mostly", { range: range80 }) : range80;
  return { ...figures, words: speaker.say("twoWays.figure", { value: short, range: told }), range: told };
}

const side = (context: HandoutContext, day: SideDay): TwoWaysSide => ({
  eaten: figure(context, day.eaten, day.eatenRange),
  lost: figure(context, day.lost, day.lostRange),
  left: figure(context, day.left, day.leftRange),
});

/** Share of a lot that was lost, or still lies since some is eaten late, above which it is not told as eaten altogether. Declared preference, no source. */
const notEaten = 0.05;

function cell(
  context: HandoutContext,
  kind: EndedLot | undefined,
  { state, endedBy, places, eaten, lost, left }: LotDay,
  names: ReadonlyMap<string, string>,
): TwoWaysCell {
  const { speaker } = context;
  const ending = endedBy === undefined ? "" : endingWords(context, kind, endedBy);
  const words =
    state === "going" || state === "past its best"
      ? speaker.say(`twoWays.state.${state}`, { ending })
      : state === "eaten" && lost + left > notEaten * (eaten + lost + left)
        ? speaker.say("twoWays.state.mostly eaten")
        : speaker.say(`twoWays.state.${state}`);
  const where = places.map((place) => names.get(place) ?? plainText(place));
  return { state, words, ending, places: speaker.list(where), eaten, lost, left };
}

interface Names {
  readonly lots: ReadonlyMap<string, string>;
  readonly places: ReadonlyMap<string, string>;
  readonly kinds: ReadonlyMap<string, EndedLot>;
  /** Lots in the order of their rows: which gain most by the plan first, whatever the evening. */
  readonly order: readonly string[];
}

function rows(context: HandoutContext, evening: TwoWays["evenings"][number], names: Names): TwoWaysRow[] {
  return names.order.map((id) => {
    const of = ({ lots }: SideDay): LotDay => lots.find(({ lot }) => lot === id)!;
    const kind = names.kinds.get(id);
    return {
      lot: id,
      name: context.speaker.capital(names.lots.get(id) ?? plainText(id)),
      unsorted: cell(context, kind, of(evening.unsorted), names.places),
      planned: cell(context, kind, of(evening.planned), names.places),
    };
  });
}

function orderOf({ evenings }: TwoWays): string[] {
  const { unsorted, planned } = evenings.at(-1)!;
  const gain = new Map(unsorted.lots.map(({ lot, lost }, at) => [lot, lost - planned.lots[at]!.lost]));
  return unsorted.lots.map(({ lot }) => lot).sort((one, other) => gain.get(other)! - gain.get(one)!);
}

interface EveningHeading {
  readonly heading: string;
  readonly short: string;
}

/** With its date, or by its number alone where the days are nobody's. */
function headingOf(
  { speaker }: HandoutContext,
  evening: TwoWays["evenings"][number],
  days: number,
  dated: boolean,
): EveningHeading {
  const number = evening.day + 1;
  if (!dated) {
    const short = evening.after ? speaker.say("twoWays.after.short") : speaker.number(number);
    const heading = evening.after
      ? speaker.say("twoWays.afterwards")
      : speaker.say("twoWays.evening", { number });
    return { heading, short };
  }
  const date = dayWords(speaker, evening.date as CalendarDate);
  const heading = evening.after
    ? speaker.say("twoWays.after", { days, date })
    : speaker.say("twoWays.eveningOn", { number, date });
  return { heading, short: date };
}

function eveningView(
  context: HandoutContext,
  evening: TwoWays["evenings"][number],
  sides: TwoWaysView["sides"],
  names: Names,
  { heading, short }: EveningHeading,
): TwoWaysEvening {
  const { speaker } = context;
  const [unsorted, planned] = [side(context, evening.unsorted), side(context, evening.planned)];
  return {
    day: evening.day,
    heading,
    short,
    told: speaker.say("twoWays.told.evening", {
      evening: heading,
      one: sides.unsorted,
      oneEaten: unsorted.eaten.short,
      oneLost: unsorted.lost.short,
      other: sides.planned,
      otherEaten: planned.eaten.short,
      otherLost: planned.lost.short,
    }),
    unsorted,
    planned,
    rows: rows(context, evening, names),
  };
}

/**
 * One haul laid two ways, evening by evening, in words and in figures to draw.
 *
 * @param dated false where the days are no date of anybody's: evenings are then told by number alone
 */
export function twoWaysView(context: HandoutContext, made: TwoWays, dated = true): TwoWaysView {
  const { speaker, units } = context;
  const sides = {
    unsorted: speaker.say(made.rule === "as told" ? "twoWays.told" : "twoWays.unsorted"),
    planned: speaker.say("twoWays.planned"),
  };
  const names = {
    lots: wholeLotNames(context, made.planned),
    places: placeNames(context, made.planned),
    kinds: new Map(made.planned.lots.map((part) => [part.lot, part])),
    order: orderOf(made),
  };
  const days = made.evenings.length - 1;
  const evenings = made.evenings.map((each) =>
    eveningView(context, each, sides, names, headingOf(context, each, days, dated)),
  );
  const last = evenings.at(-1)!;
  const brought = massWords(speaker, units, made.brought.value);
  return {
    title: speaker.say("twoWays.title"),
    lead: speaker.say("twoWays.lead", { brought }),
    notes: [
      speaker.say(`twoWays.rule.${made.rule}`),
      speaker.say("twoWays.same", {
        late: speaker.number(Math.round(1 / eatingHabits.lateShare)),
        days: speaker.number(eatingHabits.lateDays),
      }),
      speaker.say("twoWays.model"),
      ...(made.draws ? [speaker.say("twoWays.draws", { count: made.draws.count })] : []),
    ],
    sides,
    fates: {
      eaten: speaker.say("twoWays.eaten"),
      lost: speaker.say("twoWays.lost"),
      left: speaker.say("twoWays.left"),
    },
    thing: speaker.say("twoWays.thing"),
    lots: speaker.say("twoWays.heading.lots"),
    sum: speaker.say("twoWays.sum", {
      one: sides.unsorted,
      oneLost: last.unsorted.lost.words,
      brought,
      other: sides.planned,
      otherLost: last.planned.lost.words,
    }),
    brought: made.brought.value,
    evenings,
  };
}
