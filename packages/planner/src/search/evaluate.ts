import type { LotOutcome, Trajectory } from "@keepwright/physics";
import type { Objective } from "../problem/plan.js";
import type { Choice, Part } from "../problem/programme.js";
import { occupancy, overfull } from "../rules/capacity.js";
import { choiceEffort, ventEffort } from "../rules/effort.js";
import { dailyLimit } from "../rules/portionsADay.js";
import { lastSafeDay } from "../rules/safeTime.js";
import { smellCost, type TakenSmell, takenSmells } from "../rules/smells.js";
import { weights } from "../rules/weights.js";
import { type EatingDays, eatingDays, type PartToEat } from "../schedule/eatingDays.js";
import { gramCost, type PartCosts, partCosts } from "../schedule/partCosts.js";
import type { Prepared } from "./prepare.js";

/** A choice with everything that follows from it. */
export interface Evaluation {
  readonly choice: Choice;
  /** The coupled simulation it was judged by, and what it made of each part. */
  readonly trajectory: Trajectory;
  readonly outcomes: readonly LotOutcome[];
  readonly costs: readonly PartCosts[];
  readonly eating: EatingDays;
  /** Litres taken: rows places, columns planned days. */
  readonly taken: readonly Float64Array[];
  /** Litres over the room of each place. */
  readonly over: readonly number[];
  readonly smells: readonly TakenSmell[];
  readonly objective: Objective;
}

/**
 * Costs of one part after a simulation.
 *
 * @param spread standard deviation of ln(life) [1]
 */
export function costsOfPart(
  prepared: Prepared,
  part: Part,
  outcome: LotOutcome,
  spread = prepared.spread(part.lot, part.programme),
): PartCosts {
  const { problem } = prepared;
  const lot = problem.lots[part.lot]!;
  const lastSafe = lastSafeDay(problem, lot, part.programme, outcome.stayStarts);
  const ripening = prepared.ripeningSpread(part.lot, part.programme);
  return partCosts(lot, outcome, spread, prepared.bestLife(part.lot), problem.household, lastSafe, ripening);
}

interface EatingTerms {
  readonly waste: number;
  readonly qualityLost: number;
  readonly lifeLost: number;
  readonly wishesMissed: number;
}

/** Waste, quality and life lost, and wishes missed, of one part, given when it is eaten [g]. */
export function eatingTerms(
  costs: PartCosts,
  eaten: readonly number[],
  left: number,
  gramsPerPortion: number,
): EatingTerms {
  let waste = left * costs.chancePastLeft;
  let qualityLost = left * (1 - costs.chancePastLeft) * (1 - costs.qualityLeft);
  let wishesMissed = left * costs.wishMissedLeft;
  let portions = 0;
  eaten.forEach((count, day) => {
    const chance = costs.chancePast[day]!;
    portions += count;
    wishesMissed += count * costs.wishMissed[day]!;
    waste += count * chance;
    qualityLost += count * (1 - chance) * (1 - costs.quality[day]!);
  });
  return {
    waste: waste * gramsPerPortion,
    qualityLost: qualityLost * gramsPerPortion * weights.qualityLost,
    lifeLost:
      (left * (weights.lifeLostLeft * costs.lifeLost + weights.uneatenLeft) +
        portions * weights.lifeLostEaten * costs.lifeLost) *
      gramsPerPortion,
    wishesMissed: wishesMissed * gramsPerPortion,
  };
}

/** Pieces of a lot that are safe for some days only once they are begun; nothing where no limit binds. */
function pieceOf(
  { problem, keepsOnceBegun }: Prepared,
  lot: number,
  costs: PartCosts,
): Pick<PartToEat, "piece"> {
  const keeps = keepsOnceBegun[lot]!;
  if (keeps === Number.POSITIVE_INFINITY) return {};
  const { splitUnit, gramsPerPortion } = problem.lots[lot]!;
  const thrown = 1 - gramCost(costs.chancePastLeft, costs.qualityLeft);
  return {
    piece: { size: splitUnit, keeps, costThrown: costs.costLeft + gramsPerPortion * thrown },
  };
}

const partsToEat = (prepared: Prepared, choice: Choice, costs: readonly PartCosts[]): PartToEat[] =>
  choice.parts.map((part, index) => {
    const { problem } = prepared;
    const lot = problem.lots[part.lot]!;
    return {
      ...pieceOf(prepared, part.lot, costs[index]!),
      group: lot.group,
      portions: part.portions,
      costs: costs[index]!.costs,
      costLeft: costs[index]!.costLeft,
      takesPlace: !lot.seasoning,
      dailyLimit: dailyLimit(lot, problem.household),
    };
  });

/** What is left of a piece that was begun is thrown away when it is no longer safe: the chance of what is left, counting that. */
function withThrown(costs: PartCosts, left: number, thrown: number): PartCosts {
  if (thrown === 0) return costs;
  return { ...costs, chancePastLeft: (thrown + (left - thrown) * costs.chancePastLeft) / left };
}

/** Portions eaten at the table above the pace at which the haul lasts, summed over the days. */
function portionsAheadOfPace({ problem, table, pace }: Prepared, choice: Choice, eating: EatingDays): number {
  const onDay = (day: number): number =>
    choice.parts.reduce((sum, part, index) => {
      const { seasoning } = problem.lots[part.lot]!;
      return sum + (seasoning ? 0 : eating.eaten[index]![day]!);
    }, 0);
  return table.reduce((sum, _, day) => sum + Math.max(0, onDay(day) - pace.portions), 0);
}

function objectiveOf(
  prepared: Prepared,
  choice: Choice,
  costs: readonly PartCosts[],
  eating: EatingDays,
  over: readonly number[],
  smells: readonly TakenSmell[],
): Objective {
  const { problem } = prepared;
  let waste = 0;
  let qualityLost = smellCost(problem, choice.parts, smells);
  let lifeLost = 0;
  let wishesMissed = 0;
  choice.parts.forEach((part, index) => {
    const { gramsPerPortion } = problem.lots[part.lot]!;
    const terms = eatingTerms(costs[index]!, eating.eaten[index]!, eating.left[index]!, gramsPerPortion);
    waste += terms.waste;
    qualityLost += terms.qualityLost;
    lifeLost += terms.lifeLost;
    wishesMissed += terms.wishesMissed;
  });
  const effort =
    choiceEffort(choice.parts, problem.lots) +
    ventEffort(problem, choice.vents) +
    portionsAheadOfPace(prepared, choice, eating) * weights.aheadOfPace;
  const overflow = over.reduce((sum, litres) => sum + litres, 0) * weights.overflowLitre;
  return {
    waste,
    qualityLost,
    lifeLost,
    effort,
    overflow,
    wishesMissed,
    total: waste + qualityLost + lifeLost + effort + overflow + wishesMissed,
  };
}

/** Judges a choice in full: the whole kitchen simulated together, exact eating days, room, smells, the objective. Without memory. */
export function evaluatePrepared(prepared: Prepared, choice: Choice): Evaluation {
  const { problem } = prepared;
  const trajectory = prepared.simulate(choice);
  const outcomes = trajectory.lots;
  const byDay = choice.parts.map((part, index) => costsOfPart(prepared, part, outcomes[index]!));
  const eating = eatingDays(partsToEat(prepared, choice, byDay), prepared.table, prepared.pace);
  const costs = byDay.map((one, index) => withThrown(one, eating.left[index]!, eating.thrown[index]!));
  const taken = occupancy(problem, choice.parts, outcomes, eating.eaten);
  const over = overfull(problem, taken);
  const smells = takenSmells(problem, choice.parts, outcomes);
  const objective = objectiveOf(prepared, choice, costs, eating, over, smells);
  return { choice, trajectory, outcomes, costs, eating, taken, over, smells, objective };
}
