import {
  handoutContext,
  languageFor,
  languageNames,
  loadLanguage,
  spanishLanguage,
} from "@keepwright/handout";
import { expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";

it.each(languageNames.flatMap((name) => [[name, "metric"] as const, [name, "us"] as const]))(
  "%s in %s units is the same whether it is at hand or loaded",
  async (name, units) => {
    const loaded = await loadLanguage(name, units);
    expect(loaded).toEqual(languageFor(name, units));
    expect(Intl.getCanonicalLocales(loaded.tag)).toEqual([loaded.tag]);
  },
);

it("a context made with a language speaks it, with dates as the units' readers are used to", async () => {
  const language = await loadLanguage("es", "us");
  const { speaker } = handoutContext(inventedCatalogue, { units: "us", language });
  expect(speaker.tag).toBe("es-US");
  expect(speaker.say("move.none")).toBe(spanishLanguage.messages["move.none"]);
});
