import type { Guidance, GuidanceWords } from "./guidance.js";

/** Languages in which guidance is written. */
export const guidanceLanguages = ["en", "es"] as const;
export type GuidanceLanguage = (typeof guidanceLanguages)[number];

/** What is told of one kind in one language. */
export interface KindGuidance extends Omit<Guidance, "words"> {
  readonly id: string;
  readonly words: GuidanceWords;
}

const wordsOf = {
  en: () => import("./guidanceEnglish.generated.js"),
  es: () => import("./guidanceSpanish.generated.js"),
};

const loaded = new Map<GuidanceLanguage, Promise<ReadonlyMap<string, KindGuidance>>>();

async function load(language: GuidanceLanguage): Promise<ReadonlyMap<string, KindGuidance>> {
  const [{ facts }, { words }] = await Promise.all([import("./guidance.generated.js"), wordsOf[language]()]);
  const byId = new Map((words as Pick<KindGuidance, "id" | "words">[]).map((each) => [each.id, each.words]));
  return new Map(
    (facts as Omit<KindGuidance, "words">[]).flatMap((each) => {
      const own = byId.get(each.id);
      return own ? [[each.id, { ...each, words: own }]] : [];
    }),
  );
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
