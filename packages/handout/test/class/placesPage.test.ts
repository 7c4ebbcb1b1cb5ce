import { catalogue } from "@keepwright/catalogue";
import { documentLines } from "@keepwright/handout";
import { mustBreathe, ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { apartOf } from "../../src/answer/apart.js";
import { apartGroups } from "../../src/class/apartGroups.js";
import { placeSpots } from "../../src/class/placeSpots.js";
import { placesDocument } from "../../src/class/placesDocument.js";
import { contextOf, everyKind, spanish } from "./support.js";

const known = catalogue();
const listed = new Map(
  everyKind.map((id) => [
    id,
    new Set(apartOf(known.commodities.get(id)!, known).flatMap((one) => one.kinds)),
  ]),
);
const forbidden = (one: string, other: string) => listed.get(one)!.has(other) || listed.get(other)!.has(one);

const items = "apple kale banana avocado potato tomato cantaloupe onion broccoli pear carrot lettuce"
  .split(" ")
  .filter((id) => known.commodities.has(id));

describe("the page of places", () => {
  it("puts no two kinds of the whole catalogue in one group that an answer wants apart", () => {
    const groups = apartGroups({ catalogue: known }, everyKind);
    expect(groups.flat().sort()).toEqual([...everyKind].sort());
    expect(groups.length).toBeGreaterThan(1);
    const together = groups.flatMap((group) =>
      group.flatMap((one) =>
        group.filter((other) => forbidden(one, other)).map((other) => `${one} ${other}`),
      ),
    );
    expect(together).toEqual([]);
  });

  it.each([
    ["English", {}, ", once ripe"],
    ["Spanish", { audience: spanish }, ", ya a punto"],
  ] as const)("in %s lists no such pair together, before ripening and after it", (_, changes, ripe) => {
    const context = contextOf(items, changes);
    const page = placesDocument(context);
    const kindOf = (line: string) =>
      items.find((id) => [":", ripe].some((end) => line.startsWith(context.title(id) + end)));
    const lists = page.blocks.flatMap((block) =>
      block.block === "list" ? [block.items.flatMap((line) => kindOf(line) ?? [])] : [],
    );
    for (const one of lists)
      for (const id of one) expect(one.filter((other) => forbidden(id, other))).toEqual([]);
    // Every stay of every kind stands on the page.
    const stays = items.flatMap((id) => context.answer(id).belongs.stays);
    expect(lists.flat()).toHaveLength(stays.length);
    const headings = page.blocks.flatMap((block) => (block.block === "heading" ? [block.text] : []));
    expect(new Set(headings).size).toBe(headings.length);
    expect(headings).toHaveLength(lists.length);
  });
});

describe("spots of a kitchen", () => {
  // A third of the catalogue in one kitchen, a class's worth in the others: answers take their time.
  const kitchens = Object.entries(ordinaryKitchens).map(([key, kitchen]) => {
    return [
      key,
      kitchen,
      key === "ordinary" ? everyKind.filter((_, index) => index % 3 === 0) : items,
    ] as const;
  });
  it.each(kitchens)("%s: all lies apart, each where it keeps as its answer says", (_, kitchen, kinds) => {
    const context = contextOf(kinds, {}, kitchen);
    const spots = placeSpots(context);
    const ajar = documentLines(placesDocument(context)).find((line) => line.includes("lid ajar"));
    const named = spots.map(({ place, part, box }) => `${place.id} ${part ?? ""} ${box ?? ""}`);
    expect(new Set(named).size).toBe(named.length);
    for (const { place, kinds, box, vent } of spots)
      for (const id of kinds) {
        expect(kinds.filter((other) => forbidden(id, other))).toEqual([]);
        const { stays, vents } = context.answer(id).belongs;
        const stay = stays.find(({ placeKind }) => placeKind === place.kind)!;
        const own = kitchen.places.find((one) => one.id === stay.place)!;
        // Where it lies a shelf or drawer further on, it is as warm there and the vent stands as it does at its own.
        expect(place.temperature).toBe(own.temperature);
        expect(vents.find((one) => one.place === own.id)?.setting).toBe(vent);
        if (box !== undefined && mustBreathe(known.commodities.get(id)!))
          expect(ajar, id).toContain(context.name(id));
      }
    const stays = kinds.flatMap((id) => context.answer(id).belongs.stays);
    expect(spots.flatMap((spot) => spot.kinds)).toHaveLength(stays.length);
  });

  it("are whole places where there are enough of them, parts of one where not, and boxes after that", () => {
    const spotsOf = (kinds: readonly string[]) =>
      placeSpots(contextOf(kinds)).map(({ place, part, box }) => [place.id, part, box]);
    expect(spotsOf(["tomato", "potato"])).toEqual([
      ["cupboard-upper", undefined, undefined],
      ["cupboard-lower", undefined, undefined],
    ]);
    const shelves = spotsOf(["apple", "kale", "pear", "avocado", "plum", "fig", "peach"]).filter(
      ([id]) => id === "shelf",
    );
    expect(shelves.slice(0, 3)).toEqual([
      ["shelf", "upper shelf", undefined],
      ["shelf", "middle shelf", undefined],
      ["shelf", "lower shelf", undefined],
    ]);
    expect(shelves.slice(3).map(([, , box]) => box)).toEqual(shelves.slice(3).map((_, index) => index + 1));
    expect(shelves.length).toBeGreaterThan(3);
  });
});
