import { type Followed, followed } from "../improve/followed.js";
import { gainOf, mean, span } from "../improve/gain.js";
import { planned } from "../improve/planned.js";
import { type SeededPlans, seededPlans } from "../improve/seededPlans.js";
import type { Lot } from "../problem/lot.js";
import type { Plan } from "../problem/plan.js";
import { type Basket, everything, isEmpty, requestFor, type Wished } from "./basket.js";
import { unitsOf } from "./boughtUnit.js";
import { type BuyingRequest, wishedFrom } from "./checkWished.js";
import { buyingRule } from "./declared.js";
import { type Fate, fateOfAll, fatesTogether, noFate, worstOf, worthOf } from "./fate.js";
import { settled } from "./settled.js";
import { whyCut } from "./whyCut.js";
import type { Thing, WorthBuying } from "./worthBuying.js";

/** A basket with a plan of its own for every seed; none where nothing is bought. */
interface Bought {
  readonly basket: Basket;
  readonly plans: readonly Followed[];
}

const fateOf = ({ plans }: Followed): Fate => fatesTogether(plans.map(fateOfAll));

const meanFate = (fates: readonly Fate[]): Fate => ({
  eaten: mean(fates.map(({ eaten }) => eaten)),
  wasted: mean(fates.map(({ wasted }) => wasted)),
  left: mean(fates.map(({ left }) => left)),
});

const meanWorth = ({ plans }: Bought): number => mean(plans.map((one) => worthOf(fateOf(one))));

function boughtWith(wished: Wished, basket: Basket, { seeds }: SeededPlans): Bought {
  if (isEmpty(basket)) return { basket, plans: seeds.map(() => followed([])) };
  const request = requestFor(wished, basket);
  return { basket, plans: seeds.map((seed) => followed([planned(request, seed)])) };
}

/** The basket that is worth most: cut and settled, unless the plans from the start say that everything wished is worth more. */
function bestOf(wished: Wished, base: SeededPlans): Bought {
  const all: Bought = { basket: everything(wished), plans: base.plans };
  const basket = settled(wished, { basket: all.basket, ...base.plans[0]!.plans[0]! });
  if (basket.every((units, wish) => units === all.basket[wish])) return all;
  const cut = boughtWith(wished, basket, base);
  const overflow = mean(all.plans.map(({ objective }) => objective.overflow));
  return overflow > 0 || meanWorth(cut) >= meanWorth(all) ? cut : all;
}

/** What is expected of one lot in a plan. */
function fateOfLot({ plans }: Followed, id: string): Fate {
  const [plan] = plans;
  const lot = plan?.prepared.problem.lots.findIndex((bound) => bound.lot.id === id) ?? -1;
  return plan && lot >= 0 ? worstOf(plan, lot, Number.POSITIVE_INFINITY) : noFate;
}

const amountOf = ({ grams, pieces }: Pick<Lot, "grams" | "pieces">) => ({
  grams,
  ...(pieces !== undefined && { pieces }),
});

/** The same of nothing: no pieces of what is counted. */
const none = ({ pieces }: Lot) => ({ grams: 0, ...(pieces !== undefined && { pieces: 0 }) });

function thingsOf(wished: Wished, base: SeededPlans, bought: Bought): Thing[] {
  const reasons = whyCut(wished, bought.basket, base.seeds[0]!);
  const told = (plans: readonly Followed[], id: string) => {
    const { eaten, wasted } = meanFate(plans.map((one) => fateOfLot(one, id)));
    return { eaten, wasted };
  };
  return wished.wishes.map((wish, at) => {
    const { lot, unit } = wish;
    const units = bought.basket[at]!;
    const reason = reasons.get(at);
    return {
      id: lot.id,
      commodity: lot.commodity,
      form: lot.form,
      tops: lot.tops,
      wished: amountOf(lot),
      buy: units === 0 ? none(lot) : amountOf(unitsOf(wish, units)),
      unit: amountOf(unit),
      ...(reason !== undefined && { cutBecause: reason }),
      ifAll: told(base.plans, lot.id),
      ifBought: told(bought.plans, lot.id),
    };
  });
}

const inGrams = ({ eaten, wasted, left }: Fate) => ({
  eaten: { value: eaten, unit: "g" as const },
  wasted: { value: wasted, unit: "g" as const },
  left: { value: left, unit: "g" as const },
});

/**
 * How much of a wished list can be kept in a kitchen and eaten by its people until the next shop, before it goes.
 *
 * A unit is worth buying when more of it is expected to be eaten before it is past its best than goes to waste, everything else counted; what is only
 * left over is not bought. Cut one by one in the plan as it stands, planned anew between, then one more and one less of everything doubtful is tried.
 * The amounts are a local best: no thing is given up for the sake of another. The plan is the one `planHaul` makes for what is bought.
 *
 * Pure and repeatable. Throws KitchenError, HaulError, HouseholdError, or RangeError for a date that is none.
 */
export function buyable(asked: BuyingRequest): WorthBuying {
  const wished = wishedFrom(asked);
  const base = seededPlans(wished.request);
  const bought = bestOf(wished, base);
  const first = base.plans[0]!.plans[0]!.plan;
  const plan: Plan | null = bought.plans[0]!.plans[0]?.plan ?? null;
  const noise = Math.max(base.noise, span(bought.plans.map(({ objective }) => objective.waste)));
  const { gain, plannerNoise, modelReach } = gainOf(base.plans, noise, bought.plans);
  return {
    version: 1,
    from: first.from,
    days: first.days,
    kitchen: first.kitchen,
    household: first.household,
    things: thingsOf(wished, base, bought),
    ifAll: inGrams(meanFate(base.plans.map(fateOf))),
    ifBought: inGrams(meanFate(bought.plans.map(fateOf))),
    wasteAvoided: gain,
    plannerNoise,
    modelReach,
    rule: {
      wastedAgainstEaten: buyingRule.wastedAgainstEaten,
      leastShareAdded: buyingRule.leastShareAdded,
      stepGrams: asked.stepGrams ?? buyingRule.stepGrams,
      seeds: [...base.seeds],
    },
    plan,
    cautions: first.cautions,
  };
}
