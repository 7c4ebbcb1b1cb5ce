import type { BoundLot } from "../problem/bindHaul.js";
import { weights } from "../rules/weights.js";
import { type Evaluation, eatingTerms } from "../search/evaluate.js";

/** Places in the list of parts that belong to a lot. */
export const partsOf = ({ choice }: Evaluation, lot: number): number[] =>
  choice.parts.flatMap((part, index) => (part.lot === lot ? [index] : []));

/** Parts that a part takes up a smell from, by place in the list of parts. */
export const giversTo = ({ smells }: Evaluation, part: number): number[] =>
  smells.filter(({ taker }) => taker === part).map(({ giver }) => giver);

/** What a lot costs the objective by itself [g]: waste, quality and life lost, and smells taken up. */
export function ownCost(evaluation: Evaluation, { index, gramsPerPortion }: BoundLot): number {
  return partsOf(evaluation, index).reduce((sum, part) => {
    const { eating, costs, choice } = evaluation;
    const terms = eatingTerms(costs[part]!, eating.eaten[part]!, eating.left[part]!, gramsPerPortion);
    const smelly = giversTo(evaluation, part).length > 0;
    const smell = smelly ? choice.parts[part]!.portions * gramsPerPortion * weights.smellTaken : 0;
    return sum + terms.waste + terms.qualityLost + terms.lifeLost + terms.wishesMissed + smell;
  }, 0);
}
