import type { Messages } from "../message.js";
import { kitEnglish } from "./english/kit.js";

/** Every word of class kits in English, in the same form as all other words. */
export const classEnglish = { ...kitEnglish } as const satisfies Messages;
