import type { HandoutContext } from "../view/context.js";
import type { ImprovementsView } from "../view/improvementsView.js";
import type { ItemView } from "../view/itemView.js";
import type { KitchenView } from "../view/kitchenView.js";
import type { PlaceView } from "../view/places.js";
import type { PlanView } from "../view/planView.js";
import type { ReadingView } from "../view/readingView.js";
import type { MessageKey, Speaker } from "../words/speaker.js";

/** Widest line of plain text: fits an ordinary terminal and a printed page. */
const width = 88;
const blankLine = "";

/** Breaks a line at spaces; lines after the first are set in a little further. */
export function wrapped(text: string, indent = ""): string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(" ")) {
    const bare = line.trim() === "" || line.trim() === "-";
    if (!bare && line.length + word.length + 1 > width) {
      lines.push(line);
      line = `${indent}  ${word}`;
    } else {
      line += (line.endsWith(" ") || line === "" ? "" : " ") + word;
    }
  }
  return [...lines, line];
}

const item = (text: string, indent = "  "): string[] => wrapped(`- ${text}`, indent);

type Heading = Extract<MessageKey, `heading.${string}`>;

/** A heading with its lines below, or nothing where there are none. */
const section = ({ say, tag }: Speaker, heading: Heading, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [say(heading).toLocaleUpperCase(tag), ...lines, blankLine];

function placeLines(place: PlaceView): string[] {
  const head = wrapped(place.line, "  ");
  const rows = [...place.entries.map(({ line }) => line), ...place.later];
  return [...head, ...rows.flatMap((row) => item(row, "    "))];
}

/** Places in use, each with what goes in it; then the rest in a line. */
function placesLines({ speaker }: HandoutContext, places: readonly PlaceView[]): string[] {
  const used = places.filter(({ entries, later }) => entries.length + later.length > 0);
  const empty = places
    .filter((place) => !used.includes(place))
    .map(({ name }) => speaker.say("place.quoted", { place: name }));
  const rest =
    empty.length > 0 ? wrapped(speaker.say("place.empty", { places: speaker.list(empty) }), "  ") : [];
  return [...used.flatMap(placeLines), ...rest];
}

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

/** A plan as plain text, in the order it is needed: what to do now, then later, then why. */
export function planText(context: HandoutContext, view: PlanView): string {
  const { speaker } = context;
  const moves = view.moves.length > 0 ? view.moves.map(({ line }) => line) : [speaker.say("move.none")];
  const eating = [...eatingDays(view), ...view.eating.ready, ...view.eating.left];
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
