import { describe, expect, it } from "vitest";
import { happenedFrom } from "../../src/carryOn/checkHappened.js";
import { readHappened } from "../../src/carryOn/readHappened.js";
import { accountContext } from "./accountContext.js";

describe("what was frozen or given away, and days that are told once", () => {
  it.each<[string, Record<string, unknown>[]]>([
    ["froze the spinach", [{ lot: "lot-2", frozen: "all" }]],
    ["we froze 100 g spinach yesterday", [{ lot: "spinach", frozen: { grams: 100 } }]],
    ["put the spinach in the freezer", [{ lot: "lot-2", frozen: "all" }]],
    ["moved half the kale to the freezer", [{ lot: "kale", frozen: { share: 0.5 } }]],
    ["the spinach is in the freezer", [{ lot: "lot-2", frozen: "all" }]],
    ["congelé las espinacas", [{ lot: "spinach", frozen: "all" }]],
    ["metí la espinaca al congelador", [{ lot: "spinach", frozen: "all" }]],
    ["las espinacas están congeladas", [{ lot: "spinach", frozen: "all" }]],
    ["donated 2 apples", [{ lot: "apple", givenAway: { pieces: 2 } }]],
    ["le di 2 tomates a mi vecina", [{ lot: "tomato", givenAway: { pieces: 2 } }]],
    ["yesterday we cut the melon", [{ lot: "cantaloupe", cut: "2026-06-15" }]],
    ["ayer corté el melón", [{ lot: "cantaloupe", cut: "2026-06-15" }]],
    [
      "2 days ago I cut the melon and sliced the tomatoes",
      [
        { lot: "cantaloupe", cut: "2026-06-14" },
        { lot: "tomato", cut: "2026-06-14" },
      ],
    ],
    [
      "cut melon and sliced tomatoes 3 days ago",
      [
        { lot: "cantaloupe", cut: "2026-06-13" },
        { lot: "tomato", cut: "2026-06-13" },
      ],
    ],
    [
      "corté el melón y rebané los tomates hace 3 días",
      [
        { lot: "cantaloupe", cut: "2026-06-13" },
        { lot: "tomato", cut: "2026-06-13" },
      ],
    ],
    [
      "cut the melon, sliced the tomatoes and chopped the kale yesterday",
      [
        { lot: "cantaloupe", cut: "2026-06-15" },
        { lot: "tomato", cut: "2026-06-15" },
        { lot: "kale", cut: "2026-06-15" },
      ],
    ],
    [
      "cut the melon 3 days ago and sliced the tomatoes",
      [
        { lot: "cantaloupe", cut: "2026-06-13" },
        { lot: "tomato", cut: "day not told" },
      ],
    ],
    [
      "cut the melon; sliced the tomatoes 3 days ago",
      [
        { lot: "cantaloupe", cut: "day not told" },
        { lot: "tomato", cut: "2026-06-13" },
      ],
    ],
  ])("is understood: “%s”", (text, expected) => {
    const read = readHappened(text, accountContext);
    expect(read.lots).toMatchObject(expected);
    expect(read.lots).toHaveLength(expected.length);
    expect(() => happenedFrom(read)).not.toThrow();
  });
});
