import { askEnglish } from "./english/ask.js";
import { classEnglish } from "./english/class.js";
import { historyEnglish } from "./english/history.js";
import { kitchenEnglish } from "./english/kitchen.js";
import { mineEnglish } from "./english/mine.js";
import { pageEnglish } from "./english/page.js";
import { planEnglish } from "./english/plan.js";
import { unpackEnglish } from "./english/unpack.js";
import { waysEnglish } from "./english/ways.js";
import { whyEnglish } from "./english/why.js";

/**
 * Every word of the page in English that is not already the handout's. A sentence is always whole; what changes stands
 * in {braces}, in ICU MessageFormat. Another language gives the same keys.
 */
export const englishPage = {
  ...pageEnglish,
  ...historyEnglish,
  ...unpackEnglish,
  ...kitchenEnglish,
  ...planEnglish,
  ...whyEnglish,
  ...mineEnglish,
  ...waysEnglish,
  ...askEnglish,
  ...classEnglish,
} as const;
