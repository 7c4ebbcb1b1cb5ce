import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan, type PlanRule } from "../../src/check/index.js";
import type { Haul } from "../../src/problem/lot.js";
import type { Plan } from "../../src/problem/plan.js";
import { randomRequest } from "../cases/randomRequest.js";
import { lot, request } from "../support.js";
import { anyAccount } from "./anyAccount.js";
import { again, begin, faultsOf, later } from "./support.js";

const size = { lots: [2, 7], places: [2, 6], wraps: [1, 4], days: [5, 9] } as const;

describe("the independent checker", () => {
  it("accepts every plan carried on, and carried on again, whatever happened (any haul)", () => {
    let checked = 0;
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000 }), fc.integer({ min: 0, max: 3 }), (seed, days) => {
        const random = randomRequest(seed, size);
        let now = begin(random);
        for (const step of [1, 2]) {
          const account = anyAccount(seed + step, now.plan, random.kitchen);
          let next: ReturnType<typeof later>;
          try {
            next = later(now, days, account, { days: 5 });
          } catch (error) {
            // Nothing may be left to plan, or more said to be gone than was left.
            expect(String(error)).toMatch(
              /nothing came home|and there were|eaten by now|since when is not told/,
            );
            return;
          }
          expect(faultsOf(now, next)).toEqual([]);
          // Nobody is asked to move anything for less than a gram.
          for (const { gain } of next.changes) expect(gain?.value ?? 1).toBeGreaterThanOrEqual(1 - 1e-6);
          checked++;
          now = again(now, next);
        }
      }),
      { numRuns: 18, seed: 21, endOnFailure: true },
    );
    expect(checked).toBeGreaterThan(12);
  });

  const begun = begin(
    request(
      [
        lot("apple", 900),
        lot("kale", 300),
        lot("carrot", 700, { tops: true }),
        lot("spinach", 300, { form: "cut" }),
      ],
      undefined,
      {
        people: 1,
        portionsPerPersonPerDay: 1,
      },
    ),
  );
  const kept = ["apple", "kale", "spinach"].map((name) => ({ lot: name, eaten: "none" }));
  const after = later(begun, 4, { lots: [...kept, { lot: "kale", seenGood: true }] });
  type Mutable = { plan: Plan; haul: Haul };
  const carried = ({ haul }: Mutable, id: string) => haul.lots.find((one) => one.id === id)!.carried!;
  const part = ({ plan }: Mutable, id: string) => plan.lots.find((one) => one.lot === id)!;

  it.each<[string, PlanRule, (told: Mutable) => void]>([
    [
      "a move not paid for",
      "objective",
      (told) => Object.assign(carried(told, "apple"), { place: "counter" }),
    ],
    ["a wrap not paid for", "objective", (told) => Object.assign(carried(told, "apple"), { wrap: "foil" })],
    [
      "a vent turned for nothing",
      "objective",
      ({ haul }) => {
        const vent = haul.standing!.vents[0]!;
        vent.setting = vent.setting === "open" ? "closed" : "open";
      },
    ],
    [
      "preparation done twice",
      "preparation",
      (told) => part(told, "apple").preparation.push("wash just before use"),
    ],
    [
      "safe time set back",
      "safety limit",
      (told) => Object.assign(carried(told, "spinach"), { safeTimeUsed: 0 }),
    ],
    [
      "a life told as of what has just come home",
      "life",
      (told) => Object.assign(part(told, "apple"), { wholeLife: undefined }),
    ],
    ["days forgotten", "life", (told) => Object.assign(carried(told, "carrot"), { daysBefore: 0 })],
    [
      "seen good, and it never was",
      "life",
      (told) => Object.assign(carried(told, "kale"), { seenGoodOn: 0 }),
    ],
    [
      "another state than it was left in",
      "replayed life",
      (told) => Object.assign(carried(told, "carrot").state, { senescence: 0.5 }),
    ],
  ])("notices %s", (_, rule, change) => {
    const told: Mutable = structuredClone({ plan: after.plan, haul: after.haul });
    const household = { ...after.plan.household, days: after.plan.days };
    expect(checkPlan({ ...begun.request, ...told, household })).toEqual([]);
    change(told);
    const rules = checkPlan({ ...begun.request, ...told, household }).map((fault) => fault.rule);
    expect(rules).toContain(rule);
  });
});
