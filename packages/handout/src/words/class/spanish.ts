import type { Message } from "../message.js";
import type { classEnglish } from "./english.js";
import { changesSpanish } from "./spanish/changes.js";
import { hostSpanish } from "./spanish/host.js";
import { kitSpanish } from "./spanish/kit.js";
import { mythsSpanish } from "./spanish/myths.js";
import { quizSpanish } from "./spanish/quiz.js";
import { slidesSpanish } from "./spanish/slides.js";
import { wrongSpanish } from "./spanish/wrong.js";

/** Every word of class kits in Spanish; a key that is missing does not compile. */
export const classSpanish: Readonly<Record<keyof typeof classEnglish, Message>> = {
  ...kitSpanish,
  ...changesSpanish,
  ...hostSpanish,
  ...mythsSpanish,
  ...quizSpanish,
  ...slidesSpanish,
  ...wrongSpanish,
};
