import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { type CheckRequest, checkPlan } from "../../src/check/index.js";
import { handMadeKitchen } from "./handMadeKitchen.js";
import { handMadeHaul, handMadeHousehold } from "./handMadeParts.js";
import { handMadePlan } from "./handMadePlan.js";
import { mutations } from "./mutations/index.js";

const plan = handMadePlan();
const request = (): CheckRequest & { plan: typeof plan } => ({
  plan: structuredClone(plan),
  haul: structuredClone(handMadeHaul),
  kitchen: structuredClone(handMadeKitchen),
  household: structuredClone(handMadeHousehold),
  catalogue: catalogue(),
});

describe("checkPlan", () => {
  it("finds nothing wrong with a valid plan made by hand", () => {
    expect(checkPlan(request())).toEqual([]);
  });

  it.each(mutations)("finds $rule when $what", ({ rule, change }) => {
    const broken = request();
    change(broken.plan, broken);
    const faults = checkPlan(broken);
    expect(faults.map((fault) => fault.rule)).toContain(rule);
  });

  it("says what was found, what it should have been, and in which unit", () => {
    const broken = request();
    broken.plan.lots[0]!.grams += 100;
    expect(checkPlan(broken)).toContainEqual({
      rule: "grams",
      what: "apples",
      value: 1192,
      limit: 1092,
      unit: "g",
    });
  });
});
