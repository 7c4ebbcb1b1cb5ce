import { describe, expect, it } from "vitest";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { construct } from "../../src/search/construct.js";
import { moveGivers } from "../../src/search/givers.js";
import { lastPlace } from "../../src/search/goings.js";
import { descend, finish } from "../../src/search/improve.js";
import { prepare } from "../../src/search/prepare.js";
import { Search } from "../../src/search/search.js";
import { bound, lot } from "../support.js";

/** An invented winter box for a kitchen with a cellar, gone downhill from the first arrangement: the apples lie in a drawer and drive roots into the cellar. */
function winterBox() {
  const problem = bound(
    [
      lot("potato", 2000),
      lot("carrot", 1000),
      lot("beet", 400, { tops: true }),
      lot("celeriac", 600),
      lot("parsnip", 240),
      lot("cabbage", 714),
      lot("leek", 600),
      lot("winter-squash", 1200),
      lot("brussels-sprouts", 500),
      lot("apple", 1000, { pieces: 5 }),
      lot("pear", 712, { pieces: 4, ripeness: "unripe" }),
      lot("onion", 900),
    ],
    ordinaryKitchens.cellar,
    { people: 2, days: 14 },
  );
  const prepared = prepare(problem);
  const search = new Search(prepared, construct(prepared));
  descend(search);
  finish(search);
  return { problem, search };
}

describe("what gives off ripening gas", () => {
  it("changes places with all that lies elsewhere, which going downhill does not find", () => {
    const { problem, search } = winterBox();
    const before = search.current;
    const found = moveGivers(search, before);
    expect(found.objective.total).toBeLessThan(0.95 * before.objective.total);
    const cold = (commodity: string): boolean => {
      const part = found.choice.parts.find((one) => problem.lots[one.lot]!.commodity.id === commodity)!;
      return problem.places[lastPlace(part)]!.cold;
    };
    expect(cold("apple")).toBe(false);
    expect(cold("carrot")).toBe(true);
    expect(cold("parsnip")).toBe(true);
  });

  it("is left where it lies once nothing is estimated to gain", () => {
    const { search } = winterBox();
    const once = moveGivers(search, search.current);
    const again = moveGivers(search, once);
    expect(again).toBe(once);
  });
});
