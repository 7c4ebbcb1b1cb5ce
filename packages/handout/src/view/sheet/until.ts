import type { Plan, PlannedLot } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { shortDayWords } from "../../words/dates.js";
import { longestInDays, spanWords } from "../../words/spans.js";
import type { HandoutContext } from "../context.js";
import { keptDays, readyDay } from "../keptDays.js";
import { isForHours } from "../safeTime.js";

/** From when it is to be looked at and until when it may keep, as `spanWords` tells them by number: the early end rounded down, the late end to the nearest. */
function goodLine({ speaker }: HandoutContext, plan: Plan, lot: PlannedLot): string {
  const { early, late } = lot.life;
  if (late < 0.75) return speaker.say("sheet.until.today");
  const { ready, check, checkDay } = keptDays(plan, lot);
  const last = Math.round(late);
  const from = shortDayWords(speaker, check);
  // What is still to ripen does not keep less long than it takes to be ready.
  if (ready !== undefined && checkDay >= last) return speaker.say("sheet.until.about", { date: from });
  if (late > longestInDays)
    return speaker.say("sheet.until.long", { span: spanWords(speaker, Math.max(early, checkDay), late) });
  const to = shortDayWords(speaker, addDays(plan.from, Math.max(1, last)));
  // Told ready just before: from then on it is looked at, without the same day twice.
  if (ready === check && checkDay < last) return speaker.say("sheet.until.ready", { to });
  if (checkDay < 1) return speaker.say("sheet.until.upTo", { date: to });
  return checkDay >= last
    ? speaker.say("sheet.until.about", { date: from })
    : speaker.say("sheet.until", { from, to });
}

/** Until when a part is good, as dates; where food safety sets a last day, that day. Not for what is past its safe time. */
export function untilLine(context: HandoutContext, plan: Plan, lot: PlannedLot): string {
  const { speaker } = context;
  if (isForHours(context, plan, lot)) return speaker.say("life.atOnce");
  const { safeUntil } = lot;
  if (safeUntil === undefined) return goodLine(context, plan, lot);
  const safe = shortDayWords(speaker, safeUntil);
  const { check: look } = keptDays(plan, lot);
  return look > plan.from && look < safeUntil
    ? speaker.say("sheet.until.safe", { date: shortDayWords(speaker, look), safe })
    : speaker.say("sheet.until.safeOnly", { safe });
}

/** When a part that came unripe is ready, or that it never is here; nothing where it is ready as it came. */
export function readyLine({ speaker }: HandoutContext, plan: Plan, lot: PlannedLot): string | undefined {
  if (lot.readyOnDay === null) return speaker.say("sheet.notReady");
  const ready = readyDay(plan, lot);
  return ready && speaker.say("sheet.ready", { date: shortDayWords(speaker, ready) });
}
