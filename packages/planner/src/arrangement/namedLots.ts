import { findKind, findKinds, folded } from "@keepwright/catalogue";
import type { BoundLot } from "../problem/bindHaul.js";
import { told } from "../problem/findingCode.js";
import type { Finding } from "../problem/inputError.js";
import type { Problem } from "../problem/problem.js";
import { shownValue } from "../problem/schemaFindings.js";

/** The lots a name stands for, or why it stands for none. */
export type NamedLots =
  | { readonly ok: true; readonly lots: readonly BoundLot[] }
  | { readonly ok: false; readonly problem: Finding };

/** Longest piece of what was typed that is shown beside an id, and most lots that are listed. */
const longestShown = 40;
const mostListed = 60;

/** A lot as it may be named: its id, with what was typed for it or else its kind. */
export function lotToName({ lot, commodity }: BoundLot): string {
  const typed = lot.typed?.trim() || commodity.names.en.many;
  const characters = [...typed];
  const shown = characters.length > longestShown ? `${characters.slice(0, longestShown).join("")}…` : typed;
  return `${shownValue(lot.id)} (${shown})`;
}

const listed = (lots: readonly BoundLot[]): string => lots.slice(0, mostListed).map(lotToName).join(", ");

/** Lots of the haul whose kind the words surely name; or of the only kind of the haul among those they may name. */
function byKind({ lots, catalogue }: Problem, name: string): BoundLot[] {
  const sure = catalogue.commodities.get(name)?.id ?? findKind(catalogue, name)?.id;
  if (sure !== undefined) return lots.filter(({ commodity }) => commodity.id === sure);
  const candidates = new Set(findKinds(catalogue, name).map(({ id }) => id));
  return lots.filter(({ commodity }) => candidates.has(commodity.id));
}

/** Lots for which these words were typed among others: “tomatoes” in “500 g cherry tomatoes”. */
const byWordsTyped = ({ lots }: Problem, words: string): BoundLot[] =>
  words === "" ? [] : lots.filter(({ lot }) => ` ${folded(lot.typed ?? "")} `.includes(` ${words} `));

/**
 * The lots of the haul a person means: by id; else by what was typed, whatever its case and accents; else all lots of the kind named, or
 * else those for which the words were typed among others. Words that may mean several kinds of the haul are asked about, never guessed.
 */
export function namedLots(problem: Problem, name: string, what = "arrangement lot"): NamedLots {
  const { lots } = problem;
  const exact = lots.filter(({ lot }) => lot.id === name.trim());
  if (exact.length > 0) return { ok: true, lots: exact };
  const words = folded(name);
  const typed = lots.filter(({ lot }) => lot.typed !== undefined && folded(lot.typed) === words);
  if (typed.length > 0 && words !== "") return { ok: true, lots: typed };
  const sure = byKind(problem, name);
  const ofKind = sure.length > 0 ? sure : byWordsTyped(problem, words);
  const thing = `${what} ${shownValue(name)}`;
  const values = (some: readonly BoundLot[]) => ({
    lot: shownValue(name),
    lots: some.slice(0, mostListed).map(lotToName),
  });
  if (ofKind.length === 0) {
    const remedy = `Name one of: ${listed(lots)}.`;
    const value = "there is no such lot in the haul";
    return { ok: false, problem: { thing, value, remedy, ...told("no such lot", values(lots)) } };
  }
  if (new Set(ofKind.map(({ commodity }) => commodity.id)).size > 1) {
    const remedy = `Name one of: ${listed(ofKind)}.`;
    const value = "it may be more than one kind of the haul";
    return { ok: false, problem: { thing, value, remedy, ...told("lot of several kinds", values(ofKind)) } };
  }
  return { ok: true, lots: ofKind };
}
