import { eatingEffects } from "@keepwright/catalogue";
import type { AnsweredPlace, ItemAnswer } from "../answer/itemAnswer.js";
import { percentWords, temperatureWords } from "../words/amounts.js";
import { forReaders } from "../words/forReaders.js";
import { spanWords } from "../words/spans.js";
import { namedCautionLines } from "./cautions.js";
import type { HandoutContext } from "./context.js";
import { endingWords } from "./endingWords.js";
import { guidanceLines } from "./guidanceLines.js";
import { alsoCalled, kindName } from "./kindNames.js";
import { kitchenWords } from "./ordinaryNames.js";
import { isCommonPractice, preparationLine, toldTasks } from "./preparation.js";
import { endsLine } from "./reasons.js";
import { figureSourceLines } from "./sourceLines.js";

/** An answer about one kind, in rows and words. */
export interface ItemView {
  readonly title: string;
  readonly alsoCalled: string | undefined;
  /** Where it belongs in the kitchen asked about. */
  readonly belongs: readonly string[];
  readonly elsewhere: readonly string[];
  /** The conditions, the life and what ends it. */
  readonly conditions: string;
  readonly span: string;
  readonly why: readonly string[];
  readonly figures: readonly string[];
  readonly preparation: readonly string[];
  readonly sources: readonly string[];
  /** Said once below the preparation where any of it is common practice only. */
  readonly preparationNote: string | undefined;
  readonly cautions: readonly string[];
  /** How to tell that it is ready, that it is going, that it must go; how to save it, and when it is in season. */
  readonly ripe: readonly string[];
  readonly going: readonly string[];
  readonly discard: readonly string[];
  readonly save: readonly string[];
  readonly season: readonly string[];
}

function placeValues(context: HandoutContext, commodity: string, { stays, life }: AnsweredPlace) {
  const { speaker } = context;
  const [first, next] = stays;
  return {
    place: kitchenWords(context, first?.name ?? ""),
    wrap: speaker.say(`wrap.${first?.wrap ?? "none"}`),
    next: kitchenWords(context, next?.name ?? ""),
    nextWrap: speaker.say(`wrap.${next?.wrap ?? "none"}`),
    span: spanWords(speaker, life.early, life.late),
    ending: endingWords(context, { commodity, form: "whole" }, life.endedBy),
  };
}

type Effect = (typeof eatingEffects)[number];
const isEffect = (name: string): name is Effect => (eatingEffects as readonly string[]).includes(name);

/** What spoils the eating there, in words; effects a newer catalogue may know are left out. */
export const effectWords = (
  { speaker }: HandoutContext,
  { effects }: Pick<AnsweredPlace, "effects">,
): string => speaker.list(effects.filter(isEffect).map((effect) => speaker.say(`item.effect.${effect}`)));

function elsewhereLine(context: HandoutContext, commodity: string, place: AnsweredPlace): string {
  const values = placeValues(context, commodity, place);
  if (place.readyOnDay === null) return context.speaker.say("item.elsewhereNotRipe", values);
  const effects = effectWords(context, place);
  return effects
    ? context.speaker.say("item.elsewhereSpoilt", { ...values, effects })
    : context.speaker.say("item.elsewhere", values);
}

function belongsLines(context: HandoutContext, answer: ItemAnswer): string[] {
  const { speaker } = context;
  const key = answer.belongs.stays.length > 1 ? "item.belongsRipe" : "item.belongs";
  const effects = effectWords(context, answer.belongs);
  return [
    speaker.say(key, placeValues(context, answer.commodity, answer.belongs)),
    ...(effects ? [speaker.say("item.belongsSpoilt", { effects })] : []),
    ...answer.belongs.vents.map(({ setting }) => speaker.say(`vent.${setting}`)),
  ];
}

/** Shares below this are not worth a line [1]. */
const smallShare = 0.1;

function whyLines(context: HandoutContext, answer: ItemAnswer): string[] {
  const { speaker } = context;
  const { commodity, conditions, life } = answer;
  const air = {
    temperature: conditions.temperature.value,
    relativeHumidity: conditions.relativeHumidity.value,
    ethylene: conditions.ethylene.value,
  };
  const ends = endsLine(context, {
    commodity,
    endedBy: life.endedBy,
    form: "whole",
    conditions: air,
    ripeness: conditions.ripeness.value,
  });
  const others = answer.shares.filter(({ ending, share }) => ending !== life.endedBy && share >= smallShare);
  return [
    ends,
    ...others.map(({ ending, share }) =>
      speaker.say("item.share", {
        ending: speaker.capital(endingWords(context, { commodity, form: "whole" }, ending)),
        percent: percentWords(speaker, 100 * share),
      }),
    ),
  ];
}

function recommendedLine({ speaker, units }: HandoutContext, { recommended }: ItemAnswer): string {
  const { temperature, relativeHumidity } = recommended;
  const [low, high] = [temperature.low, temperature.high].map((celsius) =>
    temperatureWords(speaker, units, celsius),
  );
  const humidity = {
    lowHumidity: percentWords(speaker, relativeHumidity.low),
    highHumidity: percentWords(speaker, relativeHumidity.high),
  };
  return low === high
    ? speaker.say("item.recommendedOne", { low: low ?? "", ...humidity })
    : speaker.say("item.recommended", { low: low ?? "", high: high ?? "", ...humidity });
}

function figureLines(context: HandoutContext, answer: ItemAnswer): string[] {
  const { speaker } = context;
  const twoFigures = (value: number) => speaker.number(value, { maximumSignificantDigits: 2 });
  return [
    recommendedLine(context, answer),
    speaker.say("item.respiration", { value: twoFigures(answer.respiration.value) }),
    speaker.say("item.ethylene", { value: twoFigures(answer.ethyleneProduction.value) }),
  ];
}

/** The conditions as they were asked about, not rounded as if they were measured in a kitchen. */
function conditionsLine(
  { speaker, units }: HandoutContext,
  { conditions }: ItemAnswer,
  span: string,
): string {
  const level = speaker.number(conditions.ethylene.value, { maximumSignificantDigits: 3 });
  return speaker.say("item.conditions", {
    temperature: temperatureWords(speaker, units, conditions.temperature.value, 1),
    humidity: percentWords(speaker, conditions.relativeHumidity.value),
    ethylene: speaker.say("amount.ethylene", { value: level }),
    span,
  });
}

export function itemView(context: HandoutContext, answer: ItemAnswer): ItemView {
  const { speaker } = context;
  const { life } = answer;
  const also = alsoCalled(context, answer.commodity);
  const span = spanWords(speaker, life.early, life.late);
  const title = speaker.capital(kindName(context, answer.commodity));
  return {
    title,
    alsoCalled: also.length > 0 ? speaker.say("item.names", { names: speaker.list(also) }) : undefined,
    belongs: belongsLines(context, answer),
    elsewhere: answer.places.map((place) => elsewhereLine(context, answer.commodity, place)),
    conditions: conditionsLine(context, answer, span),
    span,
    why: whyLines(context, answer),
    figures: figureLines(context, answer),
    preparation: preparationLines(context, answer, title),
    ...guidanceLines(context, answer.guidance),
    sources: figureSourceLines(context, answer.sources).map(({ text }) => text),
    preparationNote: practiceNote(context, answer),
    cautions: [
      ...new Set([
        ...(answer.guidance?.words.hazards ?? []).map((line) => forReaders(speaker.tag, line)),
        ...namedCautionLines(context, answer.cautions),
        speaker.say("caution.local"),
      ]),
    ],
  };
}

function preparationLines(context: HandoutContext, answer: ItemAnswer, title: string): string[] {
  return toldTasks(answer.preparation).flatMap((task) =>
    preparationLine(context, answer.commodity, task, title),
  );
}

function practiceNote(context: HandoutContext, { commodity, preparation }: ItemAnswer): string | undefined {
  const any = toldTasks(preparation).some((task) => isCommonPractice(context, commodity, task));
  return any ? context.speaker.say("prepare.practiceNote") : undefined;
}
