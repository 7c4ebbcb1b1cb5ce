import { describe, expect, it } from "vitest";
import { englishPage } from "../../src/words/english.js";
import { spanishPage } from "../../src/words/spanish.js";

const holesOf = (message: unknown): string[] =>
  [...new Set([...JSON.stringify(message).matchAll(/\{(\w+)\}/g)].map(([, name]) => name ?? ""))].sort();

describe("the page in Spanish", () => {
  it("says everything the English page says", () => {
    expect(Object.keys(spanishPage.messages).sort()).toEqual(Object.keys(englishPage).sort());
  });

  it.each(Object.entries(englishPage))("has the same placeholders in %s", (key, message) => {
    expect(holesOf(spanishPage.messages[key as keyof typeof englishPage])).toEqual(holesOf(message));
  });
});
