import { englishLanguage, type Language, spanishLanguage, speaker } from "@keepwright/handout";
import { IntlMessageFormat } from "intl-messageformat";
import { describe, expect, it } from "vitest";
import { messageHoles, messageParts, pluralForms, typedHoles } from "../support/messageParts.js";

const languages: readonly Language[] = [englishLanguage, spanishLanguage];

describe.each(languages.map((language) => [language.tag, language] as const))(
  "the messages in %s",
  (_, { tag, messages }) => {
    const entries = Object.entries(messages);

    it("are well formed ICU messages of placeholders and plural forms, and nothing else", () => {
      expect(entries.length).toBeGreaterThan(100);
      for (const [key, message] of entries) {
        expect(messageParts(message).others, key).toEqual([]);
      }
    });

    it("have every plural form that the language chooses, and no other", () => {
      for (const [key, message] of entries)
        for (const forms of messageParts(message).plurals.values())
          expect([...forms].sort(), key).toEqual(pluralForms(tag));
    });

    it("have no placeholder that the types miss or make up", () => {
      for (const [key, message] of entries) expect(typedHoles(message), key).toEqual(messageHoles(message));
    });

    it("are said as the library says them", () => {
      const { say } = speaker({ tag, messages });
      for (const [key, message] of entries) {
        const holes = messageHoles(message);
        const values = Object.fromEntries(
          holes.map((name, index) => [name, messageParts(message).plurals.has(name) ? 1234 : `<${index}>`]),
        );
        const library = new IntlMessageFormat(message, tag, undefined, { ignoreTag: true });
        expect(say(key as "life.past", ...([values] as unknown as [])), key).toBe(library.format(values));
      }
    });

    it("write a number that chooses a form as #, so that it is told as the language writes it", () => {
      for (const [key, message] of entries)
        for (const name of messageParts(message).plurals.keys())
          expect(message.includes(`{${name}}`), key).toBe(false);
    });
  },
);

describe("a message said", () => {
  const language = (message: string): Language => ({
    tag: "en-GB",
    messages: { ...englishLanguage.messages, "eat.left": message },
  });
  const said = (message: string) => speaker(language(message)).say("eat.left", { name: "Kale", count: 2 });

  it("takes a lone apostrophe as it stands, and quoted braces as text", () => {
    expect(said("it's {name}")).toBe("it's Kale");
    expect(said("'{name}' is {name}")).toBe("{name} is Kale");
  });
  it("takes mark-up for text", () => {
    expect(said("<b>{name}</b> & 1 < 2")).toBe("<b>Kale</b> & 1 < 2");
  });
  it("is an error where it is not well formed or wants a value that is not given", () => {
    expect(() => said("{name")).toThrow(/EXPECT_ARGUMENT_CLOSING_BRACE/);
    expect(() => said("{other}")).toThrow(/“other”|"other"/);
  });
});
