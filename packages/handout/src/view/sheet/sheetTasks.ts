import type { Plan } from "@keepwright/planner";
import { dayWords } from "../../words/dates.js";
import type { HandoutContext } from "../context.js";
import { laterStays } from "../laterStays.js";
import { namesTogether } from "../names.js";
import { isCommonPractice, isKeptAsItIs, toldTasks } from "../preparation.js";
import { isPast } from "../safeTime.js";
import { listed, sheetWrap } from "./sheetWords.js";

type Names = ReadonlyMap<string, string>;

/** Something to do before putting away, and to what. */
export interface SheetTask {
  readonly task: string;
  readonly names: string;
}

/** Things to do, each once, what is done now before what is only left as it is; a star where it is common practice. */
export function sheetTasks(context: HandoutContext, plan: Plan, names: Names): SheetTask[] {
  const { speaker } = context;
  const kept = plan.lots.filter((lot) => !isPast(lot));
  const told = kept.flatMap((lot) => toldTasks(lot.preparation).map((task) => ({ task, lot })));
  const tasks = [...new Set(told.map(({ task }) => task))];
  return [...tasks.filter((task) => !isKeptAsItIs(task)), ...tasks.filter(isKeptAsItIs)].map((task) => {
    const lots = told.filter((one) => one.task === task).map(({ lot }) => lot);
    const words = speaker.capital(speaker.say(`prepare.do.${task}`));
    return {
      task: lots.some(({ commodity }) => isCommonPractice(context, commodity, task))
        ? speaker.say("sheet.starred", { task: words })
        : words,
      names: `${speaker.capital(
        listed(
          speaker,
          namesTogether(
            context,
            { ...plan, lots: kept },
            names,
            lots.map(({ id }) => id),
          ),
        ),
      )}.`,
    };
  });
}

/** Something to move, on a day or when it is ripe. */
export interface SheetMove {
  readonly when: string;
  readonly name: string;
  readonly what: string;
}

const whenKeys = {
  day: "sheet.move.day",
  ripe: "sheet.move.ripe",
  "if ripe before": "sheet.move.sooner",
} as const;

/** Every move after the first putting away, in order of date. */
export function sheetMoves(
  { speaker }: HandoutContext,
  plan: Plan,
  { names, places }: { readonly names: Names; readonly places: Names },
): SheetMove[] {
  const moves = plan.lots
    .filter((lot) => !isPast(lot))
    .flatMap((lot) =>
      laterStays(lot).map(({ before, stay, when }) => {
        const date = dayWords(speaker, stay.from);
        const values = {
          place: places.get(stay.place) ?? stay.place,
          wrap: sheetWrap(speaker, stay.wrap),
        };
        return {
          from: stay.from,
          when: speaker.say(whenKeys[when], { date: when === "day" ? speaker.capital(date) : date }),
          name: speaker.capital(names.get(lot.id) ?? lot.id),
          what: speaker.say(before.place === stay.place ? "sheet.move.rewrap" : "sheet.move.to", values),
        };
      }),
    );
  moves.sort((one, other) => (one.from < other.from ? -1 : one.from > other.from ? 1 : 0));
  return moves.map(({ from: _, ...move }) => move);
}
