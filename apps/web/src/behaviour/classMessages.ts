import type { ClassAudience, ClassDocument, ClassRequest } from "@keepwright/handout";

/** The pages of a class, or what was wrong with what was asked. */
export type ClassAnswer =
  | {
      readonly kind: "pages";
      readonly title: string;
      readonly language: string;
      /** For whom they were asked for: paper and print. */
      readonly audience: ClassAudience;
      /** Names of the kinds that were chosen by season; empty where they were named. */
      readonly chosen: readonly string[];
      /** In a sentence each: words for several kinds, and the kind that each was taken for. */
      readonly taken: readonly string[];
      readonly pages: readonly ClassDocument[];
    }
  | { readonly kind: "wrong"; readonly message: string };

export type ClassAsked = ClassRequest;
