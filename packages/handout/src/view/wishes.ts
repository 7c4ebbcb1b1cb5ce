import { type Lot, type Plan, type PlannedLot, weekdays } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { dayWords, weekdayName } from "../words/dates.js";
import { commodityIn, type HandoutContext } from "./context.js";
import { isPast } from "./safeTime.js";

/** What is wanted of a part of a lot for a day, and what the plan makes of it. */
export interface WishView {
  readonly lot: string;
  readonly met: boolean;
  readonly line: string;
}

type Wish = NonNullable<PlannedLot["wish"]>;

function chanceLine({ speaker }: HandoutContext, { chance, ready }: Wish): string {
  const count = Math.round(10 * chance);
  if (count < 1) return speaker.say("wish.chanceLittle");
  if (count > 9) return speaker.say("wish.chanceHigh");
  return speaker.say(ready !== null && ready.middle > 0 ? "wish.chance" : "wish.chanceReady", { count });
}

function wishLine(context: HandoutContext, plan: Plan, lot: PlannedLot, wish: Wish, name: string): string {
  const { speaker } = context;
  const on = (day: number): string => dayWords(speaker, addDays(plan.from, day));
  const wanted = speaker.say(`wanted.${wish.when}`, { date: dayWords(speaker, wish.date) });
  const values = { name, wanted };
  if (wish.met && lot.readyOnDay !== null) {
    return lot.readyOnDay < 1
      ? speaker.say("wish.metAlready", values)
      : speaker.say("wish.met", { ...values, ready: on(lot.readyOnDay) });
  }
  if (wish.why === "ripens too slowly") {
    const { bestReadyOnDay: best } = wish;
    if (best === null || lot.readyOnDay === null) return speaker.say("wish.neverReady", values);
    return speaker.say("wish.ripens too slowly", { ...values, ready: on(lot.readyOnDay), best: on(best) });
  }
  return speaker.say(`wish.${wish.why ?? "other things weigh more"}`, values);
}

/** Fruit that ripens no more; of leaves and roots nobody expects it. */
const isUnripening = (context: HandoutContext, lot: PlannedLot, wish: Wish): boolean =>
  !wish.ripens && lot.form === "whole" && commodityIn(context, lot.commodity)?.organ === "fruit";

/** Every part that is wanted for a day, in the plan's order, in one line each. */
export function wishViews(
  context: HandoutContext,
  plan: Plan,
  names: ReadonlyMap<string, string>,
): WishView[] {
  const { speaker } = context;
  return plan.lots.flatMap((lot): WishView[] => {
    const { wish } = lot;
    if (!wish || isPast(lot)) return [];
    const name = speaker.capital(names.get(lot.id) ?? lot.id);
    const lines = [
      wishLine(context, plan, lot, wish, name),
      ...(isUnripening(context, lot, wish) ? [speaker.say("wish.noRipening")] : []),
      chanceLine(context, wish),
    ];
    return [{ lot: lot.id, met: wish.met, line: lines.join(" ") }];
  });
}

/** The name of a lot with the day it is wanted for, before anybody knows which the first day is. */
export function wantedName(
  { speaker }: HandoutContext,
  wanted: NonNullable<Lot["wanted"]>,
  name: string,
): string {
  const { when, day } = wanted;
  const said = (): string => {
    if (day === 0) return speaker.say("day.today");
    if (day === 1) return speaker.say("day.tomorrow");
    if (typeof day === "number") return speaker.say("day.ahead", { count: day });
    const weekday = (weekdays as readonly string[]).indexOf(day);
    return weekday < 0
      ? speaker.say("day.date", { date: dayWords(speaker, day) })
      : speaker.say("day.weekday", { weekday: weekdayName(speaker, weekday) });
  };
  return speaker.say(`lot.wanted.${when}`, { name, day: said() });
}
