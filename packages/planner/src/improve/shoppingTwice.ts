import type { Followed } from "./followed.js";
import type { Change } from "./improvement.js";
import type { Planned } from "./planned.js";
import type { CheckedRequest } from "./triedChange.js";
import { middleDay } from "./twice/middleDay.js";
import { boughtSecond, shareOf } from "./twice/secondShop.js";
import { shoppedTwice } from "./twice/shoppedTwice.js";

/** Shopping twice, and how it is planned with a seed. */
export interface TwiceTried {
  readonly change: Change;
  readonly withSeed: (seed: number) => Followed;
}

/**
 * The same haul on two days: what is better eaten fresh in the later half comes home in the middle of the planned days. Nothing where there is no such
 * day, where one of the two shops would be for nothing, or where some of it has been at home since an earlier plan.
 *
 * @param base the plan with one shop, from which it is known what would be eaten late
 */
export function shoppingTwice(request: CheckedRequest, base: Planned): TwiceTried[] {
  const day = middleDay(request.household);
  const atHome = request.haul.lots.some(({ carried }) => carried !== undefined);
  if (day === undefined || atHome) return [];
  const { lots } = base.prepared.problem;
  const later = boughtSecond(base, day);
  const some = (portions: (index: number) => number) =>
    lots.flatMap((lot) => (portions(lot.index) > 0 ? [shareOf(lot, portions(lot.index))] : []));
  const second = some((index) => later[index]!);
  const first = some((index) => lots[index]!.portions - later[index]!);
  if (first.length === 0 || second.length === 0) return [];
  const told = second.map(({ id, commodity, grams, pieces, form, tops }) => ({
    id,
    commodity,
    grams,
    ...(pieces !== undefined && { pieces }),
    form,
    tops,
  }));
  return [
    {
      change: { name: "shopping twice", day, lots: told },
      withSeed: (seed) => shoppedTwice(request, { day, first, second }, seed),
    },
  ];
}
