import type { Plan } from "@keepwright/planner";
import { roomWords } from "../words/amounts.js";
import { plainText } from "../words/plainText.js";
import { englishLanguage, type MessageKey } from "../words/speaker.js";
import type { HandoutContext } from "./context.js";

const isKey = (key: string): key is MessageKey & `caution.${string}` =>
  Object.hasOwn(englishLanguage.messages, key);

/** A caution by name: in our words; else as the catalogue's safety limit of that name says it; else its bare name. */
function cautionLine(context: HandoutContext, name: string): string {
  const key = `caution.${name}`;
  if (isKey(key)) return context.speaker.say(key as "caution.local");
  const limit = context.catalogue.safety.get(name);
  return limit ? plainText(limit.text) : context.speaker.say("caution.unnamed", { name: plainText(name) });
}

/** Cautions about something that can harm this very day, unlike those about what to look out for later. */
const pressing = [
  "no-refrigerator-for-cut-produce",
  "cut-produce",
  "cut-ready-to-eat",
  "refrigerator-too-warm",
];

/** The cautions of a plan that must be read before anything is put away; none where nothing is unsafe now. */
export const pressingCautionLines = (context: HandoutContext, plan: Plan): string[] =>
  plan.cautions.filter((name) => pressing.includes(name)).map((name) => cautionLine(context, name));

/** Cautions of a plan, what does not fit, and always the word to ask the local authority. */
export function cautionLines(
  context: HandoutContext,
  plan: Plan,
  places: ReadonlyMap<string, string>,
): string[] {
  const over = plan.overflow
    .filter(({ litres }) => litres > 0)
    .map(({ place, litres }) =>
      context.speaker.say("caution.overflow", {
        place: places.get(place) ?? plainText(place),
        litres: roomWords(context.speaker, context.units, litres),
      }),
    );
  const named = plan.cautions.map((name) => cautionLine(context, name));
  return [...new Set([...over, ...named, context.speaker.say("caution.local")])];
}
