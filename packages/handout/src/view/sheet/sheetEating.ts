import type { Plan, PlannedLot } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { dayWords } from "../../words/dates.js";
import type { HandoutContext } from "../context.js";
import { leftWhole, moreLikelyThanNot } from "../eating.js";
import { lotNames } from "../names.js";
import { isPast } from "../safeTime.js";
import { listed } from "./sheetWords.js";

type Names = ReadonlyMap<string, string>;

/** A day by the end of which things are to be eaten up: each thing stands on one day only, that of its last meal. */
export interface SheetDay {
  readonly date: string;
  readonly words: string;
  readonly lines: readonly string[];
}

export interface SheetEating {
  readonly days: readonly SheetDay[];
  /** What is eaten over several days once it is cut: how it is kept then, and until when at most. */
  readonly cutOpen: readonly string[];
  /** What is left at the end, and what has to be thrown away by a day. */
  readonly left: readonly string[];
}

const lastMeal = (lot: PlannedLot) => lot.eatOn.findLast(({ portions }) => portions > 0);

const isDoubtful = (lot: PlannedLot): boolean => (lastMeal(lot)?.chancePastBest ?? 0) > moreLikelyThanNot;

function dayLines({ speaker }: HandoutContext, lots: readonly PlannedLot[], names: Names): string[] {
  const namesOf = (told: readonly PlannedLot[]): string =>
    listed(
      speaker,
      told.map(({ id }) => names.get(id) ?? id),
    );
  const sure = lots.filter((lot) => !isDoubtful(lot));
  const doubtful = lots.filter(isDoubtful);
  return [
    ...(sure.length > 0 ? [speaker.say("sheet.finish", { names: speaker.capital(namesOf(sure)) })] : []),
    ...(doubtful.length > 0 ? [speaker.say("sheet.doubtful", { names: namesOf(doubtful) })] : []),
  ];
}

function leftLines({ speaker }: HandoutContext, plan: Plan, names: Names): string[] {
  const over = plan.lots.filter((lot) => leftWhole(lot) > 0 && !isPast(lot));
  const end = addDays(plan.from, plan.days);
  const nameOf = ({ id }: PlannedLot): string => names.get(id) ?? id;
  const keeps = over.filter(({ safeUntil }) => safeUntil === undefined || safeUntil >= end);
  const thrown = over.flatMap((lot) =>
    lot.safeUntil === undefined || lot.safeUntil >= end
      ? []
      : [
          speaker.say("eat.throwAway", {
            name: nameOf(lot),
            count: leftWhole(lot),
            date: dayWords(speaker, lot.safeUntil),
          }),
        ],
  );
  return keeps.length === 0
    ? thrown
    : [...thrown, speaker.say("sheet.left", { names: listed(speaker, keeps.map(nameOf)) })];
}

/** What is eaten over several days once it is cut, in as few words as will do: each that has a last safe day in a line, the others in one together. */
export function shortCutOpenLines(
  context: HandoutContext,
  plan: Plan,
  names: Names = lotNames(context, plan),
): string[] {
  const { speaker } = context;
  const nameOf = ({ id }: PlannedLot): string => names.get(id) ?? id;
  const all = plan.lots.flatMap((lot) => (lot.cutOpen ?? []).map((piece) => ({ lot, ...piece })));
  const limited = all.flatMap(({ lot, date, safeUntil, portionsAfter }) => {
    if (safeUntil === undefined) return [];
    const until = portionsAfter > 0 ? "sheet.cutOpenTooLong" : "sheet.cutOpenUntil";
    const key = safeUntil === date ? "sheet.cutOpenAtOnce" : until;
    const last = dayWords(speaker, safeUntil);
    return [speaker.say(key, { name: speaker.capital(nameOf(lot)), date: dayWords(speaker, date), last })];
  });
  const others = all.filter(({ safeUntil }) => safeUntil === undefined).map(({ lot }) => nameOf(lot));
  return others.length === 0
    ? limited
    : [...limited, speaker.say("sheet.cutOpen", { names: listed(speaker, [...new Set(others)]) })];
}

/** What is to be eaten up by which day, in order of days; then what is left. */
export function sheetEating(context: HandoutContext, plan: Plan, names: Names): SheetEating {
  const eaten = plan.lots.filter((lot) => !isPast(lot) && leftWhole(lot) === 0);
  const days = Array.from({ length: plan.days }, (_, day) => {
    const date = addDays(plan.from, day);
    const lots = eaten.filter((lot) => lastMeal(lot)?.day === day);
    return {
      date,
      words: context.speaker.capital(dayWords(context.speaker, date)),
      lines: dayLines(context, lots, names),
    };
  });
  return {
    days: days.filter(({ lines }) => lines.length > 0),
    cutOpen: shortCutOpenLines(context, plan, names),
    left: leftLines(context, plan, names),
  };
}
