import type { Catalogue } from "../catalogue.js";
import type { Source } from "../tables.js";
import { type Evidence, evidenceIn, recordsOf } from "./evidence.js";

const saysRecalled = /from memory|recalled|remembered/i;
const saysRead = /\bread\b|\babstract\b/i;
/** Publications of which nobody here has read a page: their figures were recalled, so what is inferred from them is too. */
const recalledPublications = /\b(?:Robinson|Sastry|Chau|Becker|Fricke|FoodData|household portions|Kader)\b/i;
/** Sources whose figures could have been read or recalled; the others say in themselves how they were seen. */
const readable: ReadonlySet<string> = new Set(["handbook", "paper", "public authority"]);

/** What is wrong with one piece of evidence: a figure that passes for read though it was recalled. */
function fault({ kind, place, note = "" }: Evidence, standing: string | undefined): string | undefined {
  const text = `${place} ${note}`;
  if (kind === "inferred") {
    const recalled = saysRecalled.exec(text)?.[0];
    if (recalled) return `says "${recalled}"; write fromMemory true, what is inferred from memory is too`;
    const named = saysRead.test(text) ? undefined : recalledPublications.exec(text)?.[0];
    if (named)
      return `rests on "${named}", known from memory only; write fromMemory true, or which page was read`;
  }
  if (standing !== undefined && readable.has(standing) && !saysRead.test(place)) {
    return `has the place "${place}"; add how it was read, as "(page read)", "(copy read)", "(abstract read)" or "(search excerpt read)", or write fromMemory true`;
  }
  return undefined;
}

/** Values of one record that pass for read though it says itself, or leaves open, that they were recalled. */
export const checkMemoryOf = (
  name: string,
  record: unknown,
  sources: ReadonlyMap<string, Source>,
): string[] =>
  evidenceIn(record)
    .filter(([, evidence]) => !evidence.fromMemory)
    .flatMap(([path, evidence]) => {
      const wrong = fault(evidence, sources.get(evidence.source)?.standing);
      return wrong ? [`${name}: ${path} ${wrong}.`] : [];
    });

/** The same over every record of a catalogue. */
export const checkMemory = (catalogue: Catalogue): string[] =>
  recordsOf(catalogue).flatMap(([name, record]) => checkMemoryOf(name, record, catalogue.sources));
