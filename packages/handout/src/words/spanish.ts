import type { Message } from "./message.js";
import { amountsSpanish } from "./spanish/amounts.js";
import { planSpanish } from "./spanish/plan.js";
import { safetySpanish } from "./spanish/safety.js";
import { hojaWords } from "./spanish/sheet.js";
import type { Language, MessageKey } from "./speaker.js";

export type SomeMessages = { readonly [Key in MessageKey]?: Message };

/** What Keepwright says in Spanish so far: what the page for the refrigerator door needs. Names of kinds are the catalogue's. */
export const spanish: SomeMessages = {
  ...amountsSpanish,
  ...planSpanish,
  ...safetySpanish,
  ...hojaWords,
};

/**
 * Spanish for a page that says nothing but the above. Another key is an error when it is said, never silently English: a
 * test says every key that a sheet can say.
 */
export const spanishLanguage: Language = { tag: "es-419", messages: spanish as Language["messages"] };
