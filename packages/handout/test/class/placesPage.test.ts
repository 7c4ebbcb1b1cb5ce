import { catalogue } from "@keepwright/catalogue";
import { documentLines } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { apartOf } from "../../src/answer/apart.js";
import { apartGroups } from "../../src/class/apartGroups.js";
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

  const items = "apple kale banana avocado potato tomato cantaloupe onion broccoli pear carrot lettuce"
    .split(" ")
    .filter((id) => known.commodities.has(id));

  it.each([
    ["English", {}, "Group", ", once ripe"],
    ["Spanish", { audience: spanish }, "Grupo", ", ya a punto"],
  ] as const)(
    "in %s lists no such pair together, before ripening and after it",
    (_, changes, group, ripe) => {
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
      expect(documentLines(page).join("\n")).toMatch(new RegExp(`${group} 2, `));
    },
  );
});
