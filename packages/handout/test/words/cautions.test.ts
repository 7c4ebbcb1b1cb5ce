import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { speaker } from "@keepwright/handout";
import { describe, expect, it } from "vitest";

interface Limit {
  readonly id: string;
  readonly value: number;
}
const file = fileURLToPath(new URL("../../../catalogue/data/safety.json", import.meta.url));
const limits = new Map(
  (JSON.parse(readFileSync(file, "utf8")) as Limit[]).map(({ id, value }) => [id, value]),
);
const english = speaker();
const inWords = ["nothing", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
const word = (id: string) => inWords[limits.get(id)!]!;

describe("figures in cautions are the catalogue's safety limits", () => {
  it("time out of the refrigerator", () => {
    for (const key of ["caution.cut-produce", "caution.no-refrigerator-for-cut-produce"] as const) {
      const text = english.say(key);
      expect(text).toContain(`${word("refrigerate-cut-within")} hours`);
      expect(text).toContain(`${word("refrigerate-cut-within-when-hot")} hour`);
      expect(text).toContain(`${limits.get("hot-surroundings-above")} °C`);
    }
  });
  it("what must be eaten at once", () => {
    expect(english.say("life.atOnce")).toContain(`${word("refrigerate-cut-within")} hours`);
  });
  it("cut ready-to-eat produce", () => {
    const text = english.say("caution.cut-ready-to-eat");
    expect(text).toContain(`${limits.get("controlled-cold-holding-at-most")} °C`);
    expect(text).toContain(`${word("cut-ready-to-eat-days")} days`);
  });
  it("the refrigerator", () => {
    expect(english.say("caution.refrigerator-too-warm")).toContain(
      `${limits.get("refrigerator-at-most")} °C`,
    );
  });
  it("mould on firm produce", () => {
    expect(english.say("caution.mould-firm")).toContain(`${limits.get("mould-on-firm-cut-around")} cm`);
  });
  it("garlic in oil", () => {
    expect(english.say("caution.garlic-in-oil")).toContain(`${word("garlic-in-oil-refrigerated-days")} days`);
  });
});
