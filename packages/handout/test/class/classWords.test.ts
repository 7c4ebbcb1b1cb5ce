import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { classWords } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { spanishEase } from "../../../../scripts/lib/readingLevel.mjs";
import { messageHoles, messageTexts } from "../support/messageParts.js";

const { en, es } = classWords as { en: Record<string, string>; es: Record<string, string> };
const folder = fileURLToPath(new URL("../../src/class/", import.meta.url));
const command = fileURLToPath(new URL("../../../../apps/cli/src/", import.meta.url));
const paper = fileURLToPath(new URL("../../../paper/src/", import.meta.url));
const filesIn = (path: string) =>
  (readdirSync(path, { recursive: true }) as string[])
    .filter((file) => file.endsWith(".ts"))
    .map((file) => readFileSync(path + file, "utf8"));
const code = [...filesIn(folder), ...filesIn(command), ...filesIn(paper)].join("\n");

describe("the words of class kits", () => {
  it("have the same keys and want the same values in both languages", () => {
    expect(Object.keys(es).sort()).toEqual(Object.keys(en).sort());
    for (const [key, message] of Object.entries(es))
      expect(messageHoles(message), key).toEqual(messageHoles(en[key]!));
  });

  it("are not the English ones in Spanish", () => {
    const same = Object.entries(es).filter(
      ([key, message]) => message === en[key] && /\p{L}{3}/u.test(message.replace(/\{\w+\}/g, "")),
    );
    expect(same).toEqual([]);
  });

  it("are all used", () => {
    const literals = new Set([...code.matchAll(/"([^"\n]+)"/g)].map((match) => match[1]));
    const beginnings = [...code.matchAll(/`([a-z][\w .]*\.)\$\{/g)].map((match) => match[1] ?? "");
    expect(
      Object.keys(en).filter(
        (key) => !literals.has(key) && !beginnings.some((start) => key.startsWith(start)),
      ),
    ).toEqual([]);
  });

  it("share no key between parts", async () => {
    const parts = new URL("../../src/words/class/english/", import.meta.url);
    const all = await Promise.all(
      readdirSync(parts).map((name) => import(`${parts.href}${name}`) as Promise<Record<string, object>>),
    );
    const keys = all.flatMap((part) => Object.values(part).flatMap((words) => Object.keys(words)));
    expect(keys.length).toBe(new Set(keys).size);
    expect(keys.length).toBe(Object.keys(en).length);
  });

  it("are easy to read in Spanish", () => {
    const texts = Object.values(es).flatMap((message) =>
      messageTexts(message).map((text) => (/[.!?:]$/.test(text) ? text : `${text}.`)),
    );
    expect(spanishEase(texts)).toBeGreaterThanOrEqual(70);
  });
});
