import type { Question, Reading, UnderstoodLot } from "@keepwright/planner";
import { massWords } from "../words/amounts.js";
import { shortText } from "../words/plainText.js";
import type { HandoutContext } from "./context.js";
import { kindName, stateName } from "./kindNames.js";
import { wantedName } from "./wishes.js";

export interface ReadingView {
  /** One line for each thing found in the text, in its order. */
  readonly understood: readonly string[];
  /** Everything that has to be asked, in whole sentences. */
  readonly questions: readonly string[];
}

/** Longest list of kinds to choose from that a person will read. */
const mostCandidates = 6;

/** A question in words. What was typed is quoted, shortened, and shown as plain characters. */
export function questionLine(context: HandoutContext, question: Question): string {
  const { speaker } = context;
  const word = shortText(question.word);
  if (question.ask === "how much") {
    return question.units && question.units.length > 0
      ? speaker.say("ask.how much.known units", {
          word,
          units: speaker.choices(question.units.map((unit) => shortText(unit))),
        })
      : speaker.say(`ask.how much.${question.reason}`, { word });
  }
  if (question.ask === "unsafe or other")
    return speaker.say(`ask.unsafe or other.${question.reason}`, { word });
  if (question.ask === "which commodity" && question.candidates.length > 0) {
    const names = question.candidates.slice(0, mostCandidates).map((id) => kindName(context, id, "one"));
    return speaker.say("ask.which commodity", { word, candidates: speaker.choices(names) });
  }
  if (question.ask === "which commodity") return speaker.say("ask.which commodity.none", { word });
  return speaker.say(`ask.${question.ask}`, { word });
}

/** A lot with every state that was understood, so that a wrong one can be seen. */
function understoodName(context: HandoutContext, lot: UnderstoodLot["lot"]): string {
  const { speaker } = context;
  const name = stateName(context, lot);
  const washed = lot.washed ? speaker.say("lot.washed", { name }) : name;
  const ripe =
    typeof lot.ripeness === "string" ? speaker.say(`lot.now.${lot.ripeness}`, { name: washed }) : washed;
  const old = lot.extraDays > 0 ? speaker.say("lot.daysAgo", { name: ripe, count: lot.extraDays }) : ripe;
  return lot.wanted ? wantedName(context, lot.wanted, old) : old;
}

/** "avocados, ripe, 2 (about 400 g)", with what was taken for granted. */
export function lotLine(
  context: HandoutContext,
  lot: UnderstoodLot["lot"],
  assumed: UnderstoodLot["assumed"] = [],
): string {
  const { speaker, units } = context;
  const mass = massWords(speaker, units, lot.grams);
  const { pieces } = lot;
  const amount =
    pieces === undefined
      ? speaker.say("amount.mass", { mass })
      : speaker.say("amount.pieces", { pieces, mass });
  const values = { name: understoodName(context, lot), amount };
  if (assumed.length === 0) return speaker.say("lot.line", values);
  const names = assumed.map((name) => speaker.say(`assumed.${name}`));
  return speaker.say("lot.lineAssuming", { ...values, assumed: speaker.list(names) });
}

/** What was taken for granted, in a line of its own; nothing when nothing was. */
export function assumedLine(
  { speaker }: HandoutContext,
  assumed: UnderstoodLot["assumed"],
): string | undefined {
  if (assumed.length === 0) return undefined;
  return speaker.say("lot.assumed", {
    assumed: speaker.list(assumed.map((name) => speaker.say(`assumed.${name}`))),
  });
}

const understoodLine = (context: HandoutContext, { typed, lot, assumed }: UnderstoodLot): string =>
  context.speaker.say("reading.lot", { typed: shortText(typed), lot: lotLine(context, lot, assumed) });

/** What was understood of a typed haul, with what was taken for granted, and what has to be asked. */
export function readingView(context: HandoutContext, reading: Reading): ReadingView {
  return {
    understood: reading.items.map((item) =>
      item.kind === "lot"
        ? understoodLine(context, item)
        : context.speaker.say(
            item.questions.some(({ ask }) => ask === "unsafe or other")
              ? "reading.notPlanned"
              : "reading.notUnderstood",
            { typed: shortText(item.typed) },
          ),
    ),
    questions: reading.items.flatMap((item) =>
      item.questions.map((question) => questionLine(context, question)),
    ),
  };
}
