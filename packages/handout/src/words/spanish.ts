import type { Message } from "./message.js";
import { amountsSpanish } from "./spanish/amounts.js";
import { askSpanish } from "./spanish/ask.js";
import { batchSpanish } from "./spanish/batch.js";
import { besideSpanish } from "./spanish/beside.js";
import { buyingSpanish } from "./spanish/buying.js";
import { carryOnSpanish } from "./spanish/carryOn.js";
import { commandLineSpanish } from "./spanish/commandLine.js";
import { drawsSpanish } from "./spanish/draws.js";
import { fileFindingsSpanish } from "./spanish/fileFindings.js";
import { findingSpanish } from "./spanish/findings.js";
import { improveSpanish } from "./spanish/improve.js";
import { itemSpanish } from "./spanish/item.js";
import { judgementSpanish } from "./spanish/judgement.js";
import { planSpanish } from "./spanish/plan.js";
import { proofSpanish } from "./spanish/proof.js";
import { readingSpanish } from "./spanish/reading.js";
import { reasonsSpanish } from "./spanish/reasons.js";
import { safetySpanish } from "./spanish/safety.js";
import { sheetSpanish } from "./spanish/sheet.js";
import { takeHomeSpanish } from "./spanish/takeHome.js";
import { twoWaysSpanish } from "./spanish/twoWays.js";
import { whySpanish } from "./spanish/why.js";
import { wishSpanish } from "./spanish/wishes.js";
import type { Language, MessageKey } from "./speaker.js";

/**
 * Every word Keepwright says in Spanish, as it is spoken in Latin America; a key that is missing does not compile. Words
 * that go with a kind's name are right for one or many and for either gender. Names of kinds are the catalogue's.
 */
export const spanish: Readonly<Record<MessageKey, Message>> = {
  ...amountsSpanish,
  ...besideSpanish,
  ...planSpanish,
  ...reasonsSpanish,
  ...safetySpanish,
  ...askSpanish,
  ...readingSpanish,
  ...itemSpanish,
  ...judgementSpanish,
  ...improveSpanish,
  ...buyingSpanish,
  ...carryOnSpanish,
  ...whySpanish,
  ...twoWaysSpanish,
  ...drawsSpanish,
  ...findingSpanish,
  ...fileFindingsSpanish,
  ...proofSpanish,
  ...wishSpanish,
  ...takeHomeSpanish,
  ...sheetSpanish,
  ...commandLineSpanish,
  ...batchSpanish,
};

export const spanishLanguage: Language = { tag: "es-419", messages: spanish };
