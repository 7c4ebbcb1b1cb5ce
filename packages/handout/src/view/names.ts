import { stemKey } from "@keepwright/catalogue";
import type { Plan, PlannedLot } from "@keepwright/planner";
import { dayWords } from "../words/dates.js";
import { commodityIn, type HandoutContext } from "./context.js";
import { stateName } from "./kindNames.js";
import { kitchenWords } from "./ordinaryNames.js";

type Stage = "unripe" | "turning" | "nearly ripe" | "ripe" | "very ripe";

/** The word for its ripeness on arrival; undefined where ripeness does not change what is done with it. */
function stageOf(context: HandoutContext, lot: PlannedLot): Stage | undefined {
  if (!commodityIn(context, lot.commodity)?.ripening || lot.form === "cut") return undefined;
  if (lot.ripeness < 0.25) return "unripe";
  if (lot.ripeness < 0.75) return "turning";
  // Ripe is what is ready to eat, and nothing else: plans wait for ripeness 1.
  if (lot.ripeness < 1) return "nearly ripe";
  return lot.ripeness < 1.4 ? "ripe" : "very ripe";
}

/** Leaves that are twisted off first are gone by the time the lot is spoken of. */
const keepsTops = (lot: PlannedLot): boolean => lot.tops && !lot.preparation.includes("twist off leaves");

const kindKey = (lot: PlannedLot): string =>
  `${lot.commodity}|${lot.form === "cut" ? "cut" : keepsTops(lot)}`;

/** What it is called, whatever its number or case; empty where it is called as its kind is. */
const wordKey = ({ apart }: PlannedLot): string => (apart?.word === undefined ? "" : stemKey(apart.word));

/** The lot as it came home, whatever plans it went through since. */
const originOf = ({ apart, lot }: PlannedLot): string => apart?.origin ?? lot;

const alike = <Key>(lots: readonly PlannedLot[], lot: PlannedLot, by: (one: PlannedLot) => Key) =>
  lots.filter((other) => by(other) === by(lot));

/** Lots that have the same name so far: of one kind and state, and called by the same word. */
const namesakes = (plan: Pick<Plan, "lots">, lot: PlannedLot): PlannedLot[] =>
  alike(alike(plan.lots, lot, kindKey), lot, wordKey);

/** Its kind, or the person's own word where that sets it apart from others of the kind. */
function bareName(context: HandoutContext, plan: Pick<Plan, "lots">, lot: PlannedLot): string {
  const others = alike(plan.lots, lot, kindKey).length > namesakes(plan, lot).length;
  return stateName(context, { ...lot, tops: keepsTops(lot) }, others ? lot.apart?.word : undefined);
}

/** How it came; of what an earlier plan left, which may have changed since, how it was on the first day of this one. */
function ripenessApart({ speaker }: HandoutContext, plan: Plan, lot: PlannedLot, stage: Stage): string {
  return lot.wholeLife === undefined
    ? speaker.say(`lot.came.${stage}`)
    : speaker.say(`lot.was.${stage}`, { date: dayWords(speaker, plan.from) });
}

/** What sets it apart from its namesakes, in this order: its ripeness, its day, which lot it is, which part of that. */
function whatSetsApart(
  context: HandoutContext,
  plan: Plan,
  lot: PlannedLot,
  parts: "parts" | "whole",
): string[] {
  const { speaker } = context;
  const stage = (one: PlannedLot) => stageOf(context, one);
  const since = ({ apart }: PlannedLot) => apart?.since ?? plan.from;
  const called = namesakes(plan, lot);
  const asRipe = alike(called, lot, stage);
  const sameDay = alike(asRipe, lot, since);
  const lots = [...new Set(sameDay.map(originOf))];
  const same = alike(sameDay, lot, originOf);
  const own = stage(lot);
  return [
    ...(own && asRipe.length < called.length ? [ripenessApart(context, plan, lot, own)] : []),
    ...(sameDay.length < asRipe.length
      ? [speaker.say("lot.of", { date: dayWords(speaker, since(lot)) })]
      : []),
    ...(lots.length > 1
      ? [speaker.say("lot.which", { number: lots.indexOf(originOf(lot)) + 1, all: lots.length })]
      : []),
    ...(same.length > 1 && parts === "parts"
      ? [speaker.say("lot.part", { part: same.indexOf(lot) + 1, parts: same.length })]
      : []),
  ];
}

function nameApart(context: HandoutContext, plan: Plan, lot: PlannedLot, parts: "parts" | "whole"): string {
  const { speaker } = context;
  const name = bareName(context, plan, lot);
  const [first, ...more] = whatSetsApart(context, plan, lot, parts);
  if (first === undefined) return name;
  const told = more.reduce((before, next) => speaker.say("lot.apartBoth", { first: before, next }), first);
  return speaker.say("lot.apart", { name, told });
}

/**
 * Names of every lot of a plan by its id, as within a sentence. Lots of a kind are told apart by the person's own word for them, then by
 * their ripeness, then by their day; only what is of one lot is numbered as its parts.
 */
export const lotNames = (context: HandoutContext, plan: Plan): ReadonlyMap<string, string> =>
  new Map(plan.lots.map((lot) => [lot.id, nameApart(context, plan, lot, "parts")]));

/**
 * Names of lots that have something in common, by their ids: what has one name but for what sets it apart is named once where all of it is
 * among them, and a lot without its parts where all of those are.
 */
export function namesTogether(
  context: HandoutContext,
  plan: Plan,
  names: ReadonlyMap<string, string>,
  ids: readonly string[],
): string[] {
  const among = (lots: readonly PlannedLot[]) => lots.length > 1 && lots.every(({ id }) => ids.includes(id));
  const together = (lots: readonly PlannedLot[]) => ({
    ...lots[0]!,
    grams: lots.reduce((sum, { grams }) => sum + grams, 0),
  });
  const told = plan.lots
    .filter(({ id }) => ids.includes(id))
    .map((lot) => {
      const called = namesakes(plan, lot);
      if (among(called)) return bareName(context, plan, together(called));
      const parts = alike(called, lot, originOf);
      return among(parts) ? nameApart(context, plan, lot, "whole") : (names.get(lot.id) ?? lot.id);
    });
  return [...new Set(told)];
}

/** Names of whole lots by their ids: of lots in parts, without the number of the part. */
export function wholeLotNames(context: HandoutContext, plan: Plan): ReadonlyMap<string, string> {
  const whole = new Map<string, PlannedLot>();
  for (const part of plan.lots) {
    const before = whole.get(part.lot);
    whole.set(part.lot, before ? { ...before, grams: before.grams + part.grams } : { ...part, id: part.lot });
  }
  return lotNames(context, { ...plan, lots: [...whole.values()] });
}

/** The name with how ripe it is now, for the moment of putting away. */
export function nameOnArrival(context: HandoutContext, plan: Plan, lot: PlannedLot, name: string): string {
  const stage = stageOf(context, lot);
  const told = namesakes(plan, lot).some((other) => stageOf(context, other) !== stage);
  return stage === undefined || stage === "turning" || told
    ? name
    : context.speaker.say(`lot.now.${stage}`, { name });
}

/** Names of a plan's places by their ids. */
export const placeNames = (context: HandoutContext, plan: Plan): ReadonlyMap<string, string> =>
  new Map(plan.places.map(({ place, name }) => [place, kitchenWords(context, name)]));
