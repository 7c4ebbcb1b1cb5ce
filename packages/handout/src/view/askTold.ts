import { dairy, type KindGuidance } from "@keepwright/catalogue";
import type { Apart } from "../answer/apart.js";
import { type AskedBeforehand, isOfCut } from "../answer/askedAnswer.js";
import { guidanceForReaders } from "../words/forReaders.js";
import { namedCautionLines, pressingLines } from "./cautions.js";
import { commodityIn, type HandoutContext } from "./context.js";
import { seasonLines } from "./guidanceLines.js";
import { kindName } from "./kindNames.js";

/** One part of an answer under a heading of its own. */
export interface AskSection {
  readonly part: "apart" | "ripe" | "going" | "discard" | "save" | "cautions" | "season";
  readonly heading: string;
  readonly lines: readonly string[];
}

/** What is told of a kind before anything is worked out. */
export interface AskTold {
  readonly sections: readonly AskSection[];
  /** Of the cautions, those to be read before anything else. */
  readonly pressing: readonly string[];
  /** Of the cautions, what of the kind itself can hurt. */
  readonly hazards: readonly string[];
}

function apartLine(context: HandoutContext, answer: AskedBeforehand, { because, kinds }: Apart): string {
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

/** That a kind is not eaten raw; nothing where it may be. */
function cookLines(context: HandoutContext, { commodity }: AskedBeforehand): string[] {
  const names = context.speaker.capital(kindName(context, commodity));
  const raw = commodityIn(context, commodity)?.mustBeCooked !== undefined;
  return raw ? [context.speaker.say("caution.must-be-cooked", { names })] : [];
}

/** What can harm this very day in the state asked about. What matters only once it is cut does not press while it is whole. */
function pressingOf(context: HandoutContext, known: AskedBeforehand): string[] {
  const limited =
    known.form === "cut" || commodityIn(context, known.commodity)?.controlledAsSold !== undefined;
  const named = limited ? known.cautions : known.cautions.filter((name) => !isOfCut(name));
  return [...new Set([...cookLines(context, known), ...pressingLines(context, named)])];
}

function cautionSection(
  context: HandoutContext,
  known: AskedBeforehand,
  guidance: KindGuidance | undefined,
): AskSection {
  const { say } = context.speaker;
  const named = known.cautions.filter((name) => name !== "local");
  const own = [...cookLines(context, known), ...(guidance?.words.hazards ?? [])];
  const lines = [...own, ...namedCautionLines(context, named)];
  return {
    part: "cautions",
    heading: say("heading.cautions"),
    lines: [...new Set([...lines, say("caution.local")])],
  };
}

/** What needs no working out, in words. */
export function askTold(
  context: HandoutContext,
  known: AskedBeforehand,
  written: KindGuidance | undefined,
): AskTold {
  const { speaker } = context;
  const guidance = written && guidanceForReaders(speaker.tag, written);
  const apart = known.apart.map((one) => apartLine(context, known, one));
  const told = toldSections(context, guidance);
  return {
    sections: [
      {
        part: "apart",
        heading: speaker.say("ask.heading.apart"),
        lines: apart.length > 0 ? apart : [speaker.say("ask.apart.none")],
      },
      ...told.filter(({ part }) => part !== "season"),
      cautionSection(context, known, guidance),
      ...told.filter(({ part }) => part === "season"),
    ],
    pressing: pressingOf(context, known),
    hazards: guidance?.words.hazards ?? [],
  };
}
