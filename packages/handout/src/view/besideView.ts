import {
  type BesideDraws,
  type Judgement,
  nextToNothing,
  type OneMove,
  type Plan,
} from "@keepwright/planner";
import { massWords } from "../words/amounts.js";
import { plainText } from "../words/plainText.js";
import type { HandoutContext } from "./context.js";
import { type JudgedLotRow, judgedLotRows } from "./judgedLots.js";
import { placeNames, wholeLotNames } from "./names.js";

/** Waste on one side: in words, and as figures to draw a bar by [g]. */
export interface WasteRow {
  readonly grams: string;
  readonly portions: string;
  readonly low: number;
  /** Expected. */
  readonly middle: number;
  readonly high: number;
}

/** How things lie and the plan, side by side and in few words. */
export interface BesideView {
  readonly yours: WasteRow;
  readonly plan: WasteRow;
  /** Both in one sentence, to be told when they change. */
  readonly told: string;
  /** Where the ranges come from; undefined until they are known. */
  readonly how: string | undefined;
  /** Every lot, what is worst off first. */
  readonly lots: readonly JudgedLotRow[];
}

interface Range {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

function gramsWords({ speaker, units }: HandoutContext, { low, middle, high }: Range): string {
  const mass = (grams: number): string => massWords(speaker, units, grams);
  if (Math.max(high, middle) < nextToNothing) return speaker.say("beside.range.little");
  if (low === high) return speaker.say("beside.range.about", { value: mass(middle) });
  if (low < nextToNothing) return speaker.say("beside.range.upTo", { high: mass(high) });
  return mass(low) === mass(high)
    ? speaker.say("beside.range.about", { value: mass(high) })
    : speaker.say("beside.range", { low: mass(low), high: mass(high) });
}

function portionsWords({ speaker }: HandoutContext, range: Range, perGram: number): string {
  const low = Math.floor(range.low * perGram);
  const high = Math.round(range.high * perGram);
  if (high < 1) return speaker.say("beside.portions.little");
  if (low < 1) return speaker.say("beside.portions.upTo", { count: high });
  return low === high
    ? speaker.say("beside.portions.about", { count: high })
    : speaker.say("beside.portions", { low, high });
}

function wasteRow(
  context: HandoutContext,
  wasted: Judgement["wasted"]["yours"],
  drawn: { readonly low: number; readonly high: number } | undefined,
): WasteRow {
  const middle = wasted.grams;
  const range = { low: drawn?.low ?? middle, middle, high: drawn?.high ?? middle };
  const perGram = middle > 0 ? wasted.portions / middle : 0;
  return {
    ...range,
    grams: gramsWords(context, range),
    portions: portionsWords(context, range, perGram),
  };
}

/** How things lie beside the plan, with ranges once the draws are there. */
export function besideView(
  context: HandoutContext,
  judgement: Judgement,
  draws: BesideDraws | undefined,
): BesideView {
  const { speaker } = context;
  const yours = wasteRow(context, judgement.wasted.yours, draws?.yours);
  const plan = wasteRow(context, judgement.wasted.plan, draws?.plan);
  const neither = [yours, plan].every(({ middle, high }) => Math.max(middle, high) < nextToNothing);
  return {
    yours,
    plan,
    told: neither
      ? speaker.say("beside.told.neither")
      : speaker.say("beside.told", { yours: yours.grams, plan: plan.grams }),
    how: draws && speaker.say("beside.how", { count: draws.count }),
    lots: judgedLotRows(context, judgement, wholeLotNames(context, judgement.yours)),
  };
}

function lotMoveLine(context: HandoutContext, plan: Plan, lot: string): string {
  const { speaker } = context;
  const name = wholeLotNames(context, plan).get(lot) ?? plainText(lot);
  const parts = plan.lots.filter((part) => part.lot === lot);
  if (parts.length > 1) return speaker.say("beside.move.lotParts", { name });
  const [first, second] = parts[0]!.stays;
  const places = placeNames(context, plan);
  const place = (id: string): string => places.get(id) ?? plainText(id);
  const values = { name, place: place(first!.place), wrap: speaker.say(`wrap.${first!.wrap}`) };
  return second
    ? speaker.say("beside.move.lotThen", {
        ...values,
        next: place(second.place),
        nextWrap: speaker.say(`wrap.${second.wrap}`),
      })
    : speaker.say("beside.move.lot", values);
}

function ventMoveLine(context: HandoutContext, plan: Plan, id: string): string {
  const { setting } = plan.vents.find(({ place }) => place === id)!;
  const place = placeNames(context, plan).get(id) ?? plainText(id);
  return context.speaker.say(`beside.move.vent.${setting}`, { place });
}

/** The one move that helps most: what it is, and what it saves once that is drawn. */
export function oneMoveLines(
  context: HandoutContext,
  { plan }: Judgement,
  move: OneMove | undefined,
  draws: BesideDraws | undefined,
): string[] {
  const { speaker, units } = context;
  if (!move) return [speaker.say("beside.move.none")];
  const line =
    move.move === "lot" ? lotMoveLine(context, plan, move.lot) : ventMoveLine(context, plan, move.place);
  const saved = draws?.savedByMove;
  if (!saved) return [line];
  const mass = (grams: number): string => massWords(speaker, units, grams);
  if (move.saved.waste < nextToNothing || saved.high < nextToNothing)
    return [line, speaker.say("beside.gain.little")];
  return [
    line,
    saved.low < nextToNothing
      ? speaker.say("beside.gain.upTo", { high: mass(saved.high) })
      : speaker.say("beside.gain", { low: mass(saved.low), high: mass(saved.high) }),
  ];
}
