import { carriedFrom, publicationSpread, withEnd } from "@keepwright/physics";
import { normalNinetiethPercentile } from "@keepwright/quantities";
import { costsOfPart, eatingTerms } from "../search/evaluate.js";
import { longestNamed } from "../search/plannedLots.js";
import type { Followed } from "./followed.js";
import type { Planned } from "./planned.js";

/** Parts of one kind, by their index in a plan's choice. */
const partsOf = ({ prepared, evaluation }: Planned, kind: string): number[] =>
  evaluation.choice.parts.flatMap(({ lot }, index) =>
    prepared.problem.lots[lot]!.commodity.id === kind ? [index] : [],
  );

/** A figure of each plan, added up. */
const sumOver = (plans: readonly Planned[], figure: (planned: Planned) => number): number =>
  plans.reduce((sum, planned) => sum + figure(planned), 0);

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
    const longer = withEnd(outcome, outcome.endDay * Math.exp(error));
    const costs = costsOfPart(prepared, part, longer, rest);
    const { eaten, left } = evaluation.eating;
    const { gramsPerPortion } = prepared.problem.lots[part.lot]!;
    return sum + eatingTerms(costs, eaten[index]!, left[index]!, gramsPerPortion).waste;
  }, 0);
}

/** Mean life of a kind's portions [d]; NaN where there are none. */
function meanLife(plans: readonly Planned[], kind: string): number {
  const sumOfParts = (figure: (planned: Planned, part: number) => number): number =>
    sumOver(plans, (planned) => partsOf(planned, kind).reduce((sum, part) => sum + figure(planned, part), 0));
  const portionsOf = ({ evaluation }: Planned, part: number): number =>
    evaluation.choice.parts[part]!.portions;
  const days = sumOfParts(
    (planned, part) =>
      portionsOf(planned, part) * Math.min(planned.evaluation.outcomes[part]!.endDay, longestNamed),
  );
  return days / sumOfParts(portionsOf);
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

function reachOfKind(before: Followed, after: Followed, kind: string): Reach {
  const { betweenReports, perCarried } = publicationSpread;
  const carried = perCarried * carriedFrom(meanLife(after.plans, kind), meanLife(before.plans, kind));
  const waste = ({ plans }: Followed, error: number, known: number): number =>
    sumOver(plans, (planned) => wasteIf(planned, kind, error, known));
  const gain = (error: number, known: number): number =>
    waste(before, error, known) - waste(after, error, known);
  const now = waste(before, 0, 0);
  const expected = gain(0, 0);
  return together([
    reachOf(expected, (error) => gain(error, betweenReports), betweenReports),
    reachOf(expected, (error) => now - waste(after, error, carried), carried),
  ]);
}

/**
 * How far a gain may lie from the one expected, for what is not known of the lives. What publications on a kind disagree on is the same error with and
 * without the change; the model's own error in carrying a life to other air grows with how far the change carries it (`publicationSpread`). Kinds and
 * causes are independent. Plans are followed as they stand: nobody knows the error beforehand. Lots of a kind differ too, but a gain is a mean over them.
 */
export function modelReach(before: Followed, after: Followed): Reach {
  const kinds = new Set(
    [...before.plans, ...after.plans].flatMap(({ prepared }) =>
      prepared.problem.lots.map(({ commodity }) => commodity.id),
    ),
  );
  return together([...kinds].map((kind) => reachOfKind(before, after, kind)));
}
