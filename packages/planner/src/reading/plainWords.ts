/** Words that join and carry nothing by themselves. They may stand outside every item of a reading. */
export const connectives: ReadonlySet<string> = new Set(
  (
    "and plus also then of the with for in en on at from to or y e o u de del la el las los con i ive we weve got bought have had there is are was were " +
    "its it some that this these those my our a an please all them " +
    "comprado comprada comprados compradas compre compramos traje trajimos want quiero so like um uh er ok okay yeah well they theyre theres thats only think but pero"
  ).split(" "),
);

/** Words between two things of which perhaps only one is meant. */
export const orWords: ReadonlySet<string> = new Set(["or", "o", "u"]);

/** Words that part one lot from the next. */
export const joiners: ReadonlySet<string> = new Set(["and", "plus", "also", "then", "but", "y", "e", "pero"]);

/** Characters that part one lot from the next, or a lot from a remark on it. They carry nothing by themselves. */
export const joiningMarks: ReadonlySet<string> = new Set([
  ",",
  "&",
  "+",
  ":",
  "—",
  "–",
  "-",
  "/",
  "|",
  "、",
  "，",
  "=",
]);

/** Words that describe produce and change nothing that is computed. */
export const descriptors: ReadonlySet<string> = new Set(
  (
    "fresh organic local nice good lovely raw loose orange young new old fashioned big huge little tiny " +
    "crisp juicy vine leaf leaves seedless tender mixed assorted about approximately approx roughly around nearly almost still so very just more each bit slightly somewhat partly other another otro otra otros otras ya " +
    "fresco fresca frescos frescas organico organica grande grandes"
  ).split(" "),
);

/** Words that say the amount is only about right. */
export const roughly: ReadonlySet<string> = new Set([
  "about",
  "maybe",
  "approximately",
  "approx",
  "roughly",
  "around",
  "nearly",
  "almost",
  "aproximadamente",
  "como",
  "alrededor",
  "cerca",
  "~",
]);

/** A size, as the catalogue's units name it. */
export type Size = "small" | "medium" | "large" | "baby";

/** Sizes by their words. */
export const sizes: Readonly<Record<string, Size>> = {
  small: "small",
  little: "small",
  tiny: "small",
  pequeno: "small",
  pequena: "small",
  baby: "baby",
  sm: "small",
  sml: "small",
  pequenos: "small",
  pequenas: "small",
  chico: "small",
  chica: "small",
  chicos: "small",
  chicas: "small",
  chiquito: "small",
  chiquita: "small",
  chiquitos: "small",
  chiquitas: "small",
  medium: "medium",
  med: "medium",
  mediano: "medium",
  mediana: "medium",
  medianos: "medium",
  medianas: "medium",
  large: "large",
  lg: "large",
  lge: "large",
  xl: "large",
  big: "large",
  huge: "large",
  grande: "large",
  grandes: "large",
};
