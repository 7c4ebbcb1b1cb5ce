import type { Plan, PlannedLot } from "@keepwright/planner";
import { addDays, type CalendarDate } from "@keepwright/quantities";
import { type CountedLots, lotAmount } from "../../view/amount.js";
import type { HandoutContext } from "../../view/context.js";
import { laterStays } from "../../view/laterStays.js";
import { lotNames, placeNames } from "../../view/names.js";
import { isKeptAsItIs, toldTasks } from "../../view/preparation.js";
import { dayWords } from "../../words/dates.js";
import { begunPieces } from "../begunPieces.js";
import { type GoodUntil, goodUntil } from "../goodUntil.js";
import type { LyingLots } from "../lyingLots.js";

/** What stands on a label, in words. */
export interface LabelRow {
  readonly lot: string;
  readonly name: string;
  /** Why it is to be eaten by then, and the sentence that says so. */
  readonly why: GoodUntil["why"];
  readonly date: CalendarDate;
  readonly until: string;
  readonly putAway: string;
  /** Where it lies and in what, and where it goes later; empty for what is thrown away. */
  readonly places: readonly string[];
  /** One thing to know about keeping it. */
  readonly how: string | undefined;
}

const thenKeys = {
  day: "label.then.day",
  ripe: "label.then.ripe",
  "if ripe before": "label.then.sooner",
} as const;

function placeLines({ speaker }: HandoutContext, lot: PlannedLot, places: ReadonlyMap<string, string>) {
  const [first] = lot.stays;
  const wrapWords = (stay: PlannedLot["stays"][number]) => speaker.say(`wrap.${stay.wrap}`);
  if (!first) return [];
  const named = (id: string) => places.get(id) ?? id;
  return [
    speaker.say("label.place", { place: named(first.place), wrap: wrapWords(first) }),
    ...laterStays(lot).map(({ before, stay, when }) => {
      const values = { date: dayWords(speaker, stay.from), place: named(stay.place), wrap: wrapWords(stay) };
      return speaker.say(before.place === stay.place ? "label.then.rewrap" : thenKeys[when], values);
    }),
  ];
}

/** What to keep to while it lies there comes before what is done once. */
function howLine({ speaker }: HandoutContext, lot: PlannedLot): string | undefined {
  const tasks = toldTasks(lot.preparation);
  const task = tasks.find(isKeptAsItIs) ?? tasks[0];
  return task && speaker.capital(speaker.say(`prepare.do.${task}`));
}

/** A figure and the words beside it stay on one line: “about 500 g”, “Sat 13 June”. */
const bound = (text: string): string => text.replace(/(\d) (?=\p{L})|(\p{L}) (?=\d)/gu, "$1$2\u00a0");

/** The day it was put away; of what was cut since, the day it was cut. */
const cameHome = (plan: Plan, lot: PlannedLot, lies: LyingLots): CalendarDate =>
  addDays(plan.from, -Math.floor(lies.get(lot.lot)?.daysBefore ?? 0));

/** Until when it is good; of a whole piece that is eaten over several days also until when once it is cut. */
function untilWords(
  { speaker }: HandoutContext,
  lot: PlannedLot,
  why: LabelRow["why"],
  day: CalendarDate,
): string {
  const date = dayWords(speaker, day);
  const [piece] = begunPieces(lot);
  if (!piece || why !== "quality") return speaker.say(`label.until.${why}`, { date });
  const { cut, last } = piece;
  return speaker.say(cut === last ? "label.until.cutOpenAtOnce" : "label.until.cutOpen", {
    date,
    cut: dayWords(speaker, cut),
    last: dayWords(speaker, last),
  });
}

/** A label for each part of a plan, in its order. What is past its safe day gets one that says to throw it away, and nothing else. */
export function labelRows(
  context: HandoutContext,
  plan: Plan,
  counted?: CountedLots,
  lies: LyingLots = new Map(),
): LabelRow[] {
  const { speaker } = context;
  const names = lotNames(context, plan);
  const places = placeNames(context, plan);
  return plan.lots.map((lot) => {
    const { why, date } = goodUntil(context, plan, lot);
    const away = why === "throw away";
    const name = speaker.capital(names.get(lot.id) ?? lot.id);
    return {
      lot: lot.id,
      name: away
        ? name
        : bound(speaker.say("label.name", { name, amount: lotAmount(context, lot, counted) })),
      why,
      date,
      until: bound(untilWords(context, lot, why, date)),
      putAway: bound(speaker.say("label.putAway", { date: dayWords(speaker, cameHome(plan, lot, lies)) })),
      places: away ? [] : placeLines(context, lot, places).map(bound),
      how: away ? undefined : howLine(context, lot),
    };
  });
}
