import { describe, expect, it } from "vitest";
import { messageHoles } from "../../../../packages/handout/test/support/messageParts.js";
import { paperEnglish } from "../../src/words/english/paper.js";
import { settingsEnglish } from "../../src/words/english/settings.js";
import { englishPage } from "../../src/words/english.js";
import { paperSpanish } from "../../src/words/spanish/paper.js";
import { settingsSpanish } from "../../src/words/spanish/settings.js";
import { spanishPage } from "../../src/words/spanish.js";

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
