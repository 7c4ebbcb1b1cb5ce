import { type Basket, everything, isEmpty, requestFor, type Wished } from "../../src/buying/basket.js";
import { fateOfAll, worthOf } from "../../src/buying/fate.js";
import { planned } from "../../src/improve/planned.js";
import { everyWay } from "../cases/exhaustive.js";

/** Every basket of a wished list with its worth [g] in a plan of its own; one that does not fit is worth nothing. */
export function everyBasket(wished: Wished): { basket: Basket; worth: number }[] {
  const counts = everything(wished).map((count) => Array.from({ length: count + 1 }, (_, units) => units));
  return [...everyWay(counts)].map((basket) => {
    if (isEmpty(basket)) return { basket, worth: 0 };
    const plan = planned(requestFor(wished, basket), 1);
    const worth = plan.evaluation.objective.overflow > 0 ? 0 : worthOf(fateOfAll(plan));
    return { basket, worth };
  });
}
