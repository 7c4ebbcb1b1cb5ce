import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { classes, preparations } from "@keepwright/catalogue";
import { englishLanguage, type Message, speaker } from "@keepwright/handout";
import { endings } from "@keepwright/physics";
import { placeKinds, ventSettings, wrapIds } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { messageTexts } from "../support/messageParts.js";

const messages: Record<string, Message> = englishLanguage.messages;
const keys = Object.keys(messages);
const folder = fileURLToPath(new URL("../../src/", import.meta.url));
const code = (readdirSync(folder, { recursive: true }) as string[])
  .filter((file) => file.endsWith(".ts") && !/(english|spanish)(\/|\.ts)/.test(file))
  .map((file) => readFileSync(folder + file, "utf8"))
  .join("\n");

describe("the English words", () => {
  it("are all used: each key stands in the code, whole or as the beginning of a template", () => {
    const literals = new Set([...code.matchAll(/"([^"\n]+)"/g)].map((match) => match[1]));
    const beginnings = [...code.matchAll(/`([a-z][\w .]*\.)\$\{/g)].map((match) => match[1] ?? "");
    const unused = keys.filter(
      (key) => !literals.has(key) && !beginnings.some((start) => key.startsWith(start)),
    );
    expect(unused).toEqual([]);
  });

  it.each([
    ["ending", endings],
    ["reason.ends", endings],
    ["place.kind", placeKinds],
    ["vent", ventSettings],
    ["wrap", wrapIds],
    ["prepare.do", preparations],
    ["prepare.why", preparations],
  ] as const)("%s has a message for every name", (start, names) => {
    expect(names.filter((name) => !keys.includes(`${start}.${name}`))).toEqual([]);
  });

  it("name no class of the catalogue bare", () => {
    expect(classes.length).toBeGreaterThan(0);
    for (const key of keys) for (const text of messageTexts(messages[key]!)) expect(text.trim()).not.toBe("");
  });

  it("use words of everyday length: at most a tenth of the words are longer than nine letters", () => {
    const all =
      keys
        .flatMap((key) => messageTexts(messages[key]!))
        .join(" ")
        .match(/[A-Za-z]+/g) ?? [];
    const long = all.filter((word) => word.length > 9);
    expect(long.length / all.length).toBeLessThan(0.1);
  });
});

describe("a speaker", () => {
  it("puts text in as it is, even where it looks like a hole or mark-up", () => {
    expect(speaker().say("plan.kitchen", { kitchen: "{count} <b>$&</b>" })).toBe(
      "Kitchen: {count} <b>$&</b>.",
    );
  });
  it("chooses the plural form of the language", () => {
    expect(speaker().say("eat.entry", { name: "Kale", count: 1 })).toBe("Kale (1 portion)");
    expect(speaker().say("eat.entry", { name: "Kale", count: 2 })).toBe("Kale (2 portions)");
  });
  it("speaks another language with the same keys", () => {
    const spanish = {
      ...englishLanguage,
      tag: "es",
      messages: { ...englishLanguage.messages, "span.days": "de {low} a {high} días" },
    };
    expect(speaker(spanish).say("span.days", { low: 8, high: 12 })).toBe("de 8 a 12 días");
    expect(speaker(spanish).list(["a", "b"])).toBe("a y b");
  });
});
