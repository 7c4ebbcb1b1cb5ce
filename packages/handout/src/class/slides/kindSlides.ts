import type { AnsweredPlace } from "../../answer/itemAnswer.js";
import { placesFor } from "../../answer/placesFor.js";
import { askView } from "../../view/askView.js";
import { kitchenTitle } from "../../view/ordinaryNames.js";
import type { ClassContext } from "../classContext.js";
import type { ClassDocument } from "../classKit.js";
import type { DeckSlide, SlideChart } from "./deck.js";

/** Most places that are drawn beside where it belongs: the best ones, with those people use most among them in any ordinary kitchen. A declared preference, no source. */
const mostPlaces = 4;

interface Lives {
  readonly chart: SlideChart;
  /** What the sign at the name of a place stands for; absent where none has one. */
  readonly sign: string | undefined;
}

/** Worse in another way than by its days: it does not ripen there, or is worse to eat. */
const hasPrice = ({ effects, readyOnDay }: AnsweredPlace): boolean =>
  effects.length > 0 || readyOnDay === null;

/** How long the kind lasts where it belongs and alone in each sort of place this kitchen has, longest first. Undefined where there is but one bar. */
function livesChart(context: ClassContext, id: string, where: string): Lives | undefined {
  const { catalogue, kitchen, handout, say } = context;
  const commodity = catalogue.commodities.get(id);
  if (!commodity) return undefined;
  const ripeness = commodity.ripening?.arrives.value ?? 1;
  const { belongs, places } = placesFor({ commodity, ripeness }, kitchen, catalogue);
  const alone = (one: AnsweredPlace) => ({
    place: `${kitchenTitle(handout, one.stays[0]!.name)}${hasPrice(one) ? " †" : ""}`,
    days: Math.round(one.life.middle),
  });
  const moved = belongs.stays.length > 1 ? [{ place: where, days: Math.round(belongs.life.middle) }] : [];
  // Where it belongs stands there even where others last longer.
  const home = places.filter((one) => moved.length === 0 && one.stays[0]!.place === belongs.stays[0]!.place);
  const others = places
    .filter((one) => !home.includes(one))
    .sort((one, other) => other.life.middle - one.life.middle);
  const rows = [...moved, ...home.map(alone), ...others.slice(0, mostPlaces).map(alone)].sort(
    (one, other) => other.days - one.days,
  );
  if (rows.length < 2) return undefined;
  return {
    chart: {
      chart: "bars",
      categories: rows.map(({ place }) => place),
      series: [{ name: say("slides.daysShort"), values: rows.map(({ days }) => days) }],
      axis: say("slides.days"),
      digits: 0,
      alt: say("slides.lives.alt", {
        list: handout.speaker.list(rows.map((row) => say("slides.lives.one", row))),
      }),
    },
    sign: rows.some(({ place }) => place.endsWith("†")) ? say("slides.lives.sign") : undefined,
  };
}

/** One kind on one slide: where, how, until when and why, with its lives in other places beside it; the rest is in the notes. */
export function kindSlide(context: ClassContext, printed: ClassDocument): DeckSlide {
  const { handout, say, guidance } = context;
  const id = printed.items[0]!;
  const view = askView(handout, context.answer(id), guidance.get(id));
  const lives = livesChart(context, id, view.where);
  // Signs stand at what is common practice, and at places in the chart: both are told at the foot.
  const remarks = [
    ...(lives?.sign === undefined ? [] : [lives.sign]),
    ...(view.note === undefined ? [] : [view.note]),
  ];
  return {
    id: printed.id,
    sort: "plain",
    title: printed.title,
    parts: [
      {
        part: "pairs",
        rows: [
          { name: say("answer.where"), text: view.where },
          { name: say("answer.how"), text: view.how },
          { name: say("answer.until"), text: view.until },
          { name: say("slides.why"), text: view.ends.join(" ") },
          ...(view.first.length > 0 ? [{ name: say("answer.first"), text: view.first.join("\n") }] : []),
        ],
      },
    ],
    chart: lives?.chart,
    notes: [
      say("slides.kind.notes"),
      say("answer.range"),
      ...view.sections.flatMap(({ heading, lines }) => [heading, ...lines]),
    ],
    remarks,
    sources: printed.sources.map(({ text }) => text),
  };
}
