import type { AnsweredGuidance } from "../answer/itemAnswer.js";
import { monthName } from "../words/dates.js";
import type { HandoutContext } from "./context.js";

type Spans = readonly (readonly [number, number])[];

const monthsInYear = 12;

/** Months half a year later: the same season on the other side of the equator. */
const halfAYearLater = (month: number): number => ((month + monthsInYear / 2 - 1) % monthsInYear) + 1;

const isAllYear = (spans: Spans): boolean => spans.some(([from, to]) => from === 1 && to === monthsInYear);

/** Seasons in words, north and south; one line where there is no season. */
export function seasonLines(
  { speaker }: HandoutContext,
  { northern, southern }: AnsweredGuidance["season"],
): string[] {
  const south = southern ?? northern.map(([from, to]) => [halfAYearLater(from), halfAYearLater(to)] as const);
  if (isAllYear(northern)) return [speaker.say("item.allYear")];
  const spans = (months: Spans) =>
    speaker.list(
      months.map(([from, to]) =>
        speaker.say(from === to ? "item.month" : "item.months", {
          from: monthName(speaker, from),
          to: monthName(speaker, to),
        }),
      ),
    );
  return [
    speaker.say("item.seasonNorth", { months: spans(northern) }),
    speaker.say("item.seasonSouth", {
      months: isAllYear(south) ? speaker.say("item.allYear") : spans(south),
    }),
  ];
}

/** The lines of an item's guidance; empty lists where there is none. */
export function guidanceLines(context: HandoutContext, guidance: AnsweredGuidance | undefined) {
  if (!guidance) return { ripe: [], going: [], discard: [], save: [], season: [] };
  const { ripe, going, discard, save, trimmings } = guidance.words;
  return {
    ripe,
    going,
    discard,
    save: [...save, ...trimmings],
    season: seasonLines(context, guidance.season),
  };
}
