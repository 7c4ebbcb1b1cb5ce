import type { Messages } from "../message.js";
import { changesEnglish } from "./english/changes.js";
import { hostEnglish } from "./english/host.js";
import { kitEnglish } from "./english/kit.js";
import { mythsEnglish } from "./english/myths.js";
import { quizEnglish } from "./english/quiz.js";
import { slidesEnglish } from "./english/slides.js";
import { wrongEnglish } from "./english/wrong.js";

/** Every word of class kits in English, in the same form as all other words. */
export const classEnglish = {
  ...kitEnglish,
  ...changesEnglish,
  ...hostEnglish,
  ...mythsEnglish,
  ...quizEnglish,
  ...slidesEnglish,
  ...wrongEnglish,
} as const satisfies Messages;
