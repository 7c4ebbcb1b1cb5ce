import type { Catalogue } from "@keepwright/catalogue";
import { type ClassContext, classContext } from "../classContext.js";
import type { ClassDocument, ClassKit } from "../classKit.js";
import { headingSlides, questionSlides, wholeSlides } from "./blockSlides.js";
import { comparisonSlides } from "./comparisonSlides.js";
import type { Deck, DeckSlide } from "./deck.js";
import { kindSlide } from "./kindSlides.js";

/** The slides of a document; none for what is only for paper, or for the host alone. */
function documentSlides(context: ClassContext, kit: ClassKit, printed: ClassDocument): DeckSlide[] {
  const { say } = context;
  switch (printed.sort) {
    case "answer":
      return [kindSlide(context, printed)];
    case "places":
      return wholeSlides(printed, [say("places.alone"), say("answer.range")]);
    case "myths":
      return headingSlides(printed, [say("slides.question")]);
    case "quiz answers":
      return questionSlides(context, printed);
    case "comparison":
      return comparisonSlides(context, kit.household.twoWays);
    default:
      return [];
  }
}

/** The same slide twice would need two names: several documents may have parts with one title. */
function named(slides: readonly DeckSlide[]): DeckSlide[] {
  const seen = new Map<string, number>();
  return slides.map((slide) => {
    const count = (seen.get(slide.id) ?? 0) + 1;
    seen.set(slide.id, count);
    return count === 1 ? slide : { ...slide, id: `${slide.id}-${count}` };
  });
}

/** The slides of a kit, from the very documents that are printed: what a class sees and takes home is the same. */
export function classDeck(kit: ClassKit, catalogue: Catalogue): Deck {
  const context = classContext(
    kit.request,
    catalogue,
    kit.kitchen,
    kit.items.map(({ id }) => id),
  );
  const { say, handout } = context;
  const opening: DeckSlide = {
    id: "opening",
    sort: "opening",
    title: kit.title,
    subtitle: say("slides.kinds", { count: kit.items.length }),
    parts: kit.household.invented ? [{ part: "text", text: say("slides.invented") }] : [],
    notes: [say("slides.open.notes")],
    sources: [],
  };
  const closing: DeckSlide = {
    id: "closing",
    sort: "plain",
    title: say("slides.close.title"),
    parts: [
      {
        part: "caution",
        lines: [handout.speaker.say("caution.cut-produce"), handout.speaker.say("caution.local")],
      },
      { part: "text", text: say("answer.range") },
    ],
    notes: [say("slides.close.notes")],
    sources: [],
  };
  const slides = kit.documents.flatMap((printed) => documentSlides(context, kit, printed));
  return {
    title: kit.title,
    language: kit.language,
    slides: named([opening, ...slides, closing]),
    words: {
      sources: say("slides.sources"),
      moreSources: say("slides.moreSources"),
      goesOn: (title, number, of) => say("slides.goesOn", { title, number, of }),
    },
  };
}
