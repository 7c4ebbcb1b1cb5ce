import { describe, expect, it } from "vitest";
import { neighbours } from "../../src/state/neighbours.js";

const all = ["apple", "fig", "lime", "pear", "plum"];

describe("the kinds before and after one", () => {
  it("are those of all where a search found it alone, or nothing was searched for", () => {
    expect(neighbours("lime", ["lime"], all)).toEqual({ before: "fig", after: "pear" });
    expect(neighbours("lime", [], all)).toEqual({ before: "fig", after: "pear" });
    expect(neighbours("lime", ["plum", "apple"], all)).toEqual({ before: "fig", after: "pear" });
  });
  it("are those found where there are several, and go on through all at their ends", () => {
    const found = ["plum", "apple", "lime"];
    expect(neighbours("apple", found, all)).toEqual({ before: "plum", after: "lime" });
    expect(neighbours("lime", found, all)).toEqual({ before: "apple", after: "pear" });
    expect(neighbours("plum", found, all)).toEqual({ before: "pear", after: "apple" });
  });
  it("end only where all of them end", () => {
    expect(neighbours("plum", ["plum"], all).after).toBeUndefined();
    expect(neighbours("apple", ["apple"], all).before).toBeUndefined();
  });
});
