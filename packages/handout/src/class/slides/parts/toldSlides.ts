import { askedNamedSources } from "../../../view/askedSources.js";
import { type AskSection, askTold } from "../../../view/askTold.js";
import { starNote } from "../../../view/askView.js";
import type { ClassContext } from "../../classContext.js";
import type { KitSource } from "../../classKit.js";
import { kitSources } from "../../kitSources.js";
import { type DeckSlide, type SlidePart, sourced } from "../deck.js";

const sectionsOf = (context: ClassContext, id: string): readonly AskSection[] =>
  askTold(context.handout, context.answer(id), context.guidance.get(id)).sections;

type Told = "signs" | "save" | "trimmings" | "hazards";

/** Where what is told of a kind comes from, as on its answer sheet. */
function sourcesOf(context: ClassContext, id: string, told: readonly Told[]): KitSource[] {
  const { handout, catalogue, guidance } = context;
  const figures = told.map((name) => handout.speaker.say(`ask.figure.${name}`));
  const named = askedNamedSources(handout, catalogue, id, guidance.get(id));
  return kitSources(
    context,
    named.filter(({ figure }) => figures.includes(figure)),
  );
}

interface ToldSlide {
  readonly id: string;
  readonly title: string;
  readonly parts: readonly SlidePart[];
  /** Headings that stand on it, some with a star. */
  readonly headings: readonly string[];
  readonly from: readonly KitSource[];
}

function toldSlide({ handout }: ClassContext, { headings, from, ...slide }: ToldSlide): DeckSlide {
  const note = starNote(handout, headings);
  return { ...slide, ...sourced(from), sort: "plain", notes: [], remarks: note === undefined ? [] : [note] };
}

const signs: readonly AskSection["part"][] = ["ripe", "going", "discard"];

/** For each kind the signs that it is good, going or gone. */
export const signSlides = (context: ClassContext): DeckSlide[] =>
  context.items.flatMap((id) => {
    const told = sectionsOf(context, id).filter(
      ({ part, lines }) => signs.includes(part) && lines.length > 0,
    );
    if (told.length === 0) return [];
    return toldSlide(context, {
      id: `signs-${id}`,
      title: context.say("slides.signs.title", { name: context.title(id) }),
      parts: [
        {
          part: "pairs",
          rows: told.map(({ heading, lines }) => ({ name: heading, text: lines.join("\n") })),
        },
      ],
      headings: told.map(({ heading }) => heading),
      from: sourcesOf(context, id, ["signs"]),
    });
  });

/** For each kind what to do with too much of it. */
export const savingSlides = (context: ClassContext): DeckSlide[] =>
  context.items.flatMap((id) => {
    const told = sectionsOf(context, id).find(({ part }) => part === "save");
    if (!told || told.lines.length === 0) return [];
    return toldSlide(context, {
      id: `saving-${id}`,
      // The star of what is common practice stands at the title: it says the same as the heading on paper.
      title: `${context.say("slides.saving.title", { name: context.title(id) })}${told.heading.endsWith(" *") ? " *" : ""}`,
      parts: [{ part: "list", mark: "dot", items: told.lines }],
      headings: [told.heading],
      from: sourcesOf(context, id, ["save", "trimmings"]),
    });
  });

/** All cautions of the answer sheets: those that hold for several kinds, then those of each. None is left out for want of time. */
export function safetySlides(context: ClassContext): DeckSlide[] {
  const { say, items, handout } = context;
  const general = ["caution.wash", "caution.cut-produce", "caution.local"] as const;
  const cautions = items.map((id) => ({
    id,
    lines: sectionsOf(context, id).find(({ part }) => part === "cautions")?.lines ?? [],
  }));
  const times = new Map<string, number>();
  for (const { lines } of cautions) for (const line of lines) times.set(line, (times.get(line) ?? 0) + 1);
  const shared = new Set([
    ...[...times].filter(([, count]) => count > 1).map(([line]) => line),
    ...general.map((key) => handout.speaker.say(key)),
  ]);
  const last = handout.speaker.say("caution.local");
  const rows = cautions.flatMap(({ id, lines }) => {
    const own = lines.filter((line) => !shared.has(line));
    return own.length > 0 ? [{ name: context.title(id), text: own.join("\n") }] : [];
  });
  const plain = { sort: "plain", notes: [] } as const;
  const first: DeckSlide = {
    ...plain,
    id: "safety",
    title: say("running.part.safety"),
    parts: [...[...shared].filter((line) => line !== last), last].map((line) => ({
      part: "caution",
      lines: [line],
    })),
    sources: [],
  };
  if (rows.length === 0) return [first];
  const own: DeckSlide = {
    ...plain,
    id: "safety-kinds",
    title: say("slides.safety.kinds"),
    parts: [{ part: "pairs", rows }],
    ...sourced(items.flatMap((id) => sourcesOf(context, id, ["hazards"]))),
  };
  return [first, own];
}
