import { facts } from "./guidance.generated.js";
import { words as english } from "./guidanceEnglish.generated.js";
import { words as spanish } from "./guidanceSpanish.generated.js";
import { type GuidanceLanguage, joinedGuidance, type KindGuidance } from "./kindGuidance.js";

/** The same as `loadGuidance`, for programs that have everything at hand and need not wait. */
export const bundledGuidance = (language: GuidanceLanguage): ReadonlyMap<string, KindGuidance> =>
  joinedGuidance(facts, { en: english, es: spanish }[language]);
