import type { HandoutContext } from "../view/context.js";
import type { DrawsView } from "../view/drawsView.js";
import type { ImprovementsView } from "../view/improvementsView.js";
import type { ItemView } from "../view/itemView.js";
import type { KitchenView } from "../view/kitchenView.js";
import type { PlanView } from "../view/planView.js";
import type { ReadingView } from "../view/readingView.js";
import { blankLine, item, placesLines, section, wrapped } from "./lines.js";

export { wrapped };

/** Days up to the last on which something is planned: nothing is gained by a list of empty days. */
function eatingDays({ eating }: PlanView): string[] {
  const last = eating.days.findLastIndex(({ lots }) => lots.length > 0);
  return eating.days.slice(0, last + 1).map(({ line }) => line);
}

export function kitchenText(view: KitchenView): string[] {
  return [`  ${view.name}`, ...view.lines.flatMap((line) => item(line, "    "))];
}

/** What was understood, and what has to be asked. */
export function readingText({ speaker }: HandoutContext, view: ReadingView): string[] {
  return [
    ...section(
      speaker,
      "heading.understood",
      view.understood.flatMap((line) => item(line)),
    ),
    ...section(
      speaker,
      "heading.questions",
      view.questions.flatMap((line) => item(line)),
    ),
  ];
}

/** What becomes of a plan over many draws. */
const drawsText = ({ speaker }: HandoutContext, view: DrawsView): string[] =>
  section(speaker, "heading.draws", [
    ...[view.how, ...view.waste].flatMap((line) => wrapped(line, "  ")),
    ...view.lots.flatMap((line) => item(line)),
    ...wrapped(view.note, "  "),
  ]);

/** How far a plan can be from the best there is. */
const proofText = ({ speaker }: HandoutContext, { proof }: PlanView): string[] =>
  proof
    ? section(
        speaker,
        "heading.proof",
        proof.flatMap((line) => wrapped(line, "  ")),
      )
    : [];

/** A plan as plain text, in the order it is needed: what to do now, then later, then why. */
export function planText(context: HandoutContext, view: PlanView): string {
  const { speaker } = context;
  const moves = view.moves.length > 0 ? view.moves.map(({ line }) => line) : [speaker.say("move.none")];
  const eating = [...eatingDays(view), ...view.eating.cutOpen, ...view.eating.ready, ...view.eating.left];
  const lines = [
    view.title,
    ...view.summary.flatMap((line) => wrapped(line)),
    blankLine,
    ...section(
      speaker,
      "heading.throwAway",
      view.throwAway.flatMap((line) => item(line)),
    ),
    ...(view.reading ? readingText(context, view.reading) : []),
    ...(view.kitchen ? section(speaker, "heading.kitchen", kitchenText(view.kitchen)) : []),
    ...section(speaker, "heading.prepare", [
      ...view.preparation.flatMap(({ line }) => item(line)),
      ...(view.preparation.some(({ commonPractice }) => commonPractice)
        ? wrapped(speaker.say("prepare.practiceNote"), "  ")
        : []),
    ]),
    ...section(speaker, "heading.places", placesLines(context, view.places)),
    ...section(
      speaker,
      "heading.wishes",
      view.wishes.flatMap(({ line }) => item(line)),
    ),
    ...section(
      speaker,
      "heading.moves",
      moves.flatMap((line) => item(line)),
    ),
    ...section(
      speaker,
      "heading.eat",
      eating.flatMap((line) => item(line)),
    ),
    ...section(
      speaker,
      "heading.lives",
      view.lives.flatMap((life) => [
        ...item(`${life.line} ${life.lookByLine}`),
        ...life.reasons.flatMap((reason) => wrapped(reason, "      ")),
      ]),
    ),
    ...section(
      speaker,
      "heading.waste",
      [view.waste, speaker.say("waste.note")].flatMap((line) => wrapped(line, "  ")),
    ),
    ...(view.draws ? drawsText(context, view.draws) : []),
    ...proofText(context, view),
    ...section(
      speaker,
      "heading.cautions",
      view.cautions.flatMap((line) => item(line)),
    ),
  ];
  return `${lines.join("\n").trimEnd()}\n`;
}

/** What one change at a time would save, as plain text. */
export function improvementsText(context: HandoutContext, view: ImprovementsView): string {
  const { speaker } = context;
  const items = (lines: readonly string[]) => lines.flatMap((line) => item(line));
  const lines = [
    view.title,
    ...view.summary.flatMap((line) => wrapped(line)),
    blankLine,
    ...(view.reading ? readingText(context, view.reading) : []),
    ...(view.kitchen ? section(speaker, "heading.kitchen", kitchenText(view.kitchen)) : []),
    ...section(speaker, "heading.helps", [
      ...view.lead.flatMap((line) => wrapped(line, "  ")),
      ...items(view.helps),
    ]),
    ...section(speaker, "heading.helpsLittle", items(view.little)),
    ...section(speaker, "heading.improveHow", items(view.how)),
    ...section(speaker, "heading.cautions", items(view.cautions)),
  ];
  return `${lines.join("\n").trimEnd()}\n`;
}

/** An answer about one kind as plain text. */
export function itemText({ speaker }: HandoutContext, view: ItemView): string {
  const items = (lines: readonly string[]) => lines.flatMap((line) => item(line));
  const lines = [
    view.title,
    ...(view.alsoCalled ? wrapped(view.alsoCalled) : []),
    blankLine,
    ...section(speaker, "heading.belongs", items(view.belongs)),
    ...section(speaker, "heading.elsewhere", items(view.elsewhere)),
    ...section(speaker, "heading.lasts", [...wrapped(view.conditions, "  "), ...items(view.why)]),
    ...section(speaker, "heading.prepare", [
      ...items(view.preparation),
      ...(view.preparationNote ? wrapped(view.preparationNote, "  ") : []),
    ]),
    ...section(speaker, "heading.ripe", items(view.ripe)),
    ...section(speaker, "heading.going", items(view.going)),
    ...section(speaker, "heading.discard", items(view.discard)),
    ...section(speaker, "heading.save", items(view.save)),
    ...section(speaker, "heading.season", items(view.season)),
    ...section(speaker, "heading.cautions", items(view.cautions)),
    ...section(speaker, "heading.sources", items([...view.figures, ...view.sources])),
  ];
  return `${lines.join("\n").trimEnd()}\n`;
}
