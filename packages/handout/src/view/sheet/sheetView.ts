import type { Plan } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { dayWords } from "../../words/dates.js";
import { plainText } from "../../words/plainText.js";
import type { CountedLots } from "../amount.js";
import { cautionLines, pressingCautionLines } from "../cautions.js";
import type { HandoutContext } from "../context.js";
import { lotNames, placeNames } from "../names.js";
import { kitchenWords } from "../ordinaryNames.js";
import { type SheetEating, sheetEating } from "./sheetEating.js";
import { type SheetPlace, sheetPlaces } from "./sheetPlaces.js";
import { type SheetMove, type SheetTask, sheetMoves, sheetTasks } from "./sheetTasks.js";

/** The page for the refrigerator door in rows and words, for paper or any other surface. */
export interface SheetView {
  /** BCP 47 tag of the language it is written in. */
  readonly language: string;
  readonly title: string;
  readonly dates: string;
  readonly headings: Readonly<
    Record<"throwAway" | "eat" | "moves" | "prepare" | "places" | "cautions", string>
  >;
  /** What must be read before anything is put away; empty where nothing is unsafe now. */
  readonly pressing: readonly string[];
  readonly eating: SheetEating;
  readonly moves: readonly SheetMove[];
  readonly tasks: readonly SheetTask[];
  readonly places: readonly SheetPlace[];
  /** The other cautions; the last sends to the local authority. */
  readonly cautions: readonly string[];
  readonly note: string;
}

/**
 * Turns a plan into the page for the refrigerator door. Computes nothing about produce: every amount and date comes from the plan or the
 * catalogue. `counted`: pieces as they were typed, by the lot's id.
 */
export function sheetView(context: HandoutContext, plan: Plan, counted?: CountedLots): SheetView {
  const { speaker } = context;
  const names = lotNames(context, plan);
  const places = placeNames(context, plan);
  const last = addDays(plan.from, plan.days - 1);
  const pressing = pressingCautionLines(context, plan, names);
  return {
    language: speaker.tag,
    title: speaker.say("sheet.title"),
    dates: speaker.say("sheet.dates", {
      from: speaker.capital(dayWords(speaker, plan.from)),
      to: dayWords(speaker, last),
      year: last.slice(0, 4),
    }),
    headings: {
      throwAway: speaker.say("sheet.throwAway"),
      eat: speaker.say("sheet.eat"),
      moves: speaker.say("sheet.moves"),
      prepare: speaker.say("sheet.prepare"),
      places: speaker.say("sheet.places"),
      cautions: speaker.say("sheet.cautions"),
    },
    pressing,
    eating: sheetEating(context, plan, names),
    moves: sheetMoves(context, plan, { names, places }),
    tasks: sheetTasks(context, plan, names),
    places: sheetPlaces(context, plan, { names, places }, counted),
    cautions: cautionLines(context, plan, places, names).filter((line) => !pressing.includes(line)),
    note: speaker.say("sheet.note", { kitchen: kitchenWords(context, plan.kitchen) }),
  };
}

/** The number of a page, for the foot of each where there are several. */
export const pageWords = ({ speaker }: HandoutContext, page: number, pages: number): string =>
  speaker.say("sheet.page", { page, pages });

/** Tells which file a sheet was written to, on how many pages, in text of which size [pt]. */
export const writtenLine = (
  { speaker }: HandoutContext,
  { file, pages, size }: { readonly file: string; readonly pages: number; readonly size: number },
): string => speaker.say("sheet.written", { file: plainText(file), count: pages, size });

/** Tells which file was written, on how many pages. */
export const writtenPagesLine = ({ speaker }: HandoutContext, file: string, pages: number): string =>
  speaker.say("paper.written", { file: plainText(file), count: pages });
