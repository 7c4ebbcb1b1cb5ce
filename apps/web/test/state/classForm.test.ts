import { classTopics } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { classRequest, halfOf, usualClass, withTopic } from "../../src/state/classForm.js";
import { otherwise as state } from "../support/states.js";

const usual = usualClass("kale\nbananas", "2026-06-13", "en-GB");

describe("what is said of a class on its screen", () => {
  it("is at first an hour about the kinds at home, in this month and half of the earth", () => {
    expect(usual).toMatchObject({ about: "list", minutes: 60, month: 6, region: "northern" });
    expect(usual.topics).toEqual(classTopics);
    expect([halfOf("es-AR"), halfOf("en-NZ"), halfOf("es-419"), halfOf("en")]).toEqual([
      "southern",
      "southern",
      "northern",
      "northern",
    ]);
  });

  it("takes topics out and puts them in again in their order", () => {
    const fewer = withTopic(withTopic(classTopics, "places", false), "myths", false);
    expect(fewer).toEqual(classTopics.filter((one) => one !== "places" && one !== "myths"));
    expect(withTopic(withTopic(fewer, "myths", true), "places", true)).toEqual(classTopics);
  });

  it("asks for the kinds named, or for those in season, never for both", () => {
    const named = classRequest(
      state,
      { language: "en", tag: "en-GB" },
      { ...usual, kinds: " kale, bananas;\n\napples " },
    );
    expect([named.items, named.season]).toEqual([["kale", "bananas", "apples"], undefined]);
    const season = classRequest(
      state,
      { language: "es", tag: "es-MX" },
      {
        ...usual,
        about: "season",
        month: 1,
        region: "southern",
        count: 3,
        minutes: 25,
        topics: ["signs"],
        large: true,
      },
    );
    expect(season).toMatchObject({
      season: { month: 1, region: "southern", kinds: 3 },
      minutes: 25,
      topics: ["signs"],
      audience: { language: "es", print: "large", region: "MX" },
    });
    expect(season).not.toHaveProperty("items");
  });
});
