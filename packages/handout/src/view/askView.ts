import type { KindGuidance } from "@keepwright/catalogue";
import type { AskedAnswer } from "../answer/askedAnswer.js";
import { type AskFactsView, askFacts } from "./askFacts.js";
import { type AskSection, askTold } from "./askTold.js";
import type { HandoutContext } from "./context.js";
import { alsoCalled, kindName } from "./kindNames.js";

/** A short answer about one kind, to be read from afar: where, how and until when first. */
export interface AskView extends AskFactsView {
  readonly sections: readonly AskSection[];
  /** Said once where anything with a star is common practice only. */
  readonly note: string | undefined;
}

/** What a kind is called, as a heading; and its other names, not more than asked for, a plural beside its singular least of all. */
export function askNames(context: HandoutContext, id: string, most = Number.POSITIVE_INFINITY) {
  const all = alsoCalled(context, id);
  const plural = (name: string) => all.some((one) => name === `${one}s` || name === `${one}es`);
  const also = (all.length > most ? all.filter((name) => !plural(name)) : all).slice(0, most);
  return {
    title: context.speaker.capital(kindName(context, id)),
    alsoCalled:
      also.length > 0 ? context.speaker.say("item.names", { names: context.speaker.list(also) }) : undefined,
  };
}

/** What the stars in some lines mean; nothing where there is none. */
export function starNote({ speaker }: HandoutContext, lines: readonly string[]): string | undefined {
  const star = speaker.say("ask.practice", { line: "" }).trim();
  return lines.some((line) => line.endsWith(star)) ? speaker.say("prepare.practiceNote") : undefined;
}

/** The answer in words: where, how and until when first, then what to know about it, then what to take care of. */
export function askView(
  context: HandoutContext,
  answer: AskedAnswer,
  guidance: KindGuidance | undefined,
): AskView {
  const facts = askFacts(context, answer);
  const { sections } = askTold(context, answer, guidance);
  const note = starNote(context, [...facts.first, ...sections.map(({ heading }) => heading)]);
  return { ...facts, sections, note };
}
