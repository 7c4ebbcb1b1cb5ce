import { expect, it } from "vitest";
import {
  messageHoles,
  messageParts,
  pluralForms,
  typedHoles,
} from "../../../../packages/handout/test/support/messageParts.js";
import { settingsEnglish } from "../../src/words/english/settings.js";
import { settingsSpanish } from "../../src/words/spanish/settings.js";
import { spanishPage } from "../../src/words/spanish.js";
import { englishPageLanguage } from "../../src/words/words.js";

const all = [
  englishPageLanguage,
  spanishPage,
  { tag: "en-GB", messages: settingsEnglish },
  { tag: "es", messages: settingsSpanish },
];

it.each(all)(
  "the page's words in $tag are well formed messages with every plural form and no placeholder that the types miss",
  ({ tag, messages }) => {
    for (const [key, message] of Object.entries(messages)) {
      const { others, plurals } = messageParts(message);
      expect(others, key).toEqual([]);
      for (const forms of plurals.values()) expect([...forms].sort(), key).toEqual(pluralForms(tag));
      expect(typedHoles(message), key).toEqual(messageHoles(message));
    }
  },
);
