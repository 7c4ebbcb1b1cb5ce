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

/** How long a lot lasts on one side; where it never gets ripe, that; where some of it may be kept for hours or not at all, that. */
function lasting(context: HandoutContext, plan: Plan, lot: string, fate: Fate): string {
  const { speaker } = context;
  const safe = safetySpan(context, plan, lot);
  if (safe !== undefined) return safe;
  if (fate.readyOnDay === null) return speaker.say("judge.noRipening");
  return spanWords(speaker, fate.life.early, fate.life.late);
}

/** Every lot in a line: how long it lasts as it lies and in the plan, what is worst off first. */
export function judgedLotLines(
  context: HandoutContext,
  { lots, yours, plan }: Judgement,
  names: ReadonlyMap<string, string>,
): string[] {
  const { speaker } = context;
  return [...lots]
    .sort((one, other) => other.worseBy.value - one.worseBy.value)
    .map(({ lot, here, planned }) => {
      const values = {
        name: speaker.capital(names.get(lot) ?? plainText(lot)),
        here: lasting(context, yours, lot, here),
        planned: lasting(context, plan, lot, planned),
      };
      return speaker.say(values.here === values.planned ? "judge.lotSame" : "judge.lot", values);
    });
}
