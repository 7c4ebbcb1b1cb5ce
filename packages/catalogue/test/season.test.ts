import { describe, expect, it } from "vitest";
import { seasonOf } from "../src/index.js";

describe("seasons of both hemispheres", () => {
  it("moves the northern months by six for the south, over the turn of the year", () => {
    const { southern, inferred } = seasonOf({
      northern: [
        [6, 11],
        [12, 1],
      ],
    });
    expect(southern).toEqual([
      [12, 5],
      [6, 7],
    ]);
    expect(inferred).toBe(true);
  });

  it("keeps a southern season that is given, and moves nothing where it is all year", () => {
    expect(seasonOf({ northern: [[6, 8]], southern: [[1, 2]] })).toMatchObject({
      southern: [[1, 2]],
      inferred: false,
    });
    expect(seasonOf({ northern: [[1, 12]] }).inferred).toBe(false);
  });
});
