import { catalogue } from "@keepwright/catalogue";
import { answerItem, handoutContext, itemText, itemView } from "@keepwright/handout";
import { ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";

const kitchen = ordinaryKitchens.ordinary;
const middle = (one: { low: number; high: number }) => Math.sqrt(one.low * one.high);

describe("an answer about one kind", () => {
  it("gives respiration and ethylene as the catalogue's own figures where it has them", () => {
    const broccoli = catalogue().commodities.get("broccoli")!;
    const published = broccoli.respiration.find(({ temperature }) => temperature === 0)!;
    const answer = answerItem(catalogue(), "broccoli", kitchen, { temperature: 0 });
    expect(answer.respiration.value).toBeCloseTo(middle(published), 6);
    expect(answer.conditions.relativeHumidity.value).toBe(
      (broccoli.storage.relativeHumidity.low + broccoli.storage.relativeHumidity.high) / 2,
    );
    expect(answer.conditions.ethylene.value).toBe(0.06);
  });

  it("names every source it stands on, by its citation", () => {
    const { sources } = answerItem(catalogue(), "carrot", kitchen);
    for (const { source, citation } of sources) {
      expect(citation).toBe(catalogue().sources.get(source)?.citation);
    }
    expect(new Set(sources.map(({ figure }) => figure))).toContain("life");
  });

  it("puts each sort of place once, longest life first, and the best place among the kitchen's own", () => {
    const { places, belongs } = answerItem(catalogue(), "spinach", kitchen);
    const kinds = places.map(({ stays }) => stays[0]?.placeKind);
    expect(new Set(kinds).size).toBe(kinds.length);
    const lives = places.map(({ life }) => life.middle);
    expect(lives).toEqual([...lives].sort((one, other) => other - one));
    expect(belongs.life.middle).toBeGreaterThan(0.9 * lives[0]!);
    expect(kitchen.places.map(({ id }) => id)).toContain(belongs.stays[0]?.place);
  });

  it("tells every place with its wrap, the price in the eating, and where it never gets ripe", () => {
    const context = handoutContext(catalogue());
    const lines = (id: string) => itemView(context, answerItem(catalogue(), id, kitchen));
    for (const line of lines("sweet-pepper").elsewhere)
      expect(line).toMatch(/^[\w ,]+ \(in a bag with holes\): /);
    expect(lines("potato").elsewhere.join("\n")).toMatch(
      /^Refrigerator shelves .*The eating suffers: a sweet taste\.$/m,
    );
    expect(lines("tomato").elsewhere.join("\n")).toMatch(/^Refrigerator shelves .*: no ripening there; /m);
  });

  it("gives no task that contradicts how it is kept where it belongs", () => {
    for (const id of ["banana", "asparagus", "onion"]) {
      const { belongs, preparation } = answerItem(catalogue(), id, kitchen);
      const ripens = belongs.stays.some(({ moveWhen }) => moveWhen === "ripe");
      const watered = belongs.stays.some(({ wrap }) => wrap === "glass of water" || wrap === "damp towel");
      if (ripens) expect(preparation).not.toContain("wrap crown");
      expect(preparation.includes("trim stem ends")).toBe(id === "asparagus" && watered);
    }
  });

  it("says at once where a kind nobody knows is missing", () => {
    expect(() => answerItem(catalogue(), "zorbulon", kitchen)).toThrow(/zorbulon/);
  });

  it("reads as text with conditions as they were asked about", () => {
    const context = handoutContext(catalogue());
    const answer = answerItem(catalogue(), "potato", kitchen, { temperature: 7.5, ethylene: 0.125 });
    const text = itemText(context, itemView(context, answer));
    expect(text).toMatch(/^Potatoes\n/);
    expect(text).toMatch(/At 7\.5 °C, \d+% humidity, 0\.125 µL\/L/);
    expect(text).toMatch(/local food-safety authority/);
    expect(text).not.toMatch(/undefined|NaN|\{/);
  });
});
