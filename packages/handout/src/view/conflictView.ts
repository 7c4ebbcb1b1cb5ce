import {
  type Conflict,
  type Judgement,
  type LotBeside,
  nextToNothing,
  type PlannedLot,
} from "@keepwright/planner";
import { massWords } from "../words/amounts.js";
import { dayNumberWords } from "../words/dates.js";
import { plainText } from "../words/plainText.js";
import { spanWords } from "../words/spans.js";
import type { HandoutContext } from "./context.js";
import { endingWords } from "./endingWords.js";
import { safetySpan } from "./judgedLots.js";
import { lotNames, placeNames } from "./names.js";
import { harmLines, togetherLines, worstAloneLines } from "./neighbourLines.js";

/** What goes worst with one lot: the line, then why and what the plan does instead. */
export interface ConflictView {
  readonly lot: string;
  readonly line: string;
  readonly why: readonly string[];
}

type Names = ReadonlyMap<string, string>;

const effectName = (context: HandoutContext, name: string): string =>
  context.speaker.say(`item.effect.${name}` as "item.effect.flavour loss");

const effectWords = (context: HandoutContext, { effects }: Conflict): string =>
  context.speaker.list(effects.map((name) => effectName(context, name)));

const giverWords = ({ speaker }: HandoutContext, { smellsOf }: Conflict, names: Names): string =>
  speaker.list(smellsOf.map((lot) => names.get(lot) ?? plainText(lot)));

const about = ({ speaker }: HandoutContext, days: number): string => spanWords(speaker, days, days);

function lifeLine(context: HandoutContext, judgement: Judgement, conflict: Conflict, name: string): string {
  const { speaker } = context;
  const { lot, life, plannedLife, endedBy } = conflict;
  const values = {
    name,
    span: safetySpan(context, judgement.yours, lot) ?? about(context, life.value),
    planned: safetySpan(context, judgement.plan, lot) ?? about(context, plannedLife.value),
    ending: endingWords(
      context,
      judgement.yours.lots.find((part) => part.lot === lot),
      endedBy,
    ),
  };
  return speaker.say(values.span === values.planned ? "judge.worst.lifeLittle" : "judge.worst.life", values);
}

function headLine(
  context: HandoutContext,
  judgement: Judgement,
  conflict: Conflict,
  beside: LotBeside,
  names: Names,
): string {
  const { speaker } = context;
  const name = speaker.capital(names.get(conflict.lot) ?? plainText(conflict.lot));
  switch (conflict.cause) {
    case "life":
      return lifeLine(context, judgement, conflict, name);
    case "not ripe":
      return speaker.say("judge.worst.not ripe", {
        name,
        date: dayNumberWords(speaker, judgement.plan.from, beside.planned.readyOnDay ?? 0),
      });
    case "eating":
      return speaker.say("judge.worst.eating", { name, effects: effectWords(context, conflict) });
    case "smell":
      return speaker.say("judge.worst.smell", { name, givers: giverWords(context, conflict, names) });
  }
}

/** Who is to blame for the days lost; nothing where the words would tell no difference. */
function blameLines(context: HandoutContext, conflict: Conflict, names: Names): string[] {
  const { speaker } = context;
  if (conflict.cause !== "life") return [];
  if (conflict.neighbours.length === 0) return [speaker.say("judge.why.place")];
  return [
    ...harmLines(context, conflict, conflict.life.value, names),
    ...worstAloneLines(context, conflict, names),
    ...togetherLines(context, conflict, conflict.life.value),
  ];
}

function wasteLines({ speaker, units }: HandoutContext, { here, planned }: LotBeside): string[] {
  // A few grams are told as next to nothing: nobody knows them better.
  const [now, then] = [here.wasted.grams, planned.wasted.grams].map((grams) =>
    grams < nextToNothing ? speaker.say("beside.range.little") : massWords(speaker, units, grams),
  );
  const values = { here: now!, planned: then! };
  return here.wasted.grams < nextToNothing || now === then ? [] : [speaker.say("judge.why.waste", values)];
}

/** Where the plan puts a part of it. */
function insteadLine(
  { speaker }: HandoutContext,
  part: PlannedLot,
  places: Names,
  name: string | undefined,
): string {
  const [first, second] = part.stays;
  const place = (id: string): string => places.get(id) ?? plainText(id);
  const values = { place: place(first!.place), wrap: speaker.say(`wrap.${first!.wrap}`) };
  if (!second)
    return name === undefined
      ? speaker.say("judge.instead", values)
      : speaker.say("judge.insteadPart", { ...values, name });
  const later = { ...values, next: place(second.place), nextWrap: speaker.say(`wrap.${second.wrap}`) };
  return name === undefined
    ? speaker.say("judge.insteadRipe", later)
    : speaker.say("judge.insteadRipePart", { ...later, name });
}

function insteadLines(context: HandoutContext, { plan }: Judgement, lot: string): string[] {
  const parts = plan.lots.filter((part) => part.lot === lot);
  const names = lotNames(context, plan);
  const places = placeNames(context, plan);
  return parts.map((part) =>
    insteadLine(
      context,
      part,
      places,
      parts.length > 1 ? (names.get(part.id) ?? plainText(part.id)) : undefined,
    ),
  );
}

/** The worst conflicts in words, worst first. */
export function conflictViews(context: HandoutContext, judgement: Judgement, names: Names): ConflictView[] {
  const { speaker } = context;
  return judgement.conflicts.map((conflict) => {
    const beside = judgement.lots.find(({ lot }) => lot === conflict.lot)!;
    const { cause, effects, smellsOf, lot } = conflict;
    return {
      lot,
      line: headLine(context, judgement, conflict, beside, names),
      why: [
        ...blameLines(context, conflict, names),
        ...(effects.length > 0 && cause !== "eating"
          ? [speaker.say("judge.why.eating", { effects: effectWords(context, conflict) })]
          : []),
        ...(smellsOf.length > 0 && cause !== "smell"
          ? [speaker.say("judge.why.smell", { givers: giverWords(context, conflict, names) })]
          : []),
        ...wasteLines(context, beside),
        ...insteadLines(context, judgement, lot),
      ],
    };
  });
}
