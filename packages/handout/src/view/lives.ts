import type { Plan, PlannedLot } from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";
import { dayWords } from "../words/dates.js";
import { spanWords } from "../words/spans.js";
import type { HandoutContext } from "./context.js";
import { endingWords } from "./endingWords.js";
import { keptDays } from "./keptDays.js";
import { reasonLines } from "./reasons.js";
import { isForHours, isPast } from "./safeTime.js";

export interface LifeView {
  readonly lot: string;
  readonly name: string;
  /** "8 to 12 days". */
  readonly span: string;
  readonly endedBy: string;
  /** The last day on which nine in ten are still good, never before it is ready: check it from then on. */
  readonly lookBy: string;
  readonly lookByLine: string;
  /** Whether food safety sets a last day. */
  readonly limited: boolean;
  readonly reasons: readonly string[];
  /** The one reason that tells most: why it lies there, or else the air it was worked out for. */
  readonly lead: string;
  /** The other reasons. */
  readonly more: readonly string[];
  /** Name and span in a line. */
  readonly line: string;
}

/** When to look at it, and until when it may be kept at most; one sentence alone where safety binds at once. */
export function lookByLine(context: HandoutContext, plan: Plan, lot: PlannedLot, date: CalendarDate): string {
  const { speaker } = context;
  const { life, safeUntil } = lot;
  if (safeUntil === "past") return speaker.say("life.past");
  if (isForHours(context, plan, lot)) return speaker.say("life.atOnce");
  const safe = safeUntil && speaker.say("life.safeUntil", { date: dayWords(speaker, safeUntil) });
  if (safe !== undefined && safeUntil === plan.from) return safe;
  const look =
    life.middle >= 1
      ? speaker.say("life.checkFrom", { date: dayWords(speaker, date) })
      : speaker.say("life.today");
  return safe === undefined ? look : `${look} ${safe}`;
}

/** How long a part may be kept, in words; where food safety allows hours only, those. */
export function spanOf(context: HandoutContext, plan: Plan, lot: PlannedLot): string {
  const { speaker } = context;
  if (isPast(lot)) return speaker.say("span.past");
  if (isForHours(context, plan, lot)) return speaker.say("span.hours");
  return spanWords(speaker, lot.life.early, lot.life.late);
}

/** Reasons begin with the air and with what ends the lot; what comes after says why it lies where it does. */
function ledBy(reasons: readonly string[]) {
  const lead = reasons[2] ?? reasons[0] ?? "";
  return { reasons, lead, more: reasons.filter((reason) => reason !== lead) };
}

/** Every lot's life in words, shortest first. */
export function lifeViews(
  context: HandoutContext,
  plan: Plan,
  names: ReadonlyMap<string, string>,
): LifeView[] {
  const { speaker } = context;
  return [...plan.lots]
    .sort((one, other) => one.life.early - other.life.early)
    .map((lot) => {
      const name = speaker.capital(names.get(lot.id) ?? lot.id);
      const span = spanOf(context, plan, lot);
      const { check: lookBy } = keptDays(plan, lot);
      return {
        lot: lot.id,
        name,
        span,
        endedBy: endingWords(context, lot, lot.endedBy),
        lookBy,
        limited: lot.safeUntil !== undefined,
        lookByLine: lookByLine(context, plan, lot, lookBy),
        ...ledBy(isPast(lot) ? [] : reasonLines(context, plan, lot)),
        line: speaker.say("life.line", { name, span }),
      };
    });
}
