import type { Litres } from "./brand.js";

/** Litres in a US liquid pint, exact: 28.875 cubic inches (NIST Handbook 44, Appendix C). */
export const litresPerLiquidPint = 0.473176473;
/** Litres in a US dry pint, exact: 33.6003125 cubic inches (NIST Handbook 44, Appendix C). Berries are sold by it. */
export const litresPerDryPint = 0.5506104713575;
/** Litres in a US customary cup, exact: half a liquid pint. */
export const litresPerCup = litresPerLiquidPint / 2;
/** Litres in a US gallon, exact: 231 cubic inches, eight liquid pints. */
export const litresPerGallon = 8 * litresPerLiquidPint;
/** Litres in a US peck, exact: sixteen dry pints. */
export const litresPerPeck = 16 * litresPerDryPint;
/** Litres in a US bushel, exact: four pecks. */
export const litresPerBushel = 4 * litresPerPeck;

export const litresFromMillilitres = (millilitres: number): Litres => millilitres / 1000;
