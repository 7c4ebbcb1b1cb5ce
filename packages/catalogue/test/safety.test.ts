import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";

// FDA Food Code, definition of time and temperature control for safety food: cut melons, cut tomatoes, cut leafy greens (secondary pages read); which leaves count:
// FDA 2010, recommendations for cut leafy greens (list from memory).
const melons = ["cantaloupe", "honeydew", "watermelon"];
const tomatoes = ["tomato", "cherry-tomato"];
const leaves = [
  "head-lettuce",
  "romaine",
  "leaf-lettuce",
  "spinach",
  "kale",
  "chard",
  "arugula",
  "cabbage",
  "endive",
];

describe("safety of cut produce", () => {
  it.each([...melons, ...tomatoes, ...leaves])("%s, cut, needs control of time and temperature", (id) => {
    expect(catalogue().commodities.get(id)?.cut.timeTemperatureControl.value).toBe(true);
  });
  it("says so for no kind without naming why", () => {
    for (const commodity of catalogue().commodities.values()) {
      expect(commodity.cut.timeTemperatureControl.place.length, commodity.id).toBeGreaterThan(10);
    }
  });
});
