import type { Plan } from "@keepwright/planner";
import { roomWords } from "../words/amounts.js";
import { plainText } from "../words/plainText.js";
import { englishLanguage, type MessageKey } from "../words/speaker.js";
import type { HandoutContext } from "./context.js";
import { isPast } from "./safeTime.js";

type Names = ReadonlyMap<string, string>;

/** Those that speak of the plan's own amounts, and are made beside the named ones. */
const withValues = ["safe-time-past", "overflow", "unnamed", "must-be-cooked"];

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
  "safe-time-past",
  "wild-mushrooms",
  "no-refrigerator-for-cut-produce",
  "cut-produce",
  "cut-ready-to-eat",
  "refrigerator-too-warm",
];

/** What may no longer be eaten, by its names, in a sentence; nothing where there is none. */
export function throwAwayLines({ speaker }: HandoutContext, plan: Plan, names: Names): string[] {
  const past = plan.lots.filter(isPast).map(({ id }) => names.get(id) ?? plainText(id));
  return past.length > 0 ? [speaker.say("caution.safe-time-past", { names: speaker.list(past) })] : [];
}

/** Cautions by name as sentences, without those that speak of a plan's own amounts. */
export const namedCautionLines = (context: HandoutContext, cautions: readonly string[]): string[] =>
  cautions.filter((name) => !withValues.includes(name)).map((name) => cautionLine(context, name));

/** Those among some cautions by name that are pressing, without what speaks of a plan's own amounts. */
export const pressingLines = (context: HandoutContext, cautions: readonly string[]): string[] =>
  namedCautionLines(
    context,
    cautions.filter((name) => pressing.includes(name)),
  );

/** The cautions of a plan that must be read before anything is put away; none where nothing is unsafe now. */
export const pressingCautionLines = (context: HandoutContext, plan: Plan, names: Names): string[] => [
  ...throwAwayLines(context, plan, names),
  ...pressingLines(context, plan.cautions),
];

/** Kinds of a plan that are not to be eaten raw, in a sentence; nothing where there are none. */
function cookLines({ speaker, catalogue }: HandoutContext, plan: Plan, names: Names): string[] {
  const raw = plan.lots.filter(({ commodity }) => catalogue.commodities.get(commodity)?.mustBeCooked);
  const told = [...new Set(raw.map(({ id }) => names.get(id) ?? plainText(id)))];
  return told.length > 0
    ? [speaker.say("caution.must-be-cooked", { names: speaker.capital(speaker.list(told)) })]
    : [];
}

/** Cautions of a plan, what does not fit, and always the word to ask the local authority. */
export function cautionLines(context: HandoutContext, plan: Plan, places: Names, names: Names): string[] {
  const over = plan.overflow
    .filter(({ litres }) => litres > 0)
    .map(({ place, litres }) =>
      context.speaker.say("caution.overflow", {
        place: places.get(place) ?? plainText(place),
        litres: roomWords(context.speaker, context.units, litres),
      }),
    );
  const named = namedCautionLines(context, plan.cautions);
  return [
    ...new Set([
      ...throwAwayLines(context, plan, names),
      ...cookLines(context, plan, names),
      ...over,
      ...named,
      context.speaker.say("caution.local"),
    ]),
  ];
}
