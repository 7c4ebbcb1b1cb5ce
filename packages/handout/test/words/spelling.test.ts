import { bundledGuidance, catalogue } from "@keepwright/catalogue";
import { classWords, englishLanguage, languageFor, spanishLanguage, speaker } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { guidanceForReaders } from "../../src/words/forReaders.js";
import { ownSpelling } from "../../src/words/spelling.js";
import { messageHoles } from "../support/messageParts.js";

/** American spellings of words that the catalogue and the sentences use. */
const american =
  /\b(molds?|moldy|molded|colors?|colored|discolored|flavors?|gray|grayish|centers?|liters?|odors?|fibers?|neighbors?)\b/i;
/** Kinds that are an amount, not pieces. */
const uncounted = ["cilantro", "parsley", "basil", "turmeric", "ginger", "mint", "dill", "thyme", "arugula"];
/** Words of one country for what the catalogue calls otherwise. */
const elsewhere = /\b(guisantes?|judías?|patatas?|nevera|frigorífico|heladera|zumo|tirabeques?)\b/i;

/** Words that only the British spell so: none may reach an American reader. */
const british =
  /\b\w*(mould|colour|flavour|odour|neighbour|favour|vapour|litre|metre|centre|fibre|grey|ageing|spoilt|spelt|learnt|burnt|catalogue|programme|licence|aluminium|untick|labelled|travelled|cancelled|judgement|(?:recogn|organ|real|minim|maxim)ise)\w*/i;

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

  it("American readers are told everything in theirs, with the same placeholders", () => {
    const written: Record<string, string> = { ...englishLanguage.messages, ...classWords.en };
    for (const [key, message] of Object.entries(written)) {
      const own = ownSpelling("en-US", message);
      expect(messageHoles(own), key).toEqual(messageHoles(message));
      expect(own.replace(/\{\w+/g, ""), key).not.toMatch(british);
      for (const tag of ["en-GB", "en-AU", "es-US"]) expect(ownSpelling(tag, message)).toBe(message);
    }
    for (const line of told("en")) expect(ownSpelling("en-US", line)).not.toMatch(british);
    const american = speaker(languageFor("en", "us"));
    expect(american.say("ending.decay")).toBe("mold or rot");
    const kind = bundledGuidance("en").get("strawberry")!;
    const lines = guidanceForReaders("en-US", kind).words.discard;
    expect(lines.join(" ")).toMatch(/\bgray\b/i);
    expect(guidanceForReaders("en-GB", kind)).toEqual(kind);
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
