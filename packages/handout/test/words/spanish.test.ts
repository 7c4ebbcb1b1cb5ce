import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { englishLanguage, type Message, spanish, spanishLanguage, speaker } from "@keepwright/handout";
import { ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { spanishEase } from "../../../../scripts/lib/readingLevel.mjs";
import { messageHoles, messageTexts } from "../support/messageParts.js";

const english: Record<string, Message> = englishLanguage.messages;
const limits = new Map(
  (
    JSON.parse(
      readFileSync(fileURLToPath(new URL("../../../catalogue/data/safety.json", import.meta.url)), "utf8"),
    ) as { id: string; value: number }[]
  ).map(({ id, value }) => [id, value]),
);
const inWords = ["cero", "una", "dos", "tres", "cuatro", "cinco", "seis", "siete"];
const word = (id: string) => inWords[limits.get(id)!]!;

describe("the Spanish words", () => {
  it("have the keys of the English ones, and no other", () => {
    expect(Object.keys(spanish).sort()).toEqual(Object.keys(english).sort());
  });

  it("want the very values that the English words want: no name, date or amount is lost", () => {
    for (const [key, message] of Object.entries(spanish))
      expect(messageHoles(message), key).toEqual(messageHoles(english[key]!));
  });

  it("are not the English ones", () => {
    const same = Object.entries(spanish).filter(
      ([key, message]) => message === english[key] && /\p{L}{3}/u.test(message.replace(/\{\w+\}/g, "")),
    );
    expect(same).toEqual([]);
  });

  it("join no article to a value that brings its own", () => {
    // “de el” and “a el” would be wrong before “el viernes”; what begins with “de” may not follow “de”.
    for (const [key, message] of Object.entries(spanish))
      expect(message, key).not.toMatch(/\b(en vez de|de|a) \{(day|span|now|planned|ending)\}/);
  });

  it("have a name for every ordinary kitchen and its places", () => {
    for (const { name, places } of Object.values(ordinaryKitchens))
      for (const each of [name, ...places.map((place) => place.name)])
        expect(Object.hasOwn(spanish, `ordinary.${each}`), each).toBe(true);
  });

  it("are easy to read", () => {
    const texts = (messages: object) => Object.values<string>(messages as Record<string, string>);
    const sentences = texts(spanish).flatMap((message) =>
      messageTexts(message).map((text) => (/[.!?:]$/.test(text) ? text : `${text}.`)),
    );
    expect(spanishEase(sentences)).toBeGreaterThanOrEqual(70);
  });

  it("say when a word is wanted that a language does not have, instead of another language's", () => {
    const { "move.none": _, ...rest } = spanish;
    const partly = { tag: "es-419", messages: rest as typeof spanish };
    expect(() => speaker(partly).say("move.none")).toThrow(/no words for “move.none” in es-419/);
  });

  it("give the catalogue's safety limits, as the English words do", () => {
    const { say } = speaker(spanishLanguage);
    for (const key of [
      "caution.cut-produce",
      "caution.no-refrigerator-for-cut-produce",
      "life.atOnce",
    ] as const) {
      const text = say(key);
      expect(text).toContain(`${word("refrigerate-cut-within")} horas`);
      expect(text).toContain(`${word("refrigerate-cut-within-when-hot")} hora`);
      expect(text).toContain(`${limits.get("hot-surroundings-above")} °C`);
    }
    const ready = say("caution.cut-ready-to-eat");
    expect(ready).toContain(`${limits.get("controlled-cold-holding-at-most")} °C`);
    expect(ready).toContain(`${word("cut-ready-to-eat-days")} días`);
    expect(say("caution.refrigerator-too-warm")).toContain(`${limits.get("refrigerator-at-most")} °C`);
    expect(say("caution.mould-firm")).toContain(`${limits.get("mould-on-firm-cut-around")} cm`);
    expect(say("caution.garlic-in-oil")).toContain(`${word("garlic-in-oil-refrigerated-days")} días`);
  });
});
