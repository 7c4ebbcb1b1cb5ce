import { type Catalogue, catalogueFor } from "@keepwright/catalogue";
import {
  findingLine,
  findingLines,
  type HandoutContext,
  type ListOf,
  readingView,
} from "@keepwright/handout";
import { type Lot, type Reading, readHaul, told, type UnderstoodLot } from "@keepwright/planner";
import { UserError, userError } from "../userError.js";

/** A haul as understood, and its lots ready for the planner. */
export interface ReadLots {
  readonly reading: Reading;
  readonly lots: readonly Lot[];
  /** Some words were not understood and are in no lot. */
  readonly partly: boolean;
}

/** Longest piece of what was typed that a lot keeps; the reading keeps all of it. */
const longestTyped = 2000;

const isLot = (item: Reading["items"][number]): item is UnderstoodLot => item.kind === "lot";

/** The lots of a reading, named in their order. */
export const lotsOf = (reading: Reading): Lot[] =>
  reading.items.filter(isLot).map(
    ({ lot, typed }, index): Lot => ({
      ...lot,
      id: `lot-${index + 1}`,
      typed: typed.slice(0, longestTyped),
    }),
  );

/** Is it the data of a file rather than words: an object of JSON? */
function isData(text: string): boolean {
  if (!text.trimStart().startsWith("{")) return false;
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

/** What would work in place of words that are not there or not understood. */
const advice: Readonly<Record<ListOf, { readonly write: string; readonly example: string }>> = {
  haul: { write: "Write what came home", example: "2 lb apples, a bunch of kale" },
  list: { write: "Write what you would like to buy", example: "1 kg spinach, 3 heads romaine" },
};

/** Reads a haul, or a list of what is wished for. Throws UserError when it is empty, holds data instead of words, or when nothing in it was understood; the questions go with it. `on`: the day it is now. */
export function readLots(
  context: HandoutContext,
  catalogue: Catalogue,
  text: string,
  on?: string,
  of: ListOf = "haul",
): ReadLots {
  const { write, example } = advice[of];
  if (text.trim() === "") {
    const empty = {
      thing: of,
      value: "it is empty",
      remedy: `${write}, for example: ${example}.`,
      ...told(`${of} not there`),
    };
    throw new UserError([empty], {}, findingLines(context, [empty]));
  }
  if (isData(text)) {
    throw userError(
      of,
      "it holds JSON data, not words",
      `${write} in words. A plan printed with --json is given to keepwright carry-on.`,
    );
  }
  const reading = readHaul(text, catalogueFor(catalogue, context.speaker.tag), on);
  const lots = lotsOf(reading);
  if (lots.length === 0) throw nothingUnderstood(context, reading, of);
  return { reading, lots, partly: reading.items.some(({ kind }) => kind === "question") };
}

/** Longest list of questions that is told as an error. */
const mostQuestions = 20;

function nothingUnderstood(context: HandoutContext, reading: Reading, of: ListOf): UserError {
  const { questions } = readingView(context, reading);
  const findings = questions.slice(0, mostQuestions).map((question) => ({
    thing: of,
    value: "not understood",
    remedy: question,
    ...told("question about it", { question }),
  }));
  const example = {
    thing: of,
    value: "nothing in it was understood",
    remedy: `Write amounts and names, for example: ${advice[of].example}.`,
    ...told(`${of} not understood`),
  };
  const lines = [example, ...findings].map((one) => findingLine(context, one));
  return new UserError([example, ...findings], { reading }, lines.join("\n"));
}
