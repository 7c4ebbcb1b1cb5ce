import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { readLines } from "../../src/state/readLines.js";
import { firstDay, missedKey, sinceThen } from "../../src/state/sinceThen.js";

const read = (text: string) => readLines(text, {}, catalogue());
const began = (text: string, today: string, state: Partial<Parameters<typeof sinceThen>[0]> = {}) =>
  sinceThen({ from: "2026-06-13", before: [], missed: [], days: 10, ...state }, read(text), today, read);
const kinds = (lots: readonly { readonly commodity: string }[]) => lots.map(({ commodity }) => commodity);

describe("what went by since a list came home", () => {
  it("is nothing on its first day, for a list of whatever day it is, and once the plan is over", () => {
    expect(began("2 kg apples", "2026-06-13")).toMatchObject({ from: "2026-06-13", since: undefined });
    expect(began("2 kg apples", "2026-06-15", { from: "today" })).toMatchObject({ from: "2026-06-15" });
    expect(began("2 kg apples", "2026-06-23")).toMatchObject({ from: "2026-06-13", since: undefined });
    expect(firstDay({ from: "2026-06-20" }, "2026-06-13")).toBe("2026-06-13");
  });

  it("has what was added later come home on its own day, older by the days since", () => {
    const before = [{ day: "2026-06-14", text: "2 kg apples" }];
    const { lots, since } = began("2 kg apples\n1 kg spinach", "2026-06-16", { before });
    expect(kinds(lots)).toEqual(["apple"]);
    expect(since?.cameHome.map(({ commodity, extraDays }) => [commodity, extraDays])).toEqual([
      ["spinach", 2],
    ]);
  });

  it("takes what stands in the place of the same kind for as old as that, and nothing cut for fresher", () => {
    const before = [{ day: "2026-06-15", text: "2 kg apples\nhalf a melon" }];
    const { lots, since } = began("1 kg apples\nhalf a cantaloupe\n1 kg apples", "2026-06-15", { before });
    expect(kinds(lots)).toContain("apple");
    expect(since?.cameHome.filter(({ commodity }) => commodity === "apple")).toHaveLength(1);
  });

  it("begins on the day the oldest thing came home, where all that was there before is gone", () => {
    const before = [{ day: "2026-06-15", text: "2 kg apples" }];
    expect(began("1 kg spinach", "2026-06-15", { before })).toMatchObject({
      from: "2026-06-15",
      since: undefined,
    });
  });

  it("knows what was not done by the line's words, a bar in them or not", () => {
    const missed = [
      missedKey("eat", "2026-06-13", "2 kg apples#0"),
      missedKey("move", "2026-06-14", "gone#0"),
    ];
    const { since } = began("2 kg apples", "2026-06-15", { missed });
    expect(since?.uneaten).toEqual([{ lot: "lot-1", date: "2026-06-13" }]);
    expect(since?.unmoved).toEqual([]);
  });

  it("knows a move of one part of a lot by the number of the part; meals are of the whole lot", () => {
    const missed = [
      missedKey("move", "2026-06-14", "2 kg apples#0/2"),
      missedKey("move", "2026-06-14", "2 kg apples#01"),
      missedKey("eat", "2026-06-13", "2 kg apples#0/2"),
    ];
    const { since } = began("2 kg apples", "2026-06-15", { missed });
    expect(since?.unmoved).toEqual([{ lot: "lot-1/2", date: "2026-06-14" }]);
    expect(since?.uneaten).toEqual([]);
  });
});
