import { type JudgedLot, judgeChange, type LotChange } from "@keepwright/physics";
import type { Problem } from "../problem/problem.js";
import type { Part } from "../problem/programme.js";
import { simulatedPart } from "../problem/simulationOf.js";
import { programmeEffort } from "../rules/effort.js";
import { dailyLimit } from "../rules/portionsADay.js";
import { smellCost, takenSmells } from "../rules/smells.js";
import { weights } from "../rules/weights.js";
import type { PartCosts } from "../schedule/partCosts.js";
import { pricedCost } from "../schedule/pricedCost.js";
import { costsOfPart, type Evaluation } from "./evaluate.js";
import type { Prepared } from "./prepare.js";
import { litresOver } from "./roomChange.js";

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
  readonly #priced = new WeakMap<Evaluation, Float64Array>();

  constructor(prepared: Prepared) {
    this.#prepared = prepared;
    this.#free = new Float64Array(prepared.table.length);
  }

  estimate(current: Evaluation, changes: readonly PartChange[]): EstimatedChange {
    const { cost, overflow } = this.consider(current, changes);
    return { cost, overflow };
  }

  /** The estimate, with what becomes of every part the change touches. */
  consider(current: Evaluation, changes: readonly PartChange[]): EstimatedChange & { judged: JudgedLot[] } {
    const { problem } = this.#prepared;
    const parts = changedParts(current, changes);
    const judged = judgeChange(
      current.trajectory,
      changes.map(({ part, to }): LotChange => {
        const lot = to && simulatedPart(problem, problem.lots[to.lot]!, to.portions, to.programme);
        return { lot: part, to: lot };
      }),
      { daily: true },
    );
    const cost =
      this.#eatingChange(current, changes, parts, judged) +
      effortChange(problem, current, changes) +
      this.#smellChange(current, changes, parts, judged);
    const over = litresOver(this.#prepared, current, changes, judged);
    return { judged, cost, overflow: (over - sum(current.over)) * weights.overflowLitre };
  }

  /** Cost of a part by itself, at the table's present prices. */
  price(current: Evaluation, part: Part, costs: PartCosts): number {
    const { problem } = this.#prepared;
    const lot = problem.lots[part.lot]!;
    const prices = lot.commodity.household.seasoning ? this.#free : current.eating.dayPrices;
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
      change += this.price(current, part, costsOfPart(this.#prepared, part, outcome));
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
    if (!lots.some(({ commodity }) => smelling.has(commodity.id))) return 0;
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

/** Shift of a life, as a share, too small to change what it costs by more than its rounding. */
const hardly = 3e-4;

const hardlyShifted = (before: number, after: number): boolean => Math.abs(after - before) < hardly * before;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

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
