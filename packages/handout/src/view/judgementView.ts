import type { Judgement, Plan } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { roomWords } from "../words/amounts.js";
import { fullDateWords } from "../words/dates.js";
import { plainText } from "../words/plainText.js";
import { cautionLines, throwAwayLines } from "./cautions.js";
import { type ConflictView, conflictViews } from "./conflictView.js";
import type { HandoutContext } from "./context.js";
import { costLines } from "./judgedCost.js";
import { judgedLotLines } from "./judgedLots.js";
import { type KitchenView, kitchenView } from "./kitchenView.js";
import { type MoveView, moveViews } from "./moves.js";
import { lotNames, placeNames, wholeLotNames } from "./names.js";
import { type PlaceView, placeViews } from "./places.js";
import { type PlanSurroundings, summaryLines } from "./planView.js";
import { type ReadingView, readingView } from "./readingView.js";

/** How things lie now beside the plan, in rows and words. */
export interface JudgementView {
  readonly title: string;
  readonly summary: readonly string[];
  readonly reading: ReadingView | undefined;
  readonly kitchen: KitchenView | undefined;
  readonly throwAway: readonly string[];
  /** What is unsafe as it lies: to be read first. */
  readonly unsafe: readonly string[];
  readonly notTold: readonly string[];
  readonly places: readonly PlaceView[];
  readonly moves: readonly MoveView[];
  /** Waste and the rest of the cost beside the plan's. */
  readonly cost: readonly string[];
  readonly conflicts: readonly ConflictView[];
  readonly lots: readonly string[];
  readonly alsoSeen: readonly string[];
  readonly cautions: readonly string[];
}

type Names = ReadonlyMap<string, string>;

function unsafeLines(
  { speaker }: HandoutContext,
  judgement: Judgement,
  names: Names,
  places: Names,
): string[] {
  return judgement.findings.flatMap((one) => {
    if (one.finding === "cut uncovered")
      return [speaker.say("judge.unsafe.cut uncovered", { name: named(speaker, names, one.lot) })];
    if (
      one.finding !== "cut out of refrigerator" &&
      one.finding !== "cut too warm" &&
      one.finding !== "greens in light"
    )
      return [];
    const place = places.get(one.place) ?? plainText(one.place);
    return [speaker.say(`judge.unsafe.${one.finding}`, { name: named(speaker, names, one.lot), place })];
  });
}

const named = (speaker: HandoutContext["speaker"], names: Names, lot: string): string =>
  speaker.capital(names.get(lot) ?? plainText(lot));

function alsoSeenLines(
  { speaker, units }: HandoutContext,
  { findings }: Judgement,
  names: Names,
  places: Names,
): string[] {
  return findings.flatMap((one) => {
    if (one.finding === "overfull") {
      const litres = roomWords(speaker, units, one.litresOver.value);
      return [
        speaker.say("caution.overflow", { place: places.get(one.place) ?? plainText(one.place), litres }),
      ];
    }
    if (one.finding === "unsuitable wrap") {
      const values = { name: named(speaker, names, one.lot), wrap: speaker.say(`wrap.${one.wrap}`) };
      return [speaker.say("judge.seen.unsuitable wrap", values)];
    }
    return one.finding === "never moves"
      ? [speaker.say("judge.seen.never moves", { name: named(speaker, names, one.lot) })]
      : [];
  });
}

function notToldLines({ speaker }: HandoutContext, { notMentioned }: Judgement, names: Names, places: Names) {
  const lots = notMentioned.lots.map((lot) => names.get(lot) ?? plainText(lot));
  const vents = notMentioned.vents.map(({ place, setting }) =>
    speaker.say(`judge.ventAt.${setting}`, { place: places.get(place) ?? plainText(place) }),
  );
  return [
    ...(lots.length > 0 ? [speaker.say("judge.notTold.lots", { names: speaker.list(lots) })] : []),
    ...(vents.length > 0 ? [speaker.say("judge.notTold.vents", { vents: speaker.list(vents) })] : []),
  ];
}

/** The places as they are, with how each vent is; nothing is told to be set. */
function placesAsTheyAre(context: HandoutContext, plan: Plan, around: PlanSurroundings): PlaceView[] {
  const bare = placeViews(context, { ...plan, vents: [] }, lotNames(context, plan), around.counted);
  return bare.map((view) => {
    const vent = plan.vents.find(({ place }) => place === view.place);
    if (!vent) return view;
    const setting = context.speaker.say(`judge.vent.${vent.setting}`);
    return { ...view, setting, line: `${view.line} ${setting}` };
  });
}

/** Turns a judgement into rows and words. Computes nothing about produce. */
export function judgementView(
  context: HandoutContext,
  judgement: Judgement,
  around: PlanSurroundings = {},
): JudgementView {
  const { yours } = judgement;
  const names = wholeLotNames(context, yours);
  const parts = lotNames(context, yours);
  const places = placeNames(context, yours);
  const date = (day: number) => fullDateWords(context.speaker, addDays(yours.from, day));
  return {
    title: context.speaker.say("judge.title", { from: date(0), to: date(yours.days - 1) }),
    summary: summaryLines(context, yours, around.kitchenAssumed === true),
    reading: around.reading && readingView(context, around.reading),
    kitchen: around.kitchen && kitchenView(context, around.kitchen),
    throwAway: throwAwayLines(context, yours, parts),
    unsafe: unsafeLines(context, judgement, names, places),
    notTold: notToldLines(context, judgement, names, places),
    places: placesAsTheyAre(context, yours, around),
    moves: moveViews(context, yours, parts, places),
    cost: costLines(context, judgement),
    conflicts: conflictViews(context, judgement, names),
    lots: judgedLotLines(context, judgement, names),
    alsoSeen: alsoSeenLines(context, judgement, names, places),
    // Where there is too little room has been said among what was seen.
    cautions: cautionLines(context, { ...yours, overflow: [] }, places, parts),
  };
}
