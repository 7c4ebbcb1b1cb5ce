import type { Guidance, GuidanceWords } from "./guidance.js";

/** Languages in which guidance is written. */
export const guidanceLanguages = ["en", "es"] as const;
export type GuidanceLanguage = (typeof guidanceLanguages)[number];

/** What is told of one kind in one language. */
export interface KindGuidance extends Omit<Guidance, "words"> {
  readonly id: string;
  readonly words: GuidanceWords;
}

/** Facts and the words of one language, put together by kind; a kind without words is left out. */
export function joinedGuidance(facts: unknown, words: unknown): ReadonlyMap<string, KindGuidance> {
  const byId = new Map((words as Pick<KindGuidance, "id" | "words">[]).map((each) => [each.id, each.words]));
  return new Map(
    (facts as Omit<KindGuidance, "words">[]).flatMap((each) => {
      const own = byId.get(each.id);
      return own ? [[each.id, { ...each, words: own }]] : [];
    }),
  );
}
