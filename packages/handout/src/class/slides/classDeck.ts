import type { Catalogue } from "@keepwright/catalogue";
import { type ClassContext, classContext } from "../classContext.js";
import type { ClassKit } from "../classKit.js";
import { type HeldPart, heldParts } from "../running/heldParts.js";
import type { Deck, DeckPart, DeckSlide } from "./deck.js";
import { partSlides } from "./parts/partSlides.js";

/** Shortest time that a slide is worth showing [min]. A declared preference, no source. */
export const minutesOfSlide = 1;

/** How many slides one takes in the file: more where it has not room enough. */
export type SlidesTaken = (slide: DeckSlide) => number;

/** The same slide twice would need two names: several documents may have parts with one title. */
function named(slides: readonly DeckSlide[]): DeckSlide[] {
  const seen = new Map<string, number>();
  return slides.map((slide) => {
    const count = (seen.get(slide.id) ?? 0) + 1;
    seen.set(slide.id, count);
    return count === 1 ? slide : { ...slide, id: `${slide.id}-${count}` };
  });
}

/** Passages in another language of all sources that may stand on a slide. */
function passagesOf({ documents }: ClassKit, slides: readonly DeckSlide[]): NonNullable<Deck["passages"]> {
  const all = documents.flatMap(({ blocks, sources }) => [
    ...sources,
    ...blocks.flatMap((block) => (block.block === "sources" ? block.sources : [])),
  ]);
  const own = slides.flatMap(({ ownSources = [] }) => ownSources);
  return new Map(
    [...all, ...own].flatMap(({ text, passages }) => (passages ? [[text, passages] as const] : [])),
  );
}

const sum = (slides: readonly DeckSlide[], taken: SlidesTaken): number =>
  slides.reduce((all, slide) => all + taken(slide), 0);

/** As many from the first on as the minutes of the part bear; always the first, and every caution. */
function borne(part: HeldPart, slides: readonly DeckSlide[], taken: SlidesTaken): readonly DeckSlide[] {
  if (part.name === "safety") return slides;
  const most = part.minutes / minutesOfSlide;
  const fits = (count: number) => sum(slides.slice(0, count), taken) <= most;
  let count = 1;
  while (count < slides.length && fits(count + 1)) count++;
  return slides.slice(0, count);
}

/** What to say and do, on each slide of a part: when it is held, what the host does; on the last, what there is no time to show. */
function withNotes(
  { say, handout }: ClassContext,
  { name, minutes }: HeldPart,
  from: number,
  shown: readonly DeckSlide[],
  left: readonly DeckSlide[],
): DeckSlide[] {
  const { speaker } = handout;
  const when = say("slides.part", { part: say(`running.part.${name}`), from, to: from + minutes, minutes });
  const untold = left.map(({ title, subtitle }) => subtitle ?? title);
  return shown.map((slide, index) => ({
    ...slide,
    notes: [
      when,
      ...(index === 0 ? [say(`running.do.${name}`)] : []),
      ...slide.notes,
      ...(index === shown.length - 1 && untold.length > 0
        ? [say("slides.notShown", { names: speaker.list(untold) })]
        : []),
    ],
  }));
}

/**
 * The slides of a kit, from what its documents say: what a class sees and takes home is the same. They come in the order of the running sheet's parts, as many as
 * the minutes of each part bear.
 * @param taken how many slides of the file one takes; left out: one each
 */
export function classDeck(kit: ClassKit, catalogue: Catalogue, taken: SlidesTaken = () => 1): Deck {
  const ids = kit.items.map(({ id }) => id);
  const context = classContext(kit.request, catalogue, kit.kitchen, ids);
  const { say } = context;
  const slides: DeckSlide[] = [];
  const parts: DeckPart[] = [];
  let [minute, number] = [0, 1];
  for (const part of heldParts(kit.request.minutes, kit.request.topics).held) {
    const all = partSlides(context, kit, part.name);
    const shown = borne(part, all, taken);
    slides.push(...withNotes(context, part, minute, shown, all.slice(shown.length)));
    const count = sum(shown, taken);
    parts.push({
      name: part.name,
      from: minute,
      to: minute + part.minutes,
      first: number,
      last: number + count - 1,
    });
    minute += part.minutes;
    number += count;
  }
  return {
    title: kit.title,
    language: kit.language,
    slides: named(slides),
    parts,
    passages: passagesOf(kit, slides),
    words: {
      sources: say("slides.sources"),
      moreSources: say("slides.moreSources"),
      goesOn: (title, number, of) => say("slides.goesOn", { title, number, of }),
    },
  };
}
