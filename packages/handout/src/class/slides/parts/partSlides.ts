import type { ClassContext } from "../../classContext.js";
import type { ClassDocument, ClassKit, DocumentSort } from "../../classKit.js";
import type { PartName } from "../../running/parts.js";
import { headingSlides, questionSlides, wholeSlides } from "../blockSlides.js";
import { comparisonSlides } from "../comparisonSlides.js";
import type { DeckSlide } from "../deck.js";
import { kindSlide } from "../kindSlides.js";
import { apartSlides, ripeningSlides } from "./gasSlides.js";
import { safetySlides, savingSlides, signSlides } from "./toldSlides.js";

const ofSort = ({ documents }: ClassKit, sort: DocumentSort): readonly ClassDocument[] =>
  documents.filter((one) => one.sort === sort);

/** What the group does in a part that has nothing else to show. */
const taskSlide = ({ say }: ClassContext, name: PartName): DeckSlide => ({
  id: `part-${name}`,
  sort: "plain",
  title: say(`running.part.${name}`),
  parts: [{ part: "text", text: say(`running.do.${name}`) }],
  notes: [],
  sources: [],
});

function opening({ say }: ClassContext, kit: ClassKit): DeckSlide {
  return {
    id: "opening",
    sort: "opening",
    title: kit.title,
    subtitle: say("slides.kinds", { count: kit.items.length }),
    parts: kit.household.invented ? [{ part: "text", text: say("slides.invented") }] : [],
    notes: [],
    sources: [],
  };
}

function closing({ say, handout }: ClassContext): DeckSlide {
  const { speaker } = handout;
  return {
    id: "closing",
    sort: "plain",
    title: say("slides.close.title"),
    parts: [
      { part: "caution", lines: [speaker.say("caution.cut-produce"), speaker.say("caution.local")] },
      { part: "text", text: say("answer.range") },
    ],
    notes: [say("slides.close.notes")],
    sources: [],
  };
}

type Maker = (context: ClassContext, kit: ClassKit) => readonly DeckSlide[];

/** What can be shown in each part, the most needed first. */
const makers: Readonly<Record<PartName, Maker>> = {
  welcome: (context, kit) => [opening(context, kit)],
  places: (context, kit) => [
    ...ofSort(kit, "places").flatMap((one) =>
      wholeSlides(one, [context.say("places.alone"), context.say("answer.range")]),
    ),
    ...ofSort(kit, "answer").map((one) => kindSlide(context, one)),
  ],
  cards: () => [],
  apart: apartSlides,
  ripening: ripeningSlides,
  signs: signSlides,
  saving: savingSlides,
  household: (context, kit) => comparisonSlides(context, kit.household.twoWays),
  myths: (context, kit) =>
    ofSort(kit, "myths").flatMap((one) => headingSlides(one, [context.say("slides.question")])),
  buying: (_, kit) =>
    [...ofSort(kit, "exercise"), ...ofSort(kit, "exercise answer")].flatMap((one) => wholeSlides(one, [])),
  safety: safetySlides,
  quiz: (context, kit) => ofSort(kit, "quiz answers").flatMap((one) => questionSlides(context, one)),
  close: (context) => [closing(context)],
};

/** The slides of a part, the most needed first; at least one. */
export function partSlides(context: ClassContext, kit: ClassKit, name: PartName): readonly DeckSlide[] {
  const slides = makers[name](context, kit);
  return slides.length > 0 ? slides : [taskSlide(context, name)];
}
