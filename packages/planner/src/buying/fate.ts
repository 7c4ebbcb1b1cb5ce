import type { Evaluation } from "../search/evaluate.js";
import type { Prepared } from "../search/prepare.js";
import { buyingRule } from "./declared.js";

/** What is expected to become of some produce [g]: eaten before it is past its best, past its best by then, or left over and still good. */
export interface Fate {
  readonly eaten: number;
  readonly wasted: number;
  readonly left: number;
}

export const noFate: Fate = { eaten: 0, wasted: 0, left: 0 };

export const fatesTogether = (fates: readonly Fate[]): Fate => ({
  eaten: fates.reduce((sum, one) => sum + one.eaten, 0),
  wasted: fates.reduce((sum, one) => sum + one.wasted, 0),
  left: fates.reduce((sum, one) => sum + one.left, 0),
});

/** What it is worth to have bought it [g]. */
export const worthOf = ({ eaten, wasted }: Fate): number => eaten - buyingRule.wastedAgainstEaten * wasted;

/** Portions with the same fate, of one part. */
export interface PortionFate extends Fate {
  readonly part: number;
  readonly portions: number;
}

type Judged = { readonly prepared: Prepared; readonly evaluation: Evaluation };

/** What is expected of one portion of each kind of fate in a part: eaten on some day, or left over. */
function fatesOfPart({ prepared, evaluation }: Judged, part: number): PortionFate[] {
  const { gramsPerPortion } = prepared.problem.lots[evaluation.choice.parts[part]!.lot]!;
  const { chancePast, chancePastLeft } = evaluation.costs[part]!;
  const eaten = evaluation.eating.eaten[part]!.map(
    (portions, day): PortionFate => ({
      part,
      portions,
      eaten: gramsPerPortion * (1 - chancePast[day]!),
      wasted: gramsPerPortion * chancePast[day]!,
      left: 0,
    }),
  );
  const left: PortionFate = {
    part,
    portions: evaluation.eating.left[part]!,
    eaten: 0,
    wasted: gramsPerPortion * chancePastLeft,
    left: gramsPerPortion * (1 - chancePastLeft),
  };
  return [...eaten, left].filter(({ portions }) => portions > 0);
}

/** Fates of a lot's portions, the one worth least first. */
export const fatesOfLot = (judged: Judged, lot: number): PortionFate[] =>
  judged.evaluation.choice.parts
    .flatMap((part, index) => (part.lot === lot ? fatesOfPart(judged, index) : []))
    .sort((one, other) => worthOf(one) - worthOf(other));

const times = ({ eaten, wasted, left }: Fate, portions: number): Fate => ({
  eaten: eaten * portions,
  wasted: wasted * portions,
  left: left * portions,
});

/** What is expected of the portions of a lot that are worth least. */
export function worstOf(judged: Judged, lot: number, portions: number): Fate {
  let wanted = portions;
  const taken = fatesOfLot(judged, lot).map((fate) => {
    const some = Math.min(wanted, fate.portions);
    wanted -= some;
    return times(fate, some);
  });
  return fatesTogether(taken);
}

/** What is expected of everything in a plan. */
export const fateOfAll = (judged: Judged): Fate =>
  fatesTogether(
    judged.evaluation.choice.parts.flatMap((_, part) =>
      fatesOfPart(judged, part).map((fate) => times(fate, fate.portions)),
    ),
  );
