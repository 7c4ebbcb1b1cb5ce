import { expect, test } from "vitest";
import { odourConflicts } from "../../src/index.js";

const evidence = { source: "x", place: "y", kind: "recommended", fromMemory: true } as const;
const table = [
  { giver: "onion", taker: "apple", ...evidence },
  { giver: "onion", taker: "pear", ...evidence },
  { giver: "apple", taker: "onion", ...evidence },
  { giver: "onion", taker: "apple", ...evidence },
];

test("names each giver and taker that lie together, once", () => {
  expect(odourConflicts(["apple", "onion", "carrot"], table)).toEqual([
    { giver: "onion", taker: "apple" },
    { giver: "apple", taker: "onion" },
  ]);
});
test("has nothing to say where giver and taker lie apart", () =>
  expect(odourConflicts(["pear", "apple"], table)).toEqual([]));
