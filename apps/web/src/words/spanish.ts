import { askSpanish } from "./spanish/ask.js";
import { classSpanish } from "./spanish/class.js";
import { historySpanish } from "./spanish/history.js";
import { kitchenSpanish } from "./spanish/kitchen.js";
import { mineSpanish } from "./spanish/mine.js";
import { pageSpanish } from "./spanish/page.js";
import { planSpanish } from "./spanish/plan.js";
import { unpackSpanish } from "./spanish/unpack.js";
import { waysSpanish } from "./spanish/ways.js";
import { whySpanish } from "./spanish/why.js";
import type { PageLanguage } from "./words.js";

/** Every word of the page in Spanish: a key that is missing is a type error. */
export const spanishPage: PageLanguage = {
  tag: "es",
  messages: {
    ...pageSpanish,
    ...historySpanish,
    ...unpackSpanish,
    ...kitchenSpanish,
    ...planSpanish,
    ...whySpanish,
    ...mineSpanish,
    ...waysSpanish,
    ...askSpanish,
    ...classSpanish,
  },
};
