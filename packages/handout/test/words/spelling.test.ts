import { bundledGuidance, catalogue } from "@keepwright/catalogue";
import { englishLanguage, spanishLanguage } from "@keepwright/handout";
import { describe, expect, it } from "vitest";

/** American spellings of words that the catalogue and the sentences use. */
const american =
  /\b(molds?|moldy|molded|colors?|colored|discolored|flavors?|gray|grayish|centers?|liters?|odors?|fibers?|neighbors?)\b/i;
/** Kinds that are an amount, not pieces. */
const uncounted = ["cilantro", "parsley", "basil", "turmeric", "ginger", "mint", "dill", "thyme", "arugula"];
/** Words of one country for what the catalogue calls otherwise. */
const elsewhere = /\b(guisantes?|judías?|patatas?|nevera|frigorífico|heladera|zumo|tirabeques?)\b/i;

const told = (language: "en" | "es") =>
  [...bundledGuidance(language).entries()].flatMap(([id, { words }]) =>
    Object.values(words)
      .flat()
      .map((line) => `${id}: ${line}`),
  );
const sentences = (messages: Readonly<Record<string, string>>) =>
  Object.entries(messages).map(([key, line]) => `${key}: ${line}`);

describe("one spelling for each language", () => {
  it("English is British, in what is told of kinds and in the sentences", () => {
    const lines = [...told("en"), ...sentences(englishLanguage.messages)];
    expect(lines.length).toBeGreaterThan(1000);
    expect(lines.filter((line) => american.test(line))).toEqual([]);
  });

  it("Spanish is of one set of words", () => {
    const lines = [...told("es"), ...sentences(spanishLanguage.messages)];
    expect(lines.filter((line) => elsewhere.test(line))).toEqual([]);
    for (const { id, names } of catalogue().commodities.values())
      expect(elsewhere.test(names.es.many), id).toBe(false);
  });

  it.each(uncounted)("%s is one word for any amount in Spanish", (id) => {
    const { one, many } = catalogue().commodities.get(id)!.names.es;
    expect(many).toBe(one);
  });
});
