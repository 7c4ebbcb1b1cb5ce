import { facts } from "./guidance.generated.js";
import { words as english } from "./guidanceEnglish.generated.js";
import { words as spanish } from "./guidanceSpanish.generated.js";
import { type GuidanceLanguage, joinedGuidance, type KindGuidance } from "./kindGuidance.js";

const joined = new Map<GuidanceLanguage, ReadonlyMap<string, KindGuidance>>();

/** The same as `loadGuidance`, for programs that have everything at hand and need not wait. */
export function bundledGuidance(language: GuidanceLanguage): ReadonlyMap<string, KindGuidance> {
  const known = joined.get(language) ?? joinedGuidance(facts, { en: english, es: spanish }[language]);
  joined.set(language, known);
  return known;
}
