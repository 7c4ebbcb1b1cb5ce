import { loadLanguage } from "@keepwright/handout";
import { spanishPage } from "./spanish.js";
import type { AllWords } from "./words.js";

/** All that is said in Spanish, of the page and of plans: a part of its own, fetched when it is wanted. */
export async function spanishWords(): Promise<AllWords> {
  return { page: spanishPage, plan: await loadLanguage("es", "metric") };
}
