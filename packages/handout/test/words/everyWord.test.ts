import { readdirSync } from "node:fs";
import {
  englishLanguage,
  type HandoutContext,
  handoutContext,
  planText,
  planView,
} from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const marked = (text: string) => `⟦${text}⟧`;
/** A made-up language: every message in brackets, so that words from elsewhere stand out. */
const messages = Object.fromEntries(
  Object.entries(englishLanguage.messages).map(([key, message]) => [key, marked(message)]),
) as typeof englishLanguage.messages;
const context: HandoutContext = handoutContext(inventedCatalogue, { language: { tag: "en-GB", messages } });

function outsideBrackets(text: string): string {
  let depth = 0;
  return [...text]
    .filter((character) => {
      if (character === "⟦") depth++;
      const outside = depth === 0;
      if (character === "⟧") depth--;
      return outside;
    })
    .join("");
}

describe("a plan in another language", () => {
  it("holds no word that does not come from the language's own messages", () => {
    const text = planText(context, planView(context, handMadePlan, { kitchenAssumed: true }));
    expect(text).toContain("⟦");
    expect(outsideBrackets(text)).not.toMatch(/\p{L}/u);
  });

  it("has a marked message for every sentence, also where a lot has several reasons", () => {
    const { lives } = planView(context, handMadePlan);
    for (const { reasons } of lives) for (const reason of reasons) expect(reason).toMatch(/^⟦.*⟧$/su);
  });
});

describe("the parts of the English words", () => {
  it("share no key: a later part would silently replace an earlier one", async () => {
    const folder = new URL("../../src/words/english/", import.meta.url);
    const parts = await Promise.all(
      readdirSync(folder).map((name) => import(`${folder.href}${name}`) as Promise<Record<string, object>>),
    );
    const keys = parts.flatMap((part) => Object.values(part).flatMap((words) => Object.keys(words)));
    expect(keys.length).toBe(new Set(keys).size);
    expect(keys.length).toBe(Object.keys(englishLanguage.messages).length);
  });
});
