import { type AskedPart, movedByHand, worthNaming } from "./askedPart.js";
import type { ChangeReason, LotChange } from "./carriedOn.js";

function ripeness(asked: AskedPart): ChangeReason[] {
  const { carrying, plan, part, id } = asked;
  const before = carrying.previous.plan.lots[part]!.readyOnDay;
  const ready = plan.lots.filter(({ lot }) => lot === id).map(({ readyOnDay }) => readyOnDay);
  const now = ready.some((day) => day === null) ? null : Math.max(...(ready as number[]));
  // Ready before today, then and now: nothing changed.
  if (now === null || before === null) return [];
  const days = Math.max(0, now) - Math.max(0, before - carrying.day);
  if (days === 0) return [];
  return [{ because: days < 0 ? "ripe sooner" : "ripe later", days: Math.abs(days) }];
}

function life({ carrying, plan, part, id }: AskedPart): ChangeReason[] {
  const before = carrying.previous.plan.lots[part]!.life.middle - carrying.day;
  const now = Math.min(...plan.lots.filter(({ lot }) => lot === id).map((one) => one.life.middle));
  const days = now - Math.max(0, before);
  if (Math.abs(days) < Math.max(worthNaming.days, worthNaming.share * before)) return [];
  return [{ because: days < 0 ? "ends sooner" : "keeps longer", days: Math.abs(days) }];
}

function amount({ carrying, part }: AskedPart): ChangeReason[] {
  const { portions, plannedPortions } = carrying.remaining[part]!;
  const more = portions - plannedPortions;
  return more === 0 ? [] : [{ because: more > 0 ? "more left" : "less left", portions: Math.abs(more) }];
}

/** What became of a lot otherwise than the earlier plan had it: moved or cut by hand, ripe or over sooner or later, more or less left. */
export function fateReasons(asked: AskedPart): ChangeReason[] {
  const { carrying, part } = asked;
  const cut = carrying.bound.happenings.some((one) => one.cutDay !== undefined && one.parts.includes(part));
  return [
    ...(movedByHand(asked) ? [{ because: "moved by hand" as const }] : []),
    ...(cut ? [{ because: "cut since" as const }] : []),
    ...ripeness(asked),
    ...amount(asked),
    ...life(asked),
  ];
}

/** Why a lot of which nothing else changed is eaten on other days: what came home is eaten on those that were its own, or what was to be eaten is not there. */
export function dayReasons(asked: AskedPart, { before, now }: LotChange["meals"]): ChangeReason[] {
  const { carrying, plan } = asked;
  const freed = before.filter(({ day, portions }) => {
    const still = now.find((meal) => meal.day === day)?.portions ?? 0;
    return still < portions;
  });
  const days = new Set(freed.map(({ day }) => day));
  const fresh = carrying.now.newLots.filter((id) =>
    plan.lots.some((part) => part.lot === id && part.eatOn.some(({ day }) => days.has(day))),
  );
  return [fresh.length > 0 ? { because: "others to eat", lots: fresh } : { because: "others gone" }];
}
