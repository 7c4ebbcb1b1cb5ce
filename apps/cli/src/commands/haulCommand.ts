import { catalogue } from "@keepwright/catalogue";
import {
  type HandoutContext,
  type ListOf,
  type PlanSurroundings,
  readFromLine,
  readingView,
} from "@keepwright/handout";
import type { Kitchen } from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";
import type { Door } from "../door/door.js";
import { haulFromArguments } from "../options/haulArgument.js";
import { type ReadLots, readLots } from "./readLots.js";

/** Reads the haul a command was given, or the list of what is wished for, and tells on standard error where it was read from. `from`: the first day, today where none is given. */
export function readHaulArgument(
  door: Door,
  context: HandoutContext,
  words: readonly string[],
  from: CalendarDate | undefined,
  of: ListOf = "haul",
): ReadLots {
  const haul = haulFromArguments(door, words);
  door.err(`${readFromLine(context, of, haul.origin)}\n`);
  return readLots(context, catalogue(), haul.text, from ?? door.today(), of);
}

/** What belongs beside an answer about a haul: what was understood, and the kitchen where none was given. */
export const surroundings = (
  { reading, lots }: ReadLots,
  kitchen: Kitchen,
  kitchenAssumed: boolean,
): PlanSurroundings => ({
  reading,
  counted: new Map(lots.map((lot) => [lot.id, lot])),
  kitchenAssumed,
  ...(kitchenAssumed && { kitchen }),
});

/** Works something out, with a line on a terminal while it takes long. */
export function whileTelling<Answer>(door: Door, line: string, work: () => Answer): Answer {
  const stop = door.errIsTerminal ? door.showProgress(line) : () => undefined;
  try {
    return work();
  } finally {
    stop();
  }
}

/** Questions go to standard error too, unless both streams end on the same screen, which has them already. */
export function tellQuestions(door: Door, context: HandoutContext, read: ReadLots, json: boolean): void {
  if (!json && door.outIsTerminal && door.errIsTerminal) return;
  for (const question of readingView(context, read.reading).questions) door.err(`${question}\n`);
}
