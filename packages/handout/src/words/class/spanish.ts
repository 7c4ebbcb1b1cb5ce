import type { Message } from "../message.js";
import type { classEnglish } from "./english.js";
import { kitSpanish } from "./spanish/kit.js";

/** Every word of class kits in Spanish; a key that is missing does not compile. */
export const classSpanish: Readonly<Record<keyof typeof classEnglish, Message>> = { ...kitSpanish };
