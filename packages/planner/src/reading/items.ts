import type { Catalogue } from "@keepwright/catalogue";
import { timeWords } from "./ageWords.js";
import type { Clause } from "./clauses.js";
import { type Element, isType, statesOf } from "./elements.js";
import { withLaterDays } from "./laterParts.js";
import { type DraftLot, draftLots } from "./lots.js";
import { gravest, greenIsUnsafe, type NotKept, notKept, reasonOf } from "./notKept.js";
import { saidIn } from "./parts.js";
import { askBelow, type NotUnderstood, type Question, type UnderstoodLot } from "./reading.js";
import type { Token } from "./tokens.js";

type Item = UnderstoodLot | NotUnderstood;

const longestTyped = 2000;
/** How sure a kind is that most people mean by a word for several; below `askBelow`, so it is asked about. */
const sureOfUsual = 0.45;

interface Span {
  readonly typed: string;
  readonly from: number;
  readonly to: number;
}

/** Is a bracket open in what was typed that the next character closes? */
const closesBracket = (typed: string, next: string | undefined) =>
  (next === ")" && typed.lastIndexOf("(") > typed.lastIndexOf(")")) ||
  (next === "]" && typed.lastIndexOf("[") > typed.lastIndexOf("]"));

/** What the elements cover in the text, small words at either end left out. */
function spanOf(text: string, tokens: readonly Token[], elements: readonly Element[]): Span {
  const telling = elements.filter((element) => element.type !== "connective" && element.type !== "separator");
  const used = telling.length > 0 ? telling : elements;
  const from = tokens[Math.min(...used.map((element) => element.first))]!.from;
  const end = tokens[Math.max(...used.map((element) => element.next)) - 1]!.to;
  const to = closesBracket(text.slice(from, end), text[end]) ? end + 1 : end;
  return { typed: text.slice(from, to), from, to };
}

const question = (span: Span, ...questions: Question[]): NotUnderstood => ({
  kind: "question",
  ...span,
  questions,
});

/** "apple pudding": the name may be only the first half of another. */
function runsOn(clause: Clause): boolean {
  const next = clause.after[0];
  return clause.name!.name.singular && next?.type === "unknown" && next.first === clause.name!.next;
}

/** Does a day it is wanted for stand before the name? It may be meant for all that follows. */
const leads = ({ before }: Clause): boolean => statesOf(before).some(({ wanted }) => wanted !== undefined);

/** Why a clause is not kept as fresh produce: by its name, by what is said of it, or by the colour of potatoes. */
function whyNotKept(clause: Clause): NotKept | undefined {
  const kinds = clause.name?.name.kinds ?? [];
  const all = [...clause.before, ...clause.after];
  const reasons = all.filter(isType("not fresh")).map(({ mark }) => reasonOf(mark, kinds));
  const green = greenIsUnsafe(kinds) && all.some((word) => word.type === "state" && word.change.byColour);
  const named = clause.name?.name.notKept;
  return gravest([...reasons, green ? "green potatoes" : undefined, named]);
}

/** The question with the caution; its kinds are offered only where the rest may still be planned. */
const unsafeOrOther = (span: Span, reason: NotKept, kinds: readonly string[], word: string): NotUnderstood =>
  question(span, {
    ask: "unsafe or other",
    reason,
    word,
    candidates: notKept[reason].restMayBePlanned ? kinds : [],
  });

/** Elements that follow one another directly, together. */
function neighbours(elements: readonly Element[]): Element[][] {
  const runs: Element[][] = [];
  for (const element of elements) {
    const last = runs.at(-1);
    if (last && last.at(-1)!.next === element.first) last.push(element);
    else runs.push([element]);
  }
  return runs;
}

/** A clause without a name: words not understood, or an amount of nothing. */
function orphanItem(text: string, tokens: readonly Token[], clause: Clause): NotUnderstood {
  const span = spanOf(text, tokens, clause.before);
  const unknown = clause.before.filter((element) => element.type === "unknown");
  const reason = whyNotKept(clause);
  if (reason && unknown.length === 0) return unsafeOrOther(span, reason, [], span.typed);
  if (unknown.length === 0)
    return question(span, { ask: "which commodity", word: span.typed, candidates: [] });
  return question(span, strangeWords(spanOf(text, tokens, unknown).typed, wordsOf(tokens, unknown)));
}

/** A day that is not clear: of what is cut it is asked how long ago that was, which may not be taken wrongly. */
function whenAsked({ asksWhen, asksAge, lot }: DraftLot, { typed }: Span): Question[] {
  if (asksAge) return [{ ask: "how old", word: typed, ...asksAge }];
  if (!asksWhen) return [];
  return [{ ask: lot.form === "cut" ? "how old" : "when wanted", word: typed }];
}

/** Words that are not understood: what they are, or how long ago something was. */
export function strangeWords(typed: string, words: readonly Token[]): Question {
  const ofTime = words.some(({ folded: word }) => timeWords.has(word));
  return { ask: ofTime ? "how old" : "what is this", word: typed };
}

/** The tokens that some elements that follow one another are made of. */
const wordsOf = (tokens: readonly Token[], run: readonly Element[]): readonly Token[] =>
  tokens.slice(run[0]!.first, run.at(-1)!.next);

/** The items that a clause gives: lots, or a question in their place. */
export function itemsOf(
  catalogue: Catalogue,
  text: string,
  tokens: readonly Token[],
  clause: Clause,
): Item[] {
  if (!clause.name) return [orphanItem(text, tokens, clause)];
  const all = [...clause.before, clause.name, ...clause.after];
  const span = spanOf(text, tokens, all);
  const { kinds, misspelt, usual } = clause.name.name;
  const oneOfSeveral = kinds.length > 1 && usual !== undefined;
  const sure = oneOfSeveral ? sureOfUsual : clause.name.name.sure;
  const commodity = catalogue.commodities.get(oneOfSeveral ? usual : kinds.length === 1 ? kinds[0]! : "");
  const word = spanOf(text, tokens, [clause.name]).typed;
  const reason = whyNotKept(clause);
  if (reason) return [unsafeOrOther(span, reason, kinds, reason === "no produce" ? word : span.typed)];
  if (clause.before.some(isType("negation")))
    return [question(span, { ask: "how much", reason: "zero", word: span.typed })];
  if (clause.name.name.noKind) return [question(span, { ask: "what is this", word })];
  if (runsOn(clause))
    return [question(span, { ask: "which commodity", word: span.typed, candidates: kinds })];
  if (!commodity || clause.name.name.unsure)
    return [question(span, { ask: "which commodity", word, candidates: kinds })];
  const unknown = all.filter((element) => element.type === "unknown" || element.type === "not fresh");
  const noNumber = unknown.find((element) => tokens[element.first]!.kind === "number");
  if (noNumber)
    return [
      question(span, {
        ask: "how much",
        reason: "contradictory",
        word: spanOf(text, tokens, [noNumber]).typed,
      }),
    ];
  const drafts = draftLots(commodity, withLaterDays(saidIn(clause), leads(clause)));
  if (!Array.isArray(drafts))
    return [question(span, drafts.reason === "unknown unit" ? drafts : { ...drafts, word: span.typed })];
  const strange = neighbours(unknown).map(
    (run): Question => strangeWords(spanOf(text, tokens, run).typed, wordsOf(tokens, run)),
  );
  return drafts.map((draft, order): UnderstoodLot => {
    const sureOfKind = sure * (unknown.length > 0 ? 0.8 : 1);
    const vague = draft.sureOfAmount < askBelow;
    return {
      kind: "lot",
      ...span,
      lot: { ...draft.lot, typed: span.typed.slice(0, longestTyped) },
      sure: { commodity: sureOfKind, amount: draft.sureOfAmount },
      assumed: [...draft.assumed, ...(misspelt ? (["spelling"] as const) : [])],
      questions: [
        ...strange,
        ...(oneOfSeveral ? [{ ask: "which commodity", word, candidates: kinds } as const] : []),
        ...(draft.asks && order === 0
          ? [{ ask: "how much", reason: draft.asks, word: span.typed } as const]
          : []),
        ...whenAsked(draft, span),
        ...(vague && !draft.asks ? [{ ask: "how much", reason: "no amount", word } as const] : []),
      ],
    };
  });
}
