import type { Kitchen, Plan, Reading } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { dayWords, fullDateWords } from "../words/dates.js";
import type { CountedLots } from "./amount.js";
import { cautionLines, pressingCautionLines, throwAwayLines } from "./cautions.js";
import type { HandoutContext } from "./context.js";
import { type DrawsView, drawsView } from "./drawsView.js";
import { type EatingView, eatingView } from "./eating.js";
import { type KitchenView, kitchenView } from "./kitchenView.js";
import { type LifeView, lifeViews } from "./lives.js";
import { type MoveView, moveViews } from "./moves.js";
import { lotNames, placeNames } from "./names.js";
import { kitchenWords } from "./ordinaryNames.js";
import { type PlaceView, placeViews } from "./places.js";
import { type PreparationView, preparationViews } from "./preparation.js";
import { proofLines } from "./proofView.js";
import { type ReadingView, readingView } from "./readingView.js";
import { wasteLine } from "./waste.js";
import { type WishView, wishViews } from "./wishes.js";

/** A plan in rows and words, for any screen, page or terminal. */
export interface PlanView {
  readonly title: string;
  /** Who it is for, which kitchen, when nobody is at home. */
  readonly summary: readonly string[];
  readonly reading: ReadingView | undefined;
  readonly kitchen: KitchenView | undefined;
  readonly places: readonly PlaceView[];
  readonly preparation: readonly PreparationView[];
  readonly moves: readonly MoveView[];
  /** What is wanted for a day; empty where nothing is. */
  readonly wishes: readonly WishView[];
  readonly eating: EatingView;
  readonly lives: readonly LifeView[];
  readonly waste: string;
  /** What becomes of it over many draws, where they were made. */
  readonly draws: DrawsView | undefined;
  /** How far it can be from the best there is, where that was asked for. */
  readonly proof: readonly string[] | undefined;
  readonly cautions: readonly string[];
  /** Those of the cautions that must be read before anything is put away. */
  readonly pressing: readonly string[];
  /** What may no longer be eaten: first of the pressing cautions, alone. */
  readonly throwAway: readonly string[];
}

/** What belongs beside the plan when it is known. */
export interface PlanSurroundings {
  readonly kitchen?: Kitchen;
  /** True when no kitchen was given and an ordinary one was taken. */
  readonly kitchenAssumed?: boolean;
  readonly reading?: Reading;
  readonly counted?: CountedLots;
}

/** Who it is worked out for, in which kitchen, and when nobody is at home. */
export function summaryLines(
  context: HandoutContext,
  plan: Pick<Plan, "household" | "kitchen" | "from" | "days">,
  assumed: boolean,
): string[] {
  const { speaker } = context;
  const { people, portionsPerPersonPerDay, daysAway } = plan.household;
  const kitchen = kitchenWords(context, plan.kitchen);
  const away = daysAway
    .filter((day) => day < plan.days)
    .map((day) => dayWords(speaker, addDays(plan.from, day)));
  return [
    speaker.say("plan.household", { count: people, portions: portionsPerPersonPerDay }),
    speaker.say(assumed ? "plan.ordinaryKitchen" : "plan.kitchen", { kitchen }),
    ...(away.length > 0 ? [speaker.say("plan.away", { dates: speaker.list(away) })] : []),
  ];
}

/** The parts of a plan's view, each made when it is first asked for and then kept. */
export type PlanParts = { readonly [part in keyof PlanView]: () => PlanView[part] };

/** A plan in rows and words piece by piece, for a screen that is drawn piece by piece. */
export function planParts(context: HandoutContext, plan: Plan, around: PlanSurroundings = {}): PlanParts {
  const names = once(() => lotNames(context, plan));
  const places = once(() => placeNames(context, plan));
  const date = (day: number) => fullDateWords(context.speaker, addDays(plan.from, day));
  return {
    title: once(() => context.speaker.say("plan.title", { from: date(0), to: date(plan.days - 1) })),
    summary: once(() => summaryLines(context, plan, around.kitchenAssumed === true)),
    reading: once(() => around.reading && readingView(context, around.reading)),
    kitchen: once(() => around.kitchen && kitchenView(context, around.kitchen)),
    places: once(() => placeViews(context, plan, names(), around.counted)),
    preparation: once(() => preparationViews(context, plan, names())),
    moves: once(() => moveViews(context, plan, names(), places())),
    wishes: once(() => wishViews(context, plan, names())),
    eating: once(() => eatingView(context, plan, names())),
    lives: once(() => lifeViews(context, plan, names())),
    waste: once(() => wasteLine(context, plan)),
    draws: once(() => drawsView(context, plan, names())),
    proof: once(() => proofLines(context, plan)),
    cautions: once(() => cautionLines(context, plan, places(), names())),
    pressing: once(() => pressingCautionLines(context, plan, names())),
    throwAway: once(() => throwAwayLines(context, plan, names())),
  };
}

function once<Made>(make: () => Made): () => Made {
  let made: { readonly value: Made } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Turns a plan into rows and words. Computes nothing about produce: every amount comes from the plan or the catalogue. */
export function planView(context: HandoutContext, plan: Plan, around: PlanSurroundings = {}): PlanView {
  const parts = Object.entries(planParts(context, plan, around));
  return Object.fromEntries(parts.map(([part, make]) => [part, make()])) as unknown as PlanView;
}
