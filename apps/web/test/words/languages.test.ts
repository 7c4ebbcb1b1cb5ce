import { describe, expect, it } from "vitest";
import { ownSpelling } from "../../../../packages/handout/src/words/spelling.js";
import { messageHoles } from "../../../../packages/handout/test/support/messageParts.js";
import { paperEnglish } from "../../src/words/english/paper.js";
import { settingsEnglish } from "../../src/words/english/settings.js";
import { englishPage } from "../../src/words/english.js";
import { paperSpanish } from "../../src/words/spanish/paper.js";
import { settingsSpanish } from "../../src/words/spanish/settings.js";
import { spanishPage } from "../../src/words/spanish.js";

/** Words that only the British spell or say so. */
const british =
  /\b\w*(mould|colour|flavour|neighbour|litre|metre|centre|grey|ageing|spoilt|spelt|untick|ticked)\w*/i;

it("American readers are told the page in their own spelling", () => {
  for (const messages of [englishPage, settingsEnglish, paperEnglish])
    for (const [key, message] of Object.entries<string>(messages)) {
      const own = ownSpelling("en-US", message);
      expect(messageHoles(own), key).toEqual(messageHoles(message));
      expect(own.replace(/\{\w+/g, ""), key).not.toMatch(british);
    }
});

describe("the page in Spanish", () => {
  it("says everything the English page says", () => {
    expect(Object.keys(spanishPage.messages).sort()).toEqual(Object.keys(englishPage).sort());
  });

  it.each(Object.entries(settingsEnglish))("has the same placeholders in %s", (key, message) => {
    expect(messageHoles(settingsSpanish[key as keyof typeof settingsEnglish])).toEqual(messageHoles(message));
  });

  it.each(Object.entries(paperEnglish))("has the same placeholders in %s", (key, message) => {
    expect(messageHoles(paperSpanish[key as keyof typeof paperEnglish])).toEqual(messageHoles(message));
  });

  it.each(Object.entries(englishPage))("has the same placeholders in %s", (key, message) => {
    expect(messageHoles(spanishPage.messages[key as keyof typeof englishPage])).toEqual(
      messageHoles(message),
    );
  });
});
