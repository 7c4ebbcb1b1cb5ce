import { describe, expect, it } from "vitest";
import { untouchedVent } from "../../src/problem/bindKitchen.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import type { Choice } from "../../src/problem/programme.js";
import { moveGivers } from "../../src/search/givers.js";
import { lastPlace } from "../../src/search/goings.js";
import { descend } from "../../src/search/improve.js";
import { prepare } from "../../src/search/prepare.js";
import { Search } from "../../src/search/search.js";
import { bound, lot } from "../support.js";

const placeOf = (problem: ReturnType<typeof bound>, id: string): number =>
  problem.places.find(({ place }) => place.id === id)!.index;

/** Roots in the cellar because apples lie in a drawer of the refrigerator: neither gains by leaving while the other stays. */
function rootsAndApples() {
  const problem = bound(
    [lot("apple", 1000), lot("carrot", 1000), lot("parsnip", 240), lot("celeriac", 600)],
    ordinaryKitchens.cellar,
    { people: 2, days: 14 },
  );
  const [drawer, cellar] = [placeOf(problem, "left-drawer"), placeOf(problem, "cellar")];
  const choice: Choice = {
    parts: problem.lots.map(({ index, portions, commodity }) => ({
      lot: index,
      portions,
      programme: {
        leavesOff: false,
        dried: false,
        stays: [
          {
            place: commodity.id === "apple" ? drawer : cellar,
            wrap: commodity.id === "apple" ? "none" : "perforated-bag",
            until: "never",
          },
        ],
      },
    })),
    vents: problem.vents.map(() => untouchedVent),
  };
  return { problem, choice, drawer, cellar };
}

describe("what gives off ripening gas", () => {
  it("changes places with all that lies elsewhere, though none of them would gain by going alone", () => {
    const { problem, choice, cellar } = rootsAndApples();
    const search = new Search(prepare(problem), choice);
    const before = search.current;
    const found = moveGivers(search, before);
    expect(found.objective.total).toBeLessThan(0.9 * before.objective.total);
    const [apple, ...roots] = found.choice.parts;
    expect(lastPlace(apple!)).toBe(cellar);
    for (const root of roots) expect(lastPlace(root)).not.toBe(cellar);
  });

  it("stays where nothing is estimated to gain", () => {
    const { problem, choice } = rootsAndApples();
    const search = new Search(prepare(problem), choice);
    const once = moveGivers(search, search.current);
    search.goTo(once.choice);
    descend(search);
    const settled = search.current;
    expect(moveGivers(search, settled).objective.total).toBeLessThanOrEqual(settled.objective.total);
  });
});
