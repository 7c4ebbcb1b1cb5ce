import { isWholeYear, type MonthSpan, seasonOf } from "@keepwright/catalogue";
import type { AnsweredGuidance } from "../answer/itemAnswer.js";
import { monthName } from "../words/dates.js";
import { guidanceForReaders } from "../words/forReaders.js";
import type { HandoutContext } from "./context.js";

/** Seasons in words, north and south; one line where there is no season. */
export function seasonLines({ speaker }: HandoutContext, season: AnsweredGuidance["season"]): string[] {
  const { northern, southern } = seasonOf(season);
  if (isWholeYear(northern)) return [speaker.say("item.allYear")];
  const spans = (months: readonly MonthSpan[]) =>
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
      months: isWholeYear(southern) ? speaker.say("item.allYear") : spans(southern),
    }),
  ];
}

/** The lines of an item's guidance; empty lists where there is none. */
export function guidanceLines(context: HandoutContext, guidance: AnsweredGuidance | undefined) {
  if (!guidance) return { ripe: [], going: [], discard: [], save: [], season: [] };
  const { ripe, going, discard, save, trimmings } = guidanceForReaders(context.speaker.tag, guidance).words;
  return {
    ripe,
    going,
    discard,
    save: [...save, ...trimmings],
    season: seasonLines(context, guidance.season),
  };
}
