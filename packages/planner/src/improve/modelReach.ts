import { carriedFrom, publicationSpread } from "@keepwright/physics";
import { normalNinetiethPercentile } from "@keepwright/quantities";
import { costsOfPart, eatingTerms } from "../search/evaluate.js";
import { longestNamed } from "../search/plannedLots.js";
import type { Planned } from "./planned.js";

/** Parts of one kind, by their index in a plan's choice. */
const partsOf = ({ prepared, evaluation }: Planned, kind: string): number[] =>
  evaluation.choice.parts.flatMap(({ lot }, index) =>
    prepared.problem.lots[lot]!.commodity.id === kind ? [index] : [],
  );

/**
 * Waste [g] of a kind in a plan that is followed as it stands, if the kind's lives were longer by a factor of e^`error`.
 *
 * @param known standard deviation of ln(life) [1] that the error was drawn from, and so is no longer unknown
 */
function wasteIf(planned: Planned, kind: string, error: number, known: number): number {
  const { prepared, evaluation } = planned;
  return partsOf(planned, kind).reduce((sum, index) => {
    const part = evaluation.choice.parts[index]!;
    const outcome = evaluation.outcomes[index]!;
    const all = prepared.spread(part.lot, part.programme);
    const rest = Math.sqrt(Math.max(0, all ** 2 - known ** 2));
    const costs = costsOfPart(prepared, part, { ...outcome, endDay: outcome.endDay * Math.exp(error) }, rest);
    const { eaten, left } = evaluation.eating;
    const { gramsPerPortion } = prepared.problem.lots[part.lot]!;
    return sum + eatingTerms(costs, eaten[index]!, left[index]!, gramsPerPortion).waste;
  }, 0);
}

/** Mean life of a kind's portions in a plan [d]; NaN where it has none. */
function meanLife(planned: Planned, kind: string): number {
  const { choice, outcomes } = planned.evaluation;
  const parts = partsOf(planned, kind);
  const portions = parts.reduce((sum, index) => sum + choice.parts[index]!.portions, 0);
  const days = parts.reduce(
    (sum, index) => sum + choice.parts[index]!.portions * Math.min(outcomes[index]!.endDay, longestNamed),
    0,
  );
  return days / portions;
}

/** How far a gain may lie from the one expected, in 80 % of cases [g]: below it and above it. */
export interface Reach {
  readonly below: number;
  readonly above: number;
}

/** Causes that have nothing to do with each other, together. */
const together = (reaches: readonly Reach[]): Reach => ({
  below: Math.hypot(...reaches.map(({ below }) => below)),
  above: Math.hypot(...reaches.map(({ above }) => above)),
});

/** How far a quantity goes from what it is expected to be when an error of this standard deviation is at its 10 % and 90 %. */
function reachOf(expected: number, at: (error: number) => number, deviation: number): Reach {
  const error = normalNinetiethPercentile * deviation;
  const ends = [at(error), at(-error)];
  return {
    below: Math.max(0, expected - Math.min(...ends)),
    above: Math.max(0, Math.max(...ends) - expected),
  };
}

function reachOfKind(before: Planned, after: Planned, kind: string): Reach {
  const { betweenReports, perCarried } = publicationSpread;
  const carried = perCarried * carriedFrom(meanLife(after, kind), meanLife(before, kind));
  const gain = (error: number, known: number): number =>
    wasteIf(before, kind, error, known) - wasteIf(after, kind, error, known);
  const now = wasteIf(before, kind, 0, 0);
  const expected = gain(0, 0);
  return together([
    reachOf(expected, (error) => gain(error, betweenReports), betweenReports),
    reachOf(expected, (error) => now - wasteIf(after, kind, error, carried), carried),
  ]);
}

/**
 * How far a gain may lie from the one expected, for what is not known of the lives. What publications on a kind disagree on is the same error with and
 * without the change; the model's own error in carrying a life to other air grows with how far the change carries it (`publicationSpread`). Kinds and
 * causes are independent. Both plans are followed as they stand: nobody knows the error beforehand. Lots of a kind differ too, but a gain is a mean over them.
 */
export function modelReach(before: Planned, after: Planned): Reach {
  const kinds = new Set(
    [before, after].flatMap(({ prepared }) => prepared.problem.lots.map(({ commodity }) => commodity.id)),
  );
  return together([...kinds].map((kind) => reachOfKind(before, after, kind)));
}
