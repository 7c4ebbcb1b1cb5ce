import { type GuidanceLanguage, joinedGuidance, type KindGuidance } from "./kindGuidance.js";

const wordsOf = {
  en: () => import("./guidanceEnglish.generated.js"),
  es: () => import("./guidanceSpanish.generated.js"),
};

const loaded = new Map<GuidanceLanguage, Promise<ReadonlyMap<string, KindGuidance>>>();

async function load(language: GuidanceLanguage): Promise<ReadonlyMap<string, KindGuidance>> {
  const [{ facts }, { words }] = await Promise.all([import("./guidance.generated.js"), wordsOf[language]()]);
  return joinedGuidance(facts, words);
}

/**
 * What is told of each kind in a language: signs, preparation, saving, hazards. Two parts of their own, loaded when first
 * asked for. Checked in the tests, not here.
 */
export function loadGuidance(language: GuidanceLanguage): Promise<ReadonlyMap<string, KindGuidance>> {
  const known = loaded.get(language) ?? load(language);
  loaded.set(language, known);
  return known;
}
