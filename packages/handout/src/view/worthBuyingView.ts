import type { Kitchen, Reading, WorthBuying } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { massWords } from "../words/amounts.js";
import { fullDateWords } from "../words/dates.js";
import { amountWords, type CountedLots } from "./amount.js";
import { pressingLines } from "./cautions.js";
import type { HandoutContext } from "./context.js";
import { stateName } from "./kindNames.js";
import { type KitchenView, kitchenView } from "./kitchenView.js";
import { type PlanView, planView, summaryLines } from "./planView.js";
import { type ReadingView, readingView } from "./readingView.js";

type Thing = WorthBuying["things"][number];

/** How much of a wished list is worth buying, in rows and words. */
export interface WorthBuyingView {
  readonly title: string;
  readonly summary: readonly string[];
  readonly reading: ReadingView | undefined;
  readonly kitchen: KitchenView | undefined;
  readonly buy: readonly string[];
  /** What is not worth buying at all. */
  readonly leave: readonly string[];
  /** Waste avoided, and what it costs in eating. */
  readonly saves: readonly string[];
  readonly how: readonly string[];
  readonly cautions: readonly string[];
  /** The plan for what is bought; undefined where nothing is. */
  readonly plan: PlanView | undefined;
}

/** What it is told beside. */
export interface BuyingSurroundings {
  readonly kitchen: Kitchen;
  readonly kitchenAssumed?: boolean;
  readonly reading?: Reading;
}

function thingLine(context: HandoutContext, thing: Thing): string {
  const { speaker } = context;
  const told = thing.buy.grams > 0 ? thing.buy : thing.wished;
  const name = speaker.capital(stateName(context, { ...thing, ...told }));
  const amount = amountWords(context, thing.buy.grams, thing.buy.pieces);
  const wished = amountWords(context, thing.wished.grams, thing.wished.pieces);
  if (thing.cutBecause === undefined) return speaker.say("buying.all", { name, amount });
  return thing.buy.grams === 0
    ? speaker.say(`buying.none.${thing.cutBecause}`, { name, wished })
    : speaker.say(`buying.less.${thing.cutBecause}`, { name, amount, wished });
}

/** Smallest saving told as a figure of its own, and smallest difference in what is eaten that is told at all [g]: a bite. Declared, no source. */
const tooLittleToTell = 10;

function eatenLine({ speaker, units }: HandoutContext, { ifAll, ifBought }: WorthBuying): string {
  const less = ifAll.eaten.value - ifBought.eaten.value;
  const mass = massWords(speaker, units, Math.abs(less));
  if (Math.abs(less) < tooLittleToTell) return speaker.say("buying.eatSame");
  return less > 0 ? speaker.say("buying.eatLess", { mass }) : speaker.say("buying.eatMore", { mass });
}

function savesLines(context: HandoutContext, told: WorthBuying): string[] {
  const { speaker, units } = context;
  const mass = (grams: number): string => massWords(speaker, units, grams);
  const { ifAll, ifBought, wasteAvoided } = told;
  if (told.things.every(({ cutBecause }) => cutBecause === undefined))
    return [speaker.say("buying.allWorth", { waste: mass(ifAll.wasted.value) })];
  const { value, low, high } = wasteAvoided;
  const all = mass(ifAll.wasted.value);
  const figures = { all, bought: mass(ifBought.wasted.value), gain: mass(value), high: mass(high) };
  const saves = () =>
    low < tooLittleToTell
      ? speaker.say("buying.savesUpTo", figures)
      : speaker.say("buying.saves", { ...figures, low: mass(low) });
  // More may go to waste with the shorter list where it lets more be eaten at its best: that is no saving.
  return [value < 0 ? speaker.say("buying.noSaving", figures) : saves(), eatenLine(context, told)];
}

function howLines({ speaker, units }: HandoutContext, { rule, plannerNoise }: WorthBuying): string[] {
  const mass = (grams: number): string => massWords(speaker, units, grams);
  return [
    speaker.say("buying.how.rule", { step: mass(rule.stepGrams) }),
    speaker.say("buying.how.left"),
    speaker.say("buying.how.range", { noise: mass(Math.max(1, Math.ceil(plannerNoise))) }),
  ];
}

/** What is bought, to count it by in the plan. */
const countedLots = ({ things }: WorthBuying): CountedLots => new Map(things.map(({ id, buy }) => [id, buy]));

/** How much of a wished list is worth buying, as rows and words. */
export function worthBuyingView(
  context: HandoutContext,
  told: WorthBuying,
  around: BuyingSurroundings,
): WorthBuyingView {
  const { speaker } = context;
  const date = (day: number): string => fullDateWords(speaker, addDays(told.from, day));
  const assumed = around.kitchenAssumed === true;
  const bought = told.things.filter(({ buy }) => buy.grams > 0);
  return {
    title: speaker.say("buying.title", { from: date(0), to: date(told.days - 1) }),
    summary: summaryLines(context, told, assumed),
    reading: around.reading && readingView(context, around.reading),
    kitchen: assumed ? kitchenView(context, around.kitchen) : undefined,
    buy:
      bought.length === 0
        ? [speaker.say("buying.none.instead")]
        : bought.map((thing) => thingLine(context, thing)),
    leave: told.things.filter(({ buy }) => buy.grams === 0).map((thing) => thingLine(context, thing)),
    saves: savesLines(context, told),
    how: howLines(context, told),
    cautions: pressingLines(context, told.cautions),
    plan: told.plan ? planView(context, told.plan, { counted: countedLots(told) }) : undefined,
  };
}
