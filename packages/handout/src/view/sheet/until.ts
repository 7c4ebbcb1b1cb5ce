import type { Plan, PlannedLot } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { shortDayWords } from "../../words/dates.js";
import { longestInDays, spanWords } from "../../words/spans.js";
import type { HandoutContext } from "../context.js";
import { isForHours } from "../safeTime.js";

/** Days by the calendar as `spanWords` tells them by number: the early end rounded down, the late end to the nearest. */
function goodLine({ speaker }: HandoutContext, plan: Plan, lot: PlannedLot): string {
  const { life } = lot;
  if (life.late < 0.75) return speaker.say("sheet.until.today");
  if (life.late > longestInDays)
    return speaker.say("sheet.until.long", { span: spanWords(speaker, life.early, life.late) });
  // What is still to ripen is not told to be past its best before it is told to be ready.
  const ready = Math.ceil(lot.readyOnDay ?? 0);
  const early = Math.max(Math.floor(life.early), ready);
  const late = Math.round(life.late);
  const on = (day: number): string => shortDayWords(speaker, addDays(plan.from, day));
  if (early < 1) return speaker.say("sheet.until.upTo", { date: on(Math.max(1, late)) });
  return early >= late
    ? speaker.say("sheet.until.about", { date: on(early) })
    : speaker.say("sheet.until", { from: on(early), to: on(late) });
}

/** Until when a part is good, as dates; where food safety sets a last day, that day. Not for what is past its safe time. */
export function untilLine(context: HandoutContext, plan: Plan, lot: PlannedLot): string {
  const { speaker } = context;
  if (isForHours(context, plan, lot)) return speaker.say("life.atOnce");
  const { safeUntil } = lot;
  if (safeUntil === undefined) return goodLine(context, plan, lot);
  const safe = shortDayWords(speaker, safeUntil);
  const look = addDays(plan.from, Math.max(0, lot.life.early));
  return look > plan.from && look < safeUntil
    ? speaker.say("sheet.until.safe", { date: shortDayWords(speaker, look), safe })
    : speaker.say("sheet.until.safeOnly", { safe });
}

/** When a part that came unripe is ready, or that it never is here; nothing where it is ready as it came. */
export function readyLine({ speaker }: HandoutContext, plan: Plan, lot: PlannedLot): string | undefined {
  if (lot.readyOnDay === null) return speaker.say("sheet.notReady");
  if (lot.readyOnDay < 1) return undefined;
  // What is moved when ripe is told ready on the day of the move: one event, one date.
  const [first] = lot.stays;
  const moved = first?.moveWhen === "ripe" ? first.to : undefined;
  const date = shortDayWords(speaker, moved ?? addDays(plan.from, lot.readyOnDay));
  return speaker.say("sheet.ready", { date });
}
