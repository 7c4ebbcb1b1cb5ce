import { type Catalogue, folded } from "@keepwright/catalogue";
import type { FindingCode } from "../problem/findingCode.js";
import type { Lot } from "../problem/lot.js";
import { shownValue } from "../problem/schemaFindings.js";
import { readHaul } from "../reading/readHaul.js";
import type { UnderstoodLot } from "../reading/reading.js";
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

/** The lots that a phrase names, each of its words understood. */
export function understood({ catalogue, on }: HappenedContext, phrase: string): UnderstoodLot[] {
  const { items } = readHaul(phrase, catalogue, on);
  const lots = items.filter((item): item is UnderstoodLot => item.kind === "lot");
  if (items.some(({ questions }) => questions.some(({ ask }) => ask === "how old"))) throw unclearDay(phrase);
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

/** The kind of the plan that an item names: its own, or the only one it may be. */
export function kindInPlan(
  { catalogue, lots }: HappenedContext,
  { lot, questions, typed }: UnderstoodLot,
): string {
  const kinds = new Set(lots.map(({ commodity }) => commodity));
  if (kinds.has(lot.commodity)) return lot.commodity;
  const others = questions.flatMap((one) => (one.ask === "which commodity" ? one.candidates : []));
  const [only, second] = [...new Set(others.filter((one) => kinds.has(one)))];
  if (only !== undefined && second === undefined) return only;
  throw notInPlan(catalogue, lot, typed, kinds);
}

/** What is not in the plan may have come home since; but what may have been cut already is asked its day, or its safe time would begin anew. */
function notInPlan(
  catalogue: Catalogue,
  lot: Pick<Lot, "commodity">,
  typed: string,
  kinds: ReadonlySet<string>,
): Unreadable {
  const names = [...kinds].map((id) => catalogue.commodities.get(id)?.names.en.many ?? id);
  const values = { phrase: shownValue(typed), kinds: [...kinds] };
  const value = `${shownValue(typed)} is not in the plan`;
  return limited(catalogue, lot.commodity).cut
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
