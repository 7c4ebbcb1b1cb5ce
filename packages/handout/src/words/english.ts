import { amountsWords } from "./english/amounts.js";
import { askWords } from "./english/ask.js";
import { batchWords } from "./english/batch.js";
import { besideWords } from "./english/beside.js";
import { buyingWords } from "./english/buying.js";
import { carryOnWords } from "./english/carryOn.js";
import { commandLineWords } from "./english/commandLine.js";
import { drawsWords } from "./english/draws.js";
import { fileFindingWords } from "./english/fileFindings.js";
import { findingWords } from "./english/findings.js";
import { improveWords } from "./english/improve.js";
import { itemWords } from "./english/item.js";
import { judgementWords } from "./english/judgement.js";
import { planWords } from "./english/plan.js";
import { proofWords } from "./english/proof.js";
import { readingWords } from "./english/reading.js";
import { reasonsWords } from "./english/reasons.js";
import { safetyWords } from "./english/safety.js";
import { sheetWords } from "./english/sheet.js";
import { takeHomeWords } from "./english/takeHome.js";
import { twoWaysWords } from "./english/twoWays.js";
import { whyWords } from "./english/why.js";
import { wishWords } from "./english/wishes.js";
import type { Messages } from "./message.js";

/**
 * Every word Keepwright says in English, in ICU MessageFormat. A sentence is always whole: what changes stands in
 * {braces}, and nothing is built by joining halves, so that a translator may put the parts in the order the other
 * language wants. Words are plain; ethylene is explained where it is named.
 */
export const english = {
  ...amountsWords,
  ...planWords,
  ...reasonsWords,
  ...safetyWords,
  ...readingWords,
  ...itemWords,
  ...askWords,
  ...judgementWords,
  ...besideWords,
  ...improveWords,
  ...buyingWords,
  ...carryOnWords,
  ...whyWords,
  ...twoWaysWords,
  ...drawsWords,
  ...findingWords,
  ...fileFindingWords,
  ...proofWords,
  ...wishWords,
  ...takeHomeWords,
  ...sheetWords,
  ...commandLineWords,
  ...batchWords,
} as const satisfies Messages;
