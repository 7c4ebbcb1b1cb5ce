import type { Judgement, Plan } from "@keepwright/planner";
import { plainText } from "../words/plainText.js";
import { spanWords } from "../words/spans.js";
import type { HandoutContext } from "./context.js";
import { spanOf } from "./lives.js";
import { isForHours, isPast } from "./safeTime.js";

type Fate = Judgement["lots"][number]["here"];

/** The span of a lot that may be kept for hours only, or not at all; undefined for the rest. */
export function safetySpan(context: HandoutContext, plan: Plan, lot: string): string | undefined {
  const bound = plan.lots.find(
    (part) => part.lot === lot && (isPast(part) || isForHours(context, plan, part)),
  );
  return bound && spanOf(context, plan, bound);
}

/** A lot beside the plan, for a row with bars. */
export interface JudgedLotRow {
  readonly lot: string;
  readonly name: string;
  readonly here: LastingRow;
  readonly planned: LastingRow;
}

/** How long in words, and from when to when [d] where that can be drawn: not where it never gets ripe or safety binds. */
export interface LastingRow {
  readonly words: string;
  readonly early: number;
  readonly late: number;
}

/** How long a lot lasts on one side; where it never gets ripe, that; where some of it may be kept for hours or not at all, that. */
function lasting(context: HandoutContext, plan: Plan, lot: string, fate: Fate): string {
  const { speaker } = context;
  const safe = safetySpan(context, plan, lot);
  if (safe !== undefined) return safe;
  if (fate.readyOnDay === null) return speaker.say("judge.noRipening");
  return spanWords(speaker, fate.life.early, fate.life.late);
}

/** Every lot as it lies and in the plan, what is worst off first. */
export function judgedLotRows(
  context: HandoutContext,
  { lots, yours, plan }: Judgement,
  names: ReadonlyMap<string, string>,
): JudgedLotRow[] {
  const row = (side: Plan, lot: string, fate: Fate): LastingRow => {
    const { early, late } = fate.life;
    const drawn = fate.readyOnDay !== null && safetySpan(context, side, lot) === undefined;
    return {
      words: lasting(context, side, lot, fate),
      early: drawn ? early : 0,
      late: drawn ? late : 0,
    };
  };
  return [...lots]
    .sort((one, other) => other.worseBy.value - one.worseBy.value)
    .map(({ lot, here, planned }) => ({
      lot,
      name: context.speaker.capital(names.get(lot) ?? plainText(lot)),
      here: row(yours, lot, here),
      planned: row(plan, lot, planned),
    }));
}

/** Every lot in a line: how long it lasts as it lies and in the plan, what is worst off first. */
export const judgedLotLines = (
  context: HandoutContext,
  judgement: Judgement,
  names: ReadonlyMap<string, string>,
): string[] =>
  judgedLotRows(context, judgement, names).map(({ name, here, planned }) => {
    const values = { name, here: here.words, planned: planned.words };
    return context.speaker.say(values.here === values.planned ? "judge.lotSame" : "judge.lot", values);
  });
