import type { Lot } from "../../src/problem/lot.js";
import type { PlanRequest } from "../../src/problem/problem.js";

/** A request like those of `randomRequest`, whose lots can be read. */
export interface HaulRequest extends PlanRequest {
  readonly haul: { readonly lots: readonly Lot[] };
}

/** The same with other lots. */
export const withLots = <Asked extends HaulRequest>(asked: Asked, lots: readonly Lot[]): Asked => ({
  ...asked,
  haul: { lots },
});

/** Invented corrections of a haul, one by one: an amount, a day, a lot that was forgotten, one that was never bought. */
export const corrections: readonly { what: string; correct: (lots: readonly Lot[]) => Lot[] }[] = [
  {
    what: "half as much again of the first",
    correct: ([first, ...rest]) => [{ ...first!, grams: Math.round(first!.grams * 1.5) }, ...rest],
  },
  {
    what: "the last is two days older",
    correct: (lots) => [...lots.slice(0, -1), { ...lots.at(-1)!, extraDays: 2 }],
  },
  { what: "another like the first", correct: (lots) => [...lots, { ...lots[0]!, id: "forgotten" }] },
  { what: "the first was not bought", correct: (lots) => (lots.length > 1 ? lots.slice(1) : [...lots]) },
];
