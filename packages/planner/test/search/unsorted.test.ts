import { describe, expect, it } from "vitest";
import { unsortedChoice } from "../../src/search/unsorted.js";
import { bound, lot, smallKitchen, withPlace } from "../support.js";

const placesOf = (lots: readonly object[], kitchen: unknown) => {
  const problem = bound(lots, kitchen);
  return unsortedChoice(problem).parts.map(
    ({ lot: index, programme }) =>
      `${problem.lots[index]!.lot.id} ${problem.places[programme.stays[0]!.place]!.place.id} ${programme.stays[0]!.wrap}`,
  );
};

describe("everything in the refrigerator unsorted", () => {
  it("lies bare on the shelf while it has room, potatoes and bananas too", () => {
    expect(placesOf([lot("potato", 1000), lot("banana", 500)], smallKitchen())).toEqual([
      "potato shelf none",
      "banana shelf none",
    ]);
  });

  it("goes on to the drawer and at last to the counter when the shelf is full", () => {
    const tight = withPlace(withPlace(smallKitchen(), "shelf", { litres: 2 }), "left-drawer", { litres: 2 });
    const lots = [lot("potato", 1200), lot("carrot", 1200), lot("apple", 1200)];
    const used = placesOf(lots, tight).map((text) => text.split(" ")[1]);
    expect(used[0]).toBe("shelf");
    expect(used).toContain("left-drawer");
    expect(used.at(-1)).toBe("counter");
  });

  it("keeps cut produce in the refrigerator even when that is full", () => {
    const tight = withPlace(withPlace(smallKitchen(), "shelf", { litres: 0.1 }), "left-drawer", {
      litres: 0.1,
    });
    for (const text of placesOf([lot("cantaloupe", 900, { form: "cut" })], tight))
      expect(text).not.toContain("counter");
  });

  it("accounts for every portion", () => {
    const problem = bound([lot("cabbage", 9000), lot("avocado", 900, { pieces: 5 })], smallKitchen());
    const { parts } = unsortedChoice(problem);
    for (const { index, portions } of problem.lots) {
      expect(parts.filter((part) => part.lot === index).reduce((sum, part) => sum + part.portions, 0)).toBe(
        portions,
      );
    }
  });
});
