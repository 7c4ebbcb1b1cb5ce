import { dairy, type KindGuidance } from "@keepwright/catalogue";
import type { Apart } from "../answer/apart.js";
import type { AskedAnswer } from "../answer/askedAnswer.js";
import { plainText } from "../words/plainText.js";
import { spanWords } from "../words/spans.js";
import { namedCautionLines } from "./cautions.js";
import { commodityIn, type HandoutContext } from "./context.js";
import { seasonLines } from "./guidanceLines.js";
import { kindName } from "./kindNames.js";
import { kitchenWords } from "./ordinaryNames.js";
import { isCommonPractice, toldTasks } from "./preparation.js";

/** One part of an answer under a heading of its own. */
export interface AskSection {
  readonly part: "apart" | "ripe" | "going" | "discard" | "save" | "cautions" | "season";
  readonly heading: string;
  readonly lines: readonly string[];
}

/** A short answer about one kind, to be read from afar: where, how and until when first. */
export interface AskView {
  readonly where: string;
  readonly how: string;
  readonly until: string;
  /** What ends it, when it is ready, and what is to be set or done first. */
  readonly ends: readonly string[];
  readonly first: readonly string[];
  readonly sections: readonly AskSection[];
  /** Said once where anything with a star is common practice only. */
  readonly note: string | undefined;
}

/** What a kind is called, as a heading; and its other names. */
export function askNames(context: HandoutContext, id: string) {
  const names = commodityIn(context, id)?.names;
  const also = (context.speaker.tag.startsWith("es") ? names?.es.also : names?.en.also) ?? [];
  return {
    title: context.speaker.capital(kindName(context, id)),
    alsoCalled:
      also.length > 0
        ? context.speaker.say("item.names", { names: context.speaker.list(also.map(plainText)) })
        : undefined,
  };
}

function whereAndHow(context: HandoutContext, { belongs }: AskedAnswer) {
  const { say, capital } = context.speaker;
  const [stay, later] = belongs.stays;
  const place = kitchenWords(context, stay?.name ?? "");
  const wrap = say(`wrap.${stay?.wrap ?? "none"}`);
  if (!later) return { where: capital(place), how: capital(wrap) };
  const next = kitchenWords(context, later.name);
  const nextWrap = say(`wrap.${later.wrap}`);
  return {
    where: capital(say("ask.whereThen", { place, next })),
    how: capital(wrap === nextWrap ? wrap : say("ask.howThen", { wrap, nextWrap })),
  };
}

function endsLines(context: HandoutContext, { commodity, form, belongs }: AskedAnswer): string[] {
  const { speaker } = context;
  const ripens = form === "whole" && commodityIn(context, commodity)?.ripening !== undefined;
  const { readyOnDay } = belongs;
  const ready =
    readyOnDay === null
      ? speaker.say("ask.notReady")
      : readyOnDay === 0
        ? speaker.say("ask.readyNow")
        : speaker.say("ask.ready", { span: spanWords(speaker, readyOnDay, readyOnDay) });
  return [
    speaker.say("ask.ends", { ending: speaker.say(`ending.${belongs.life.endedBy}`) }),
    ...(ripens ? [ready] : []),
  ];
}

function apartLine(context: HandoutContext, answer: AskedAnswer, { because, kinds }: Apart): string {
  const { speaker } = context;
  const names = speaker.list(
    kinds.map((id) => (id === dairy ? speaker.say("ask.dairy") : kindName(context, id))),
  );
  const values = { names, name: kindName(context, answer.commodity) };
  const ripens =
    answer.ripeness === "unripe" && commodityIn(context, answer.commodity)?.ripening !== undefined;
  return speaker.capital(
    because === "gas from" && ripens
      ? speaker.say("ask.apart.gas from unripe", values)
      : speaker.say(`ask.apart.${because}`, values),
  );
}

function firstLines(context: HandoutContext, { commodity, preparation, belongs }: AskedAnswer): string[] {
  const { say, capital } = context.speaker;
  const settings = [...new Set(belongs.vents.map(({ setting }) => setting))];
  const star = (line: string, practice: boolean) => (practice ? say("ask.practice", { line }) : line);
  return [
    ...settings.map((setting) => say(`vent.${setting}`)),
    ...toldTasks(preparation).map((task) =>
      star(capital(say(`prepare.do.${task}`)), isCommonPractice(context, commodity, task)),
    ),
  ];
}

function toldSections(context: HandoutContext, guidance: KindGuidance | undefined): AskSection[] {
  if (!guidance) return [];
  const { speaker } = context;
  const { words, basis, season } = guidance;
  const heading = (name: "ripe" | "going" | "discard" | "save" | "season", evidence: { kind: string }) => {
    const line = speaker.say(`heading.${name}`);
    return evidence.kind === "common practice" ? speaker.say("ask.practice", { line }) : line;
  };
  return [
    { part: "ripe", heading: heading("ripe", basis.signs), lines: words.ripe },
    { part: "going", heading: heading("going", basis.signs), lines: words.going },
    { part: "discard", heading: heading("discard", basis.signs), lines: words.discard },
    { part: "save", heading: heading("save", basis.save), lines: [...words.save, ...words.trimmings] },
    { part: "season", heading: heading("season", season), lines: seasonLines(context, season) },
  ];
}

function cautionSection(
  context: HandoutContext,
  { commodity, cautions }: AskedAnswer,
  guidance: KindGuidance | undefined,
): AskSection {
  const { say, capital } = context.speaker;
  const names = capital(kindName(context, commodity));
  const cook = commodityIn(context, commodity)?.mustBeCooked
    ? [say("caution.must-be-cooked", { names })]
    : [];
  const lines = [
    ...cook,
    ...(guidance?.words.hazards ?? []),
    ...namedCautionLines(
      context,
      cautions.filter((name) => name !== "local"),
    ),
  ];
  return {
    part: "cautions",
    heading: say("heading.cautions"),
    lines: [...new Set([...lines, say("caution.local")])],
  };
}

/** The answer in words: where, how and until when first, then what to know about it, then what to take care of. */
export function askView(
  context: HandoutContext,
  answer: AskedAnswer,
  guidance: KindGuidance | undefined,
): AskView {
  const { speaker } = context;
  const { life } = answer.belongs;
  const apart = answer.apart.map((one) => apartLine(context, answer, one));
  const told = toldSections(context, guidance);
  const first = firstLines(context, answer);
  const star = speaker.say("ask.practice", { line: "" }).trim();
  const starred = [...first, ...told.map(({ heading }) => heading)].some((line) => line.endsWith(star));
  return {
    ...whereAndHow(context, answer),
    until: speaker.capital(spanWords(speaker, life.early, life.late)),
    ends: endsLines(context, answer),
    first,
    sections: [
      {
        part: "apart",
        heading: speaker.say("ask.heading.apart"),
        lines: apart.length > 0 ? apart : [speaker.say("ask.apart.none")],
      },
      ...told.filter(({ part }) => part !== "season"),
      cautionSection(context, answer, guidance),
      ...told.filter(({ part }) => part === "season"),
    ],
    note: starred ? speaker.say("prepare.practiceNote") : undefined,
  };
}
