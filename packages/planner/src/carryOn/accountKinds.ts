import { type Catalogue, folded } from "@keepwright/catalogue";
import type { FindingCode } from "../problem/findingCode.js";
import { shownValue } from "../problem/schemaFindings.js";
import { readHaul } from "../reading/readHaul.js";
import type { NotUnderstood, UnderstoodLot } from "../reading/reading.js";
import type { HappenedContext } from "./accountRead.js";
import { unclearDay } from "./dayTold.js";
import { Unreadable } from "./unreadable.js";

/** Lines that can be read, for whoever wrote one that cannot. */
export const examples =
  "Write lines such as: ate 2 apples; threw out the spinach; avocados ripe; bought 1 lb peas; moved the kale to the shelf.";

const notKnown = (code: FindingCode, phrase: string, why: string): Unreadable =>
  new Unreadable(code, `${shownValue(phrase)} ${why}`, examples, { phrase: shownValue(phrase) });

/** Whether a kind has a safe time as it is sold, or once it is cut. */
export function limited({ commodities }: Catalogue, kind: string): { asSold: boolean; cut: boolean } {
  const { cut, controlledAsSold } = commodities.get(kind)!;
  const asSold = controlledAsSold !== undefined;
  return { asSold, cut: asSold || cut.timeTemperatureControl.value };
}

/** Most words of a phrase that may mean several kinds; a longer account is asked about. */
const mostDoubts = 20;

/** What may be one of several kinds: the words, where they stand, and the kinds. */
interface Doubt {
  readonly item: UnderstoodLot | NotUnderstood;
  readonly word: string;
  readonly candidates: readonly string[];
}

function doubtsOf(items: readonly (UnderstoodLot | NotUnderstood)[]): Doubt[] {
  return items.flatMap((item): Doubt[] => {
    const which = item.questions.find((one) => one.ask === "which commodity");
    if (which?.ask !== "which commodity" || which.candidates.length === 0) return [];
    return [{ item, word: which.word, candidates: which.candidates }];
  });
}

function whichIsMeant(
  catalogue: Catalogue,
  { word, candidates }: Pick<Doubt, "word" | "candidates">,
): Unreadable {
  const names = candidates.map((id) => catalogue.commodities.get(id)!.names.en.many);
  return new Unreadable(
    "account which kind",
    `${shownValue(word)} may be more than one kind`,
    `Write which one is meant: ${names.join(", ")}.`,
    { phrase: shownValue(word), kinds: [...candidates] },
  );
}

/** The phrase with each word that may mean several kinds put as the only one of them that is in the plan. Throws Unreadable where that is none or more than one. */
function withKindsOfPlan(context: HappenedContext, phrase: string): string {
  const { catalogue, lots, on } = context;
  const kinds = new Set(lots.map(({ commodity }) => commodity));
  let put = phrase;
  for (let times = 0; times < mostDoubts; times++) {
    const [doubt] = doubtsOf(readHaul(put, catalogue, on).items).filter(
      ({ word }) => ![...kinds].some((id) => catalogue.commodities.get(id)?.names.en.many === word),
    );
    if (!doubt) break;
    const { item, word, candidates } = doubt;
    const here = candidates.filter((id) => kinds.has(id));
    if (here.length > 1) throw whichIsMeant(catalogue, { word, candidates: here });
    if (here.length === 0) throw notInPlan(catalogue, candidates, item.typed, kinds);
    const { many } = catalogue.commodities.get(here[0]!)!.names.en;
    const at = put.indexOf(word, item.from);
    if (at < 0) throw whichIsMeant(catalogue, { word, candidates });
    put = put.slice(0, at) + many + put.slice(at + word.length);
  }
  return put;
}

/** The lots that a phrase names, each of its words understood. Of the plan: a word for several kinds means the one that is in it. */
export function understood(
  context: HappenedContext,
  written: string,
  of: "the plan" | "what came home" = "the plan",
): UnderstoodLot[] {
  const { catalogue, on } = context;
  const phrase = of === "the plan" ? withKindsOfPlan(context, written) : written;
  const { items } = readHaul(phrase, catalogue, on);
  const lots = items.filter((item): item is UnderstoodLot => item.kind === "lot");
  if (items.some(({ questions }) => questions.some(({ ask }) => ask === "how old"))) throw unclearDay(phrase);
  const [doubt] = doubtsOf(items.filter(({ kind }) => kind === "question"));
  if (doubt) throw whichIsMeant(catalogue, doubt);
  if (lots.length === 0)
    throw notKnown("account kind not known", phrase, "names no kind of produce that is known");
  // No part of a line is passed over: what stands beside a kind that is known counts too.
  const other = items.find((item) => item.kind !== "lot");
  if (other) throw notKnown("account words not understood", other.typed, "is not understood");
  for (const { questions } of lots) {
    const strange = questions.find(({ ask }) => ask === "what is this");
    if (strange && "word" in strange)
      throw notKnown("account words not understood", strange.word, "is not understood");
  }
  return lots;
}

/** The kind of the plan that an item names. */
export function kindInPlan({ catalogue, lots }: HappenedContext, { lot, typed }: UnderstoodLot): string {
  const kinds = new Set(lots.map(({ commodity }) => commodity));
  if (kinds.has(lot.commodity)) return lot.commodity;
  throw notInPlan(catalogue, [lot.commodity], typed, kinds);
}

/** What is not in the plan may have come home since; but what may have been cut already is asked its day, or its safe time would begin anew. */
function notInPlan(
  catalogue: Catalogue,
  meant: readonly string[],
  typed: string,
  kinds: ReadonlySet<string>,
): Unreadable {
  const names = [...kinds].map((id) => catalogue.commodities.get(id)?.names.en.many ?? id);
  const values = { phrase: shownValue(typed), kinds: [...kinds] };
  const value = `${shownValue(typed)} is not in the plan`;
  return meant.some((kind) => limited(catalogue, kind).cut)
    ? new Unreadable(
        "account cut kind not in plan",
        value,
        `Name one of: ${names.join(", ")}; or say of what is left when it was cut, as in: found 200 g melon, cut 3 days ago.`,
        values,
      )
    : new Unreadable(
        "account kind not in plan",
        value,
        `Name one of: ${names.join(", ")}; or write what came home as “bought …”.`,
        values,
      );
}

/** The lot that was typed in these very words. */
export const byWords = ({ lots }: HappenedContext, phrase: string): string | undefined =>
  lots.find(({ id, typed }) => id === phrase || (typed !== undefined && folded(typed) === folded(phrase)))
    ?.id;
