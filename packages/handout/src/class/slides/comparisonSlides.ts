import type { TwoWays } from "@keepwright/planner";
import { gramsPerPound } from "@keepwright/quantities";
import type { TwoWaysSide, TwoWaysView } from "../../view/twoWaysView.js";
import type { ClassContext } from "../classContext.js";
import { comparedThings } from "../comparison/comparedThings.js";
import { kitTwoWaysView } from "../comparison/layKit.js";
import type { DeckSlide, SlideChart } from "./deck.js";

/** Grams in the unit of the charts, and its name. */
function unitOf({ handout, say }: ClassContext) {
  const pounds = handout.units.mass === "us";
  const grams = pounds ? gramsPerPound : 1000;
  return {
    unit: say(pounds ? "slides.pounds" : "slides.kilograms"),
    // Two digits after the point are as far as a chart can be read.
    in: (mass: number): number => Math.round((100 * mass) / grams) / 100,
  };
}

const endsOf = ({ sides, evenings }: TwoWaysView) => {
  const { unsorted, planned } = evenings.at(-1)!;
  return {
    one: sides.unsorted,
    oneLost: unsorted.lost.words,
    other: sides.planned,
    otherLost: planned.lost.words,
  };
};

function lostChart(context: ClassContext, view: TwoWaysView): SlideChart {
  const { say } = context;
  const unit = unitOf(context);
  const lost = (side: "unsorted" | "planned") =>
    view.evenings.map((evening) => unit.in(evening[side].lost.grams));
  return {
    chart: "lines",
    categories: view.evenings.map(({ short }) => short),
    series: [
      { name: view.sides.unsorted, values: lost("unsorted") },
      { name: view.sides.planned, values: lost("planned") },
    ],
    axis: say("slides.lost.axis", { unit: unit.unit }),
    digits: 1,
    alt: say("slides.lost.alt", endsOf(view)),
  };
}

function fateChart(context: ClassContext, view: TwoWaysView): SlideChart {
  const { say } = context;
  const unit = unitOf(context);
  const { unsorted, planned } = view.evenings.at(-1)!;
  const values = (fate: "eaten" | "lost" | "left") => [
    unit.in(unsorted[fate].grams),
    unit.in(planned[fate].grams),
  ];
  return {
    chart: "parts",
    categories: [view.sides.unsorted, view.sides.planned],
    series: [
      { name: view.fates.eaten, values: values("eaten") },
      { name: view.fates.lost, values: values("lost") },
      { name: view.fates.left, values: values("left") },
    ],
    axis: say("slides.fate.axis", { unit: unit.unit }),
    digits: 1,
    alt: say("slides.fate.alt", endsOf(view)),
  };
}

const fateRow = ({ say }: ClassContext, { fates }: TwoWaysView, { eaten, lost, left }: TwoWaysSide): string =>
  say("slides.fate.row", {
    eaten: fates.eaten,
    eatenWords: eaten.short,
    lost: fates.lost,
    lostWords: lost.words,
    left: fates.left,
    leftWords: left.short,
  });

/** One haul laid two ways: the rule, what is lost evening by evening, what became of it, and where the difference lies. */
export function comparisonSlides(context: ClassContext, made: TwoWays): DeckSlide[] {
  const { say, handout } = context;
  const view = kitTwoWaysView(handout, made);
  const { unsorted, planned } = view.evenings.at(-1)!;
  const [rule, same, ...others] = view.notes;
  const plain = { sort: "plain", sources: [] } as const;
  const things = comparedThings(context, view);
  const table = {
    part: "table",
    head: [view.thing, view.sides.unsorted, view.sides.planned],
    rows: things,
  } as const;
  return [
    {
      ...plain,
      id: "two-ways",
      title: view.title,
      parts: [{ part: "list", mark: "dot", items: [rule!, same!, say("slides.invented")] }],
      notes: [view.lead, say("slides.question"), ...others],
    },
    {
      ...plain,
      id: "two-ways-lost",
      title: say("slides.lost.title"),
      parts: [{ part: "text", text: view.sum }],
      chart: lostChart(context, view),
      notes: [...view.evenings.map(({ told }) => told), ...others],
    },
    {
      ...plain,
      id: "two-ways-fate",
      title: say("slides.fate.title"),
      parts: [
        {
          part: "pairs",
          rows: [
            { name: view.sides.unsorted, text: fateRow(context, view, unsorted) },
            { name: view.sides.planned, text: fateRow(context, view, planned) },
          ],
        },
      ],
      chart: fateChart(context, view),
      notes: [view.sum, ...others],
    },
    {
      ...plain,
      id: "two-ways-things",
      title: say("slides.things.title"),
      parts: things.length > 0 ? [table] : [{ part: "text", text: say("slides.things.none") }],
      notes: [same!, ...others],
    },
  ];
}
