import type { Grams, Kilograms } from "./brand.js";

/** Grams in an avoirdupois pound, exact (International yard and pound agreement, 1959). */
export const gramsPerPound = 453.59237;
/** Grams in an avoirdupois ounce, exact: a sixteenth of a pound. */
export const gramsPerOunce = gramsPerPound / 16;

export const gramsFromPounds = (pounds: number): Grams => pounds * gramsPerPound;
export const poundsFromGrams = (grams: Grams): number => grams / gramsPerPound;
export const gramsFromOunces = (ounces: number): Grams => ounces * gramsPerOunce;
export const kilogramsFromGrams = (grams: Grams): Kilograms => grams / 1000;
export const gramsFromKilograms = (kilograms: Kilograms): Grams => kilograms * 1000;
