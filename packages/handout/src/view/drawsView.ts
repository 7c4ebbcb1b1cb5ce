import type { Plan, PlanDraws } from "@keepwright/planner";
import { massWords, percentWords } from "../words/amounts.js";
import { isCold } from "./coldPlaces.js";
import type { HandoutContext } from "./context.js";

/** A plan carried out many times over, in lines. */
export interface DrawsView {
  readonly how: string;
  readonly waste: readonly string[];
  /** The chance of each thing, the least first. */
  readonly lots: readonly string[];
  readonly note: string;
}

/** Eaten in time this often, a lot is told among the rest. */
const nearlyAlways = 0.99;
/** Not ripe on its day more often than this is told. */
const oftenUnripe = 0.1;

type Figure = PlanDraws["waste"];

/** A figure over the draws in words, none of them below nothing. */
function figureWords({ speaker, units }: HandoutContext, { mean, standardError, median, low, high }: Figure) {
  const grams = (value: number) => massWords(speaker, units, Math.abs(value));
  return {
    mean: grams(mean),
    error: grams(standardError),
    median: grams(median),
    low: grams(low),
    high: grams(high),
  };
}

function savedLine(context: HandoutContext, saved: Figure): string {
  const { speaker } = context;
  const words = figureWords(context, saved);
  if (saved.mean < 0) return speaker.say("draws.lost", words);
  return speaker.say(saved.low < 0 ? "draws.savedOrLost" : "draws.saved", words);
}

function wasteLines(context: HandoutContext, plan: Plan, draws: PlanDraws): string[] {
  const { speaker } = context;
  const own = speaker.say("draws.waste", figureWords(context, draws.waste));
  if (!plan.places.some(isCold)) return [own];
  const { waste, saved, planBetter, planWorse } = draws.unsorted;
  return [
    own,
    speaker.say("draws.unsorted", figureWords(context, waste)),
    savedLine(context, saved),
    speaker.say("draws.better", {
      better: percentWords(speaker, 100 * planBetter),
      worse: percentWords(speaker, 100 * planWorse),
    }),
  ];
}

function lotLines(
  { speaker }: HandoutContext,
  { lots }: PlanDraws,
  names: ReadonlyMap<string, string>,
): string[] {
  const named = lots
    .map((lot) => ({ ...lot, name: names.get(lot.id) ?? lot.id }))
    .sort((one, other) => one.inTime - other.inTime);
  const percent = (share: number) => percentWords(speaker, 100 * share);
  const doubtful = named
    .filter(({ inTime }) => inTime < nearlyAlways)
    .map(({ name, inTime, claimed }) =>
      speaker.say("draws.lot", {
        name: speaker.capital(name),
        share: percent(inTime),
        claimed: percent(claimed),
      }),
    );
  const sure = named.filter(({ inTime }) => inTime >= nearlyAlways).map(({ name }) => name);
  const unripe = named
    .filter((lot) => lot.unripe > oftenUnripe)
    .map(({ name, unripe: share }) =>
      speaker.say("draws.unripe", { name: speaker.capital(name), share: percent(share) }),
    );
  const rest =
    sure.length > 0
      ? [speaker.say("draws.rest", { share: percent(nearlyAlways), names: speaker.list(sure) })]
      : [];
  return [...doubtful, ...rest, ...unripe];
}

/** What the draws of a plan say; undefined where none were asked for. */
export function drawsView(
  context: HandoutContext,
  plan: Plan,
  names: ReadonlyMap<string, string>,
): DrawsView | undefined {
  const { draws } = plan;
  if (!draws) return undefined;
  return {
    // The seed is a name, not a quantity: its digits stand as they were given.
    how: context.speaker.say("draws.how", { count: draws.count, seed: String(draws.seed) }),
    waste: wasteLines(context, plan, draws),
    lots: lotLines(context, draws, names),
    note: context.speaker.say("draws.note"),
  };
}
