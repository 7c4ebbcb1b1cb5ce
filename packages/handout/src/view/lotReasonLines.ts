import type { LotReason, Plan } from "@keepwright/planner";
import { plainText } from "../words/plainText.js";
import { spanWords } from "../words/spans.js";
import type { HandoutContext } from "./context.js";
import { lotNames, placeNames } from "./names.js";

type Alternative = LotReason["elsewhere"][number];

/** Most other places, and most neighbours, that are spoken of: the nearest rivals say enough. */
const mostPlaces = 3;
const mostNeighbours = 2;

function elsewhereLine(
  { speaker }: HandoutContext,
  reason: LotReason,
  other: Alternative,
  place: string,
): string {
  const values = {
    place,
    wrap: speaker.say(`wrap.${other.wrap}`),
    span: spanWords(speaker, other.life.early, other.life.late),
    ending: speaker.say(`ending.${other.endedBy}`),
  };
  if (other.readyOnDay === null && reason.here.readyOnDay !== null) return speaker.say("why.notRipe", values);
  return speaker.say(other.tooFull ? "why.tooFull" : "why.elsewhere", values);
}

/** What a neighbour's leaving would change; nothing where the words would be the same. */
function neighbourLines(
  { speaker }: HandoutContext,
  reason: LotReason,
  names: ReadonlyMap<string, string>,
): string[] {
  const { middle } = reason.here.life;
  const now = spanWords(speaker, middle, middle);
  return reason.blame.slice(0, mostNeighbours).flatMap(({ part, lifeWithout }) => {
    const span = spanWords(speaker, lifeWithout.value, lifeWithout.value);
    return span === now
      ? []
      : [speaker.say("why.neighbour", { name: names.get(part) ?? plainText(part), span, now })];
  });
}

/** Why a lot lies where it lies, beside what would become of it elsewhere and which neighbours shorten its life. */
export function lotReasonLines(context: HandoutContext, plan: Plan, reason: LotReason): string[] {
  const places = placeNames(plan);
  const others = reason.elsewhere
    .slice(0, mostPlaces)
    .map((other) => elsewhereLine(context, reason, other, places.get(other.place) ?? plainText(other.place)));
  return [...others, ...neighbourLines(context, reason, lotNames(context, plan))];
}
