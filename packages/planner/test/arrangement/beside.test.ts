import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/index.js";
import { kitchenFrom } from "../../src/problem/checkKitchen.js";
import { ventSettings } from "../../src/problem/kitchen.js";
import { bindProblem, type PlanRequest, type Problem } from "../../src/problem/problem.js";
import type { Programme } from "../../src/problem/programme.js";
import { allProgrammes, evaluate } from "../../src/search/evaluateChoice.js";
import { lot, request, smallKitchen } from "../support.js";
import { arrangement, judged, small } from "./support.js";

/** How a programme is written in an arrangement. */
function written({ places, lots }: Problem, index: number, { stays, leavesOff, dried }: Programme) {
  const [first, second] = stays;
  const place = (stay: number) => places[stays[stay]!.place]!.place.id;
  return {
    lot: lots[index]!.lot.id,
    place: place(0),
    wrap: first!.wrap,
    done: [...(leavesOff ? ["twist off leaves"] : []), ...(dried ? ["dry well"] : [])],
    ...(second && { later: { moveWhen: "ripe", place: place(1), wrap: second.wrap } }),
  };
}

const cases: [string, PlanRequest][] = [
  ["apples, broccoli and green bananas", small()],
  [
    "spinach that came washed, and carrots with leaves",
    small([lot("spinach", 300, { washed: true }), lot("carrot", 500, { tops: true })]),
  ],
];

describe.each(cases)("any arrangement of %s", (_, asked) => {
  const problem = bindProblem(asked);
  const programmes = allProgrammes(problem);
  const anyArrangement = fc
    .record({
      chosen: fc.tuple(...programmes.map((list) => fc.constantFrom(...list))),
      vents: fc.tuple(...problem.vents.map(() => fc.constantFrom(...ventSettings))),
    })
    .map(({ chosen, vents }) =>
      arrangement(
        chosen.map((programme, index) => written(problem, index, programme)),
        problem.vents.map((place, index) => ({
          place: problem.places[place]!.place.id,
          setting: vents[index],
        })),
      ),
    );

  it("is never better than the plan, and its figures hold for the independent checker", () => {
    const { haul, household, catalogue } = asked;
    fc.assert(
      fc.property(anyArrangement, (said) => {
        const { difference, yours } = judged(asked, said);
        expect(difference.total).toBeGreaterThanOrEqual(-1e-6);
        expect(
          checkPlan({
            plan: yours,
            haul,
            kitchen: kitchenFrom(asked.kitchen),
            household,
            catalogue,
          } as never),
        ).toEqual([]);
      }),
      { numRuns: 25, seed: 7 },
    );
  });
});

describe("a partial arrangement", () => {
  it("has the rest lie as a plan would have it: as good as every way to place it", () => {
    const lots = [lot("apple", 1500), lot("broccoli", 500)];
    const asked = request(lots, smallKitchen({ wraps: ["paper bag"] }), { people: 2 });
    const problem = bindProblem(asked);
    const { yours, notMentioned } = judged(asked, arrangement([{ lot: "apple", place: "counter" }]));
    const counter = problem.places.findIndex(({ place }) => place.id === "counter");
    const apples = {
      lot: 0,
      portions: problem.lots[0]!.portions,
      programme: {
        leavesOff: false,
        dried: false,
        stays: [{ place: counter, wrap: "none", until: "never" }],
      },
    } as const;
    const totals = allProgrammes(problem)[1]!.map((programme) => {
      const broccoli = { lot: 1, portions: problem.lots[1]!.portions, programme };
      return evaluate(problem, { parts: [apples, broccoli], vents: ["half"] }).objective.total;
    });
    expect(yours.objective.total).toBeLessThanOrEqual(Math.min(...totals) + 1e-6);
    expect(notMentioned).toEqual({
      lots: ["broccoli"],
      vents: [{ place: "left-drawer", setting: "half" }],
    });
    const apple = yours.lots.filter(({ lot: id }) => id === "apple");
    expect(apple.map(({ stays }) => stays.map(({ place, wrap }) => [place, wrap]))).toEqual([
      [["counter", "none"]],
    ]);
  });

  it("leaves what it says as it is in a large haul, room or not", () => {
    const kinds = ["apple", "broccoli", "carrot", "spinach", "tomato", "pear", "potato", "onion"];
    const asked = request(kinds.map((kind) => lot(kind, 1500)));
    const said = arrangement(
      [
        { lot: "apple", place: "door", share: 0.5 },
        { lot: "apple", place: "shelf", share: 0.5, wrap: "closed film bag" },
        { lot: "potato", place: "Refrigerator Door", wrap: "lidded box" },
      ],
      [{ place: "left-drawer", setting: "open" }],
    );
    const { yours, findings, notMentioned } = judged(asked, said);
    const lying = (id: string) =>
      yours.lots.filter((part) => part.lot === id).map(({ stays }) => `${stays[0]!.place} ${stays[0]!.wrap}`);
    expect(lying("apple")).toEqual(["door none", "shelf closed film bag"]);
    expect(lying("potato")).toEqual(["door lidded box"]);
    expect(yours.vents).toContainEqual({ place: "left-drawer", setting: "open" });
    expect(findings.filter(({ finding }) => finding === "unsuitable wrap")).toHaveLength(1);
    expect(notMentioned).toEqual({
      lots: kinds.filter((kind) => kind !== "apple" && kind !== "potato"),
      vents: [{ place: "right-drawer", setting: "half" }],
    });
  });

  it("takes vents it does not mention as nobody has touched them, whatever would suit best", () => {
    const asked = small([lot("spinach", 400), lot("carrot", 700)]);
    const said = ["spinach", "carrot"].map((id) => ({ lot: id, place: "left-drawer" }));
    const untold = judged(asked, arrangement(said));
    const total = (setting: string): number =>
      judged(asked, arrangement(said, [{ place: "left-drawer", setting }])).yours.objective.total;
    const [open, half, closed] = ["open", "half", "closed"].map(total);
    expect(untold.yours.objective.total).toBeCloseTo(half!, 9);
    expect(Math.min(open!, closed!)).toBeLessThan(half!);
    expect(untold.yours.vents).toContainEqual({ place: "left-drawer", setting: "half" });
  });

  it("takes up later moves, by day and when ripe", () => {
    const said = arrangement([
      { lot: "banana", place: "counter", later: { moveWhen: "ripe", place: "shelf" } },
      {
        lot: "apple",
        place: "counter",
        later: { moveWhen: "day", day: 3, place: "shelf", wrap: "paper bag" },
      },
    ]);
    const { yours } = judged(small(), said);
    const stays = (id: string) => yours.lots.find((part) => part.lot === id)!.stays;
    expect(stays("banana").map(({ place, moveWhen }) => [place, moveWhen])).toEqual([
      ["counter", "ripe"],
      ["shelf", undefined],
    ]);
    expect(stays("apple").map(({ place, wrap, fromDay }) => [place, wrap, fromDay])).toEqual([
      ["counter", "none", 0],
      ["shelf", "paper bag", 3],
    ]);
  });

  it("lets what is ripe already lie at once where it was to go when ripe", () => {
    const lots = [
      lot("avocado", 340, { id: "hard", ripeness: "unripe" }),
      lot("avocado", 170, { id: "soft", ripeness: "ripe" }),
    ];
    const said = arrangement([
      { lot: "avocados", place: "counter", later: { moveWhen: "ripe", place: "shelf" } },
    ]);
    const { yours } = judged(small(lots), said);
    const places = (id: string) =>
      yours.lots.find((part) => part.lot === id)!.stays.map(({ place }) => place);
    expect(places("hard")).toEqual(["counter", "shelf"]);
    expect(places("soft")).toEqual(["shelf"]);
  });
});
