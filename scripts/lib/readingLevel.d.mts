import type { GuidanceWords } from "@keepwright/catalogue";

export function spanishSyllables(word: string): number;
export function englishGrade(texts: readonly string[]): number;
export function spanishEase(texts: readonly string[]): number;
export function guidanceTexts(words: GuidanceWords): string[];
