import { checkHaul } from "../problem/checkHaul.js";
import { householdFrom } from "../problem/checkHousehold.js";
import { kitchenFrom } from "../problem/checkKitchen.js";
import { HaulError } from "../problem/inputError.js";
import type { PlanRequest } from "../problem/problem.js";
import { shownValue } from "../problem/schemaFindings.js";
import type { Wished } from "./basket.js";
import { wishOf } from "./boughtUnit.js";
import { buyingRule } from "./declared.js";

/** What is asked before shopping: a plan's request with what is wished for in place of what came home. */
export interface BuyingRequest extends Omit<PlanRequest, "haul"> {
  /** Lots as in a haul: what would be bought if there were no waste. */
  readonly wished: unknown;
  /** Least step of weight for what is bought loose [g], 1 to 5000. Absent: 100. */
  readonly stepGrams?: number;
}

const mostStep = 5000;

function checkedStep(stepGrams: number): number {
  if (Number.isFinite(stepGrams) && stepGrams >= 1 && stepGrams <= mostStep) return stepGrams;
  throw new HaulError([
    {
      thing: "step of weight",
      value: `${stepGrams} g`,
      remedy: `Give a number of grams from 1 to ${mostStep}.`,
    },
  ]);
}

/** Checks a request and takes every wish apart into units. Throws KitchenError, HaulError or HouseholdError. */
export function wishedFrom(asked: BuyingRequest): Wished {
  const { wished, stepGrams = buyingRule.stepGrams, ...rest } = asked;
  const kitchen = kitchenFrom(asked.kitchen);
  const step = checkedStep(stepGrams);
  const check = checkHaul(wished, asked.catalogue);
  if (!check.ok) {
    throw new HaulError(
      check.problems.map((one) => ({ ...one, thing: one.thing.replace(/^haul/, "wished list") })),
    );
  }
  const atHome = check.haul.lots.filter(({ carried }) => carried !== undefined);
  if (atHome.length > 0) {
    throw new HaulError(
      atHome.map(({ id }) => ({
        thing: `wished list, lot ${shownValue(id)}`,
        value: "it is at home already, carried over from an earlier plan",
        remedy: "Leave it out of the list.",
      })),
    );
  }
  const household = householdFrom(asked.household);
  return {
    request: { ...rest, kitchen, household, haul: check.haul },
    wishes: check.haul.lots.map((lot) => wishOf(lot, asked.catalogue, step)),
  };
}
