import { type Catalogue, catalogueFor } from "@keepwright/catalogue";
import { type HandoutContext, noHaulLine, readingView } from "@keepwright/handout";
import { type Lot, type Reading, readHaul, type UnderstoodLot } from "@keepwright/planner";
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

/** Reads a haul. Throws UserError when it is empty, holds data instead of words, or when nothing in it was understood; the questions go with it. `on`: the day it is now. */
export function readLots(context: HandoutContext, catalogue: Catalogue, text: string, on?: string): ReadLots {
  if (text.trim() === "") {
    const empty = {
      thing: "haul",
      value: "it is empty",
      remedy: "Write what came home, for example: 2 lb apples, a bunch of kale.",
    };
    throw new UserError([empty], {}, noHaulLine(context, "empty"));
  }
  if (isData(text)) {
    throw userError(
      "haul",
      "it holds JSON data, not words",
      "Write what came home in words. A plan printed with --json is given to keepwright carry-on.",
    );
  }
  const reading = readHaul(text, catalogueFor(catalogue, context.speaker.tag), on);
  const lots = lotsOf(reading);
  if (lots.length === 0) throw nothingUnderstood(context, reading);
  return { reading, lots, partly: reading.items.some(({ kind }) => kind === "question") };
}

/** Longest list of questions that is told as an error. */
const mostQuestions = 20;

function nothingUnderstood(context: HandoutContext, reading: Reading): UserError {
  const { questions } = readingView(context, reading);
  const findings = questions
    .slice(0, mostQuestions)
    .map((question) => ({ thing: "haul", value: "not understood", remedy: question }));
  const example = {
    thing: "haul",
    value: "nothing in it was understood",
    remedy: "Write amounts and names, for example: 2 lb apples, a bunch of kale.",
  };
  const lines = [noHaulLine(context, "notUnderstood"), ...questions.slice(0, mostQuestions)];
  return new UserError([example, ...findings], { reading }, lines.join("\n"));
}
