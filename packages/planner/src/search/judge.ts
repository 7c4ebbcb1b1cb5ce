import { type JudgedLot, judgeChange, type LotChange, type LotOutcome } from "@keepwright/physics";
import type { Problem } from "../problem/problem.js";
import type { Part } from "../problem/programme.js";
import { simulatedPart } from "../problem/simulationOf.js";
import { sum } from "../problem/sum.js";
import { programmeEffort } from "../rules/effort.js";
import { dailyLimit } from "../rules/portionsADay.js";
import { smellCost, takenSmells } from "../rules/smells.js";
import { weights } from "../rules/weights.js";
import type { PartCosts } from "../schedule/partCosts.js";
import { pricedCost } from "../schedule/pricedCost.js";
import { costsOfPart, type Evaluation } from "./evaluate.js";
import type { Prepared } from "./prepare.js";
import { RememberedEstimates } from "./rememberedEstimates.js";
import { litresOver } from "./roomChange.js";
import { isSmall } from "./smallCase.js";

/** A part that is changed, taken away (`to` absent), or new; a new one is eaten like the part `like`. */
export interface PartChange {
  readonly part: number | "new";
  readonly like: number;
  readonly to?: Part;
}

/** Estimated change of the objective [g]: apart from want of room, and by it. */
export interface EstimatedChange {
  readonly cost: number;
  readonly overflow: number;
}

/**
 * Judges a change without simulating and scheduling everything again: the changed parts are followed in the air of the
 * others, those they touch are corrected (physics' `judgeChange`), and the table's dual prices stand for the eating days.
 */
export class Judge {
  readonly #prepared: Prepared;
  readonly #free: Float64Array;
  /** Costs worked out for the change at hand, by the number `judgeChange` gives a part. */
  readonly #costs: ({ readonly of: LotOutcome; readonly costs: PartCosts } | undefined)[] = [];
  readonly #remembered: RememberedEstimates;
  readonly #priced = new WeakMap<Evaluation, Float64Array>();

  constructor(prepared: Prepared) {
    this.#prepared = prepared;
    this.#remembered = new RememberedEstimates(prepared);
    this.#free = new Float64Array(prepared.table.length);
  }

  /**
   * @param most cost of the changed parts by themselves, effort included [g], from which a change is not worth knowing more of: what it does to
   * others is left out then, and all it costs above `most` is given as its cost
   */
  estimate(current: Evaluation, changes: readonly PartChange[], most = beyondAnyCost): EstimatedChange {
    if (isSmall(this.#prepared.problem)) return this.consider(current, changes, most);
    const key = this.#remembered.key(current, changes);
    const known = this.#remembered.find(key, current, changes);
    if (known) {
      const cost = this.#ownChange(current, changes, known.costs) + known.toOthers;
      // What would be a gain is looked at anew.
      if (cost >= 0) return { cost, overflow: this.#overflowChange(current, changes, known.outcomes) };
    }
    const { judged, cost, overflow } = this.consider(current, changes, most);
    const outcomes = outcomesOf(current, changes, judged);
    const costs = this.#costsOfChanged(current, changes, outcomes);
    const toOthers = cost - this.#ownChange(current, changes, costs);
    this.#remembered.keep(key, { outcomes, costs, toOthers, air: current.trajectory.inner.air });
    return { cost, overflow };
  }

  /** Change of what the changed parts cost by themselves at the table's present prices, effort included. */
  #ownChange(current: Evaluation, changes: readonly PartChange[], costs: readonly PartCosts[]): number {
    let change = effortChange(this.#prepared.problem, current, changes);
    let index = 0;
    for (const { part, to } of changes) {
      if (part !== "new") change -= this.priceNow(current, part);
      if (to) change += this.price(current, to, costs[index++]!);
    }
    return change;
  }

  #overflowChange(
    current: Evaluation,
    changes: readonly PartChange[],
    outcomes: readonly LotOutcome[],
  ): number {
    const over = litresOver(this.#prepared, current, changes, outcomes);
    return (over - sum(current.over)) * weights.overflowLitre;
  }

  /** The estimate, with what becomes of every part the change touches. */
  consider(
    current: Evaluation,
    changes: readonly PartChange[],
    most = beyondAnyCost,
  ): EstimatedChange & { judged: JudgedLot[] } {
    const { problem } = this.#prepared;
    const parts = changedParts(current, changes);
    this.#costs.length = 0;
    let own = 0;
    const judged = judgeChange(
      current.trajectory,
      changes.map(({ part, to }): LotChange => {
        const lot = to && simulatedPart(problem, problem.lots[to.lot]!, to.portions, to.programme);
        return { lot: part, to: lot };
      }),
      {
        daily: true,
        sameLife: hardly,
        worthKnowing: (changed) => {
          own = most < beyondAnyCost ? this.#ownCost(current, parts, changed) : 0;
          return own < most;
        },
      },
    );
    const overflow = this.#overflowChange(current, changes, outcomesOf(current, changes, judged));
    if (own >= most) return { judged, cost: own - most, overflow };
    const cost =
      this.#eatingChange(current, changes, parts, judged) +
      effortChange(problem, current, changes) +
      this.#smellChange(current, changes, parts, judged);
    return { judged, cost, overflow };
  }

  /** What changed parts cost by themselves, at the table's present prices, effort included. */
  #ownCost(current: Evaluation, parts: readonly (Part | undefined)[], changed: readonly JudgedLot[]): number {
    return changed.reduce((cost, { lot, outcome }) => {
      const part = parts[lot]!;
      const price = this.price(current, part, this.#costsOf(lot, part, outcome));
      return cost + price + programmeEffort(part.programme, this.#prepared.problem.lots[part.lot]);
    }, 0);
  }

  #costsOf(lot: number, part: Part, outcome: LotOutcome): PartCosts {
    const known = this.#costs[lot];
    if (known?.of === outcome) return known.costs;
    const costs = costsOfPart(this.#prepared, part, outcome);
    this.#costs[lot] = { of: outcome, costs };
    return costs;
  }

  /** Costs of each changed part that stays, in the order of the changes. */
  #costsOfChanged(
    current: Evaluation,
    changes: readonly PartChange[],
    outcomes: readonly LotOutcome[],
  ): PartCosts[] {
    let next = current.choice.parts.length;
    const costs: PartCosts[] = [];
    for (const { part, to } of changes) {
      const lot = part === "new" ? next++ : part;
      if (to) costs.push(this.#costsOf(lot, to, outcomes[costs.length]!));
    }
    return costs;
  }

  /** Cost of a part by itself, at the table's present prices. */
  price(current: Evaluation, part: Part, costs: Pick<PartCosts, "costs" | "costLeft">): number {
    const { problem } = this.#prepared;
    const lot = problem.lots[part.lot]!;
    const prices = lot.seasoning ? this.#free : current.eating.dayPrices;
    return pricedCost(part.portions, costs.costs, costs.costLeft, prices, dailyLimit(lot, problem.household));
  }

  /** The same of a part as it is now. */
  priceNow(current: Evaluation, index: number): number {
    let known = this.#priced.get(current);
    if (!known) {
      known = Float64Array.from(current.choice.parts, (part, at) =>
        this.price(current, part, current.costs[at]!),
      );
      this.#priced.set(current, known);
    }
    return known[index]!;
  }

  #eatingChange(
    current: Evaluation,
    changes: readonly PartChange[],
    parts: readonly (Part | undefined)[],
    judged: readonly JudgedLot[],
  ): number {
    let change = 0;
    for (const { part, to } of changes) {
      if (part !== "new" && !to) change -= this.priceNow(current, part);
    }
    for (const { lot, outcome, followed } of judged) {
      const part = parts[lot]!;
      if (!followed && hardlyShifted(current.outcomes[lot]!.endDay, outcome.endDay)) continue;
      change += this.price(current, part, this.#costsOf(lot, part, outcome));
      if (lot < current.choice.parts.length) change -= this.priceNow(current, lot);
    }
    return change;
  }

  #smellChange(
    current: Evaluation,
    changes: readonly PartChange[],
    parts: readonly (Part | undefined)[],
    judged: readonly JudgedLot[],
  ): number {
    const { problem, smelling } = this.#prepared;
    const lots = changes.map(({ like }) => problem.lots[current.choice.parts[like]!.lot]!);
    if (!lots.some(({ produce }) => smelling.has(produce.id))) return 0;
    const outcomes = [...current.outcomes];
    for (const { lot, outcome } of judged) outcomes[lot] = outcome;
    const present = parts.flatMap((part, index) => (part ? [{ part, outcome: outcomes[index]! }] : []));
    const after = present.map(({ part }) => part);
    const smells = takenSmells(
      problem,
      after,
      present.map(({ outcome }) => outcome),
    );
    return smellCost(problem, after, smells) - smellCost(problem, current.choice.parts, current.smells);
  }
}

/** More than any change of a few parts can cost [g]: nothing is ruled out. */
export const beyondAnyCost = 1e9;

/** What becomes of each changed part that stays, in the order of the changes. */
function outcomesOf(
  current: Evaluation,
  changes: readonly PartChange[],
  judged: readonly JudgedLot[],
): LotOutcome[] {
  let next = current.choice.parts.length;
  return changes.flatMap(({ part, to }) => {
    const index = part === "new" ? next++ : part;
    return to ? [judged.find(({ lot }) => lot === index)!.outcome] : [];
  });
}

/** Shift of a life, as a share, too small to change what it costs by more than its rounding. */
const hardly = 3e-4;

const hardlyShifted = (before: number, after: number): boolean => Math.abs(after - before) < hardly * before;

/** Parts after the changes, numbered as `judgeChange` numbers them; nothing where one was taken away. */
function changedParts(current: Evaluation, changes: readonly PartChange[]): (Part | undefined)[] {
  const parts: (Part | undefined)[] = [...current.choice.parts];
  for (const { part, to } of changes) {
    if (part === "new") parts.push(to);
    else parts[part] = to;
  }
  return parts;
}

function effortChange({ lots }: Problem, current: Evaluation, changes: readonly PartChange[]): number {
  const effort = ({ lot, programme }: Part): number => programmeEffort(programme, lots[lot]);
  let change = 0;
  for (const { part, to } of changes) {
    if (part !== "new") change -= effort(current.choice.parts[part]!);
    if (to) change += effort(to);
    if (part === "new") change += weights.split;
    else if (!to) change -= weights.split;
  }
  return change;
}
