import { commodityOf } from "@keepwright/catalogue";
import type { AnsweredPlace } from "../../answer/itemAnswer.js";
import { kitchenTitle } from "../../view/ordinaryNames.js";
import type { ClassContext } from "../classContext.js";
import type { SlideChart } from "./deck.js";
import { isAgainst, type PassedPlace, reasonLines, reasonsPassed } from "./passedOver.js";

/** Most places that are drawn beside where it belongs: the best ones, with those people use most among them in any ordinary kitchen. A declared preference, no source. */
const mostPlaces = 4;

export interface Lives {
  readonly chart: SlideChart;
  /** Why it does not go where it lasts longer, nor where it is not advised. */
  readonly reasons: readonly string[];
  /** Whether the reasons rest on effects that spoil eating, and on what is too damp for it. */
  readonly rests: { readonly onEffects: boolean; readonly onDamp: boolean };
}

const days = ({ life }: AnsweredPlace): number => Math.round(life.middle);

function chartOf(
  { handout, say }: ClassContext,
  home: { readonly where: string; readonly days: number },
  passed: readonly PassedPlace[],
): SlideChart {
  const here = say("slides.lives.here");
  const rows = passed.map(({ place, reasons }) => ({
    place: kitchenTitle(handout, place.stays[0]!.name),
    days: days(place),
    against: isAgainst(reasons),
  }));
  const homeName = say("slides.lives.home", { here, place: home.where });
  const told = rows.map(({ place, against, days }) =>
    say("slides.lives.one", { place: against ? say("slides.lives.named", { place }) : place, days }),
  );
  return {
    chart: "bars",
    categories: [
      homeName,
      ...rows.map(({ place, against }) => (against ? say("slides.lives.marked", { place }) : place)),
    ],
    // A bar is in one series only: what it stands for is told by its filling and by a word, not by its length or colour.
    series: [
      { name: here, fill: "full" as const, values: [home.days, ...rows.map(() => null)] },
      {
        name: say("slides.lives.against"),
        fill: "hatched" as const,
        values: [null, ...rows.map((row) => (row.against ? row.days : null))],
      },
      {
        name: say("slides.lives.others"),
        fill: "empty" as const,
        values: [null, ...rows.map((row) => (row.against ? null : row.days))],
      },
    ].filter(({ values }) => values.some((value) => value !== null)),
    axis: say("slides.days"),
    digits: 0,
    alt: say("slides.lives.alt", {
      list: handout.speaker.list([say("slides.lives.one", { place: homeName, days: home.days }), ...told]),
    }),
  };
}

/**
 * How long a kind lasts where it belongs, first, and alone in other sorts of place this kitchen has, the longest first. Undefined where there is but one.
 * @param where the words for where it belongs
 */
export function livesChart(context: ClassContext, id: string, where: string): Lives | undefined {
  const { belongs } = context.answer(id);
  const commodity = commodityOf(context.catalogue, id);
  const moves = belongs.stays.length > 1;
  const passed = context
    .elsewhere(id)
    .filter((one) => moves || one.stays[0]!.place !== belongs.stays[0]!.place)
    .map((place) => ({
      place,
      reasons: reasonsPassed(commodity, belongs, place),
    }))
    .sort((one, other) => other.place.life.middle - one.place.life.middle)
    .slice(0, mostPlaces);
  if (passed.length === 0) return undefined;
  const because = new Set(passed.flatMap(({ reasons }) => reasons));
  return {
    chart: chartOf(context, { where, days: days(belongs) }, passed),
    reasons: reasonLines(context, passed),
    rests: { onEffects: because.has("effects") || belongs.effects.length > 0, onDamp: because.has("damp") },
  };
}
