import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { preparations } from "@keepwright/catalogue";
import { englishLanguage, type Message, spanish, spanishLanguage, speaker } from "@keepwright/handout";
import { ordinaryKitchens, wrapIds } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { messageHoles } from "../support/messageParts.js";

const english: Record<string, Message> = englishLanguage.messages;
const messages = spanish as Record<string, Message>;
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
  it("have the keys of the English ones, and no hole that those do not fill", () => {
    expect(Object.keys(messages).filter((key) => !Object.hasOwn(english, key))).toEqual([]);
    for (const [key, message] of Object.entries(messages)) {
      const filled = new Set([...messageHoles(english[key]!), "count"]);
      expect(
        messageHoles(message).filter((hole) => !filled.has(hole)),
        key,
      ).toEqual([]);
    }
  });

  it("lose no name, date or amount that the English words tell", () => {
    // A number of portions told beside a date is left to the English words: the sheet counts none.
    for (const [key, message] of Object.entries(messages)) {
      const lost = messageHoles(english[key]!).filter(
        (hole) => hole !== "count" && !messageHoles(message).includes(hole),
      );
      expect(lost, key).toEqual([]);
    }
  });

  it.each([
    ["wrap", wrapIds],
    ["prepare.do", preparations],
    [
      "ordinary",
      Object.values(ordinaryKitchens).flatMap(({ name, places }) => [
        name,
        ...places.map((place) => place.name),
      ]),
    ],
    [
      "caution",
      Object.keys(english)
        .filter((key) => key.startsWith("caution."))
        .map((key) => key.slice(8)),
    ],
    [
      "sheet",
      Object.keys(english)
        .filter((key) => key.startsWith("sheet.") && key !== "sheet.written")
        .map((key) => key.slice(6)),
    ],
    [
      "lot.now",
      Object.keys(english)
        .filter((key) => key.startsWith("lot.now."))
        .map((key) => key.slice(8)),
    ],
    [
      "lot.came",
      Object.keys(english)
        .filter((key) => key.startsWith("lot.came."))
        .map((key) => key.slice(9)),
    ],
    [
      "span",
      Object.keys(english)
        .filter((key) => key.startsWith("span.") && key !== "span.hours" && key !== "span.past")
        .map((key) => key.slice(5)),
    ],
  ] as const)("%s has a message for every name", (start, names) => {
    expect(names.length).toBeGreaterThan(2);
    expect(names.filter((name) => !Object.hasOwn(messages, `${start}.${name}`))).toEqual([]);
  });

  it("what is not written yet is an error, never silently English", () => {
    expect(() => speaker(spanishLanguage).say("move.none")).toThrow(/no words for “move.none” in es-419/);
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
