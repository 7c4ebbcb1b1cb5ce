import type { Choice } from "../problem/programme.js";
import { choiceKey } from "../problem/programme.js";
import { everyChoice } from "./enumerate.js";
import { type Evaluation, evaluatePrepared } from "./evaluate.js";
import { fittingStarts } from "./fittingStarts.js";
import { descend, descendWhole, settle } from "./improve.js";
import { withOtherSettings } from "./moves.js";
import type { Search } from "./search.js";
import { unsortedChoice } from "./unsorted.js";

/** Arrangements by room and lots alone gone downhill from, the best in full judgement. */
const mostFitting = 6;

/** Arrangements of whole lots from which lots are taken apart. */
const mostTakenApart = 3;

const total = ({ objective }: Evaluation): number => objective.total;
const better = (a: Evaluation, b: Evaluation): number => total(a) - total(b);

/** The different ones of some judgements, best first. */
function distinct(evaluations: readonly Evaluation[]): Evaluation[] {
  const byChoice = new Map(evaluations.map((one) => [choiceKey(one.choice), one]));
  return [...byChoice.values()].sort(better);
}

/** Goes downhill from a choice without taking lots apart, first without turning a vent where told. */
function wholeFrom(search: Search, choice: Choice, settled = false): Evaluation {
  search.goTo(choice);
  if (settled) settle(search);
  descendWhole(search);
  return search.current;
}

function thoroughlyFrom(search: Search, choice: Choice): Evaluation {
  search.goTo(choice);
  descend(search);
  return search.current;
}

/** The best of all choices, where they are few enough to be judged one by one. */
function bestOfEvery(search: Search): Evaluation[] {
  let best: Evaluation | undefined;
  for (const choice of everyChoice(search.prepared)) {
    const evaluation = evaluatePrepared(search.prepared, search.prepared.pinned(choice));
    if (best === undefined || total(evaluation) < total(best)) best = evaluation;
  }
  return best === undefined ? [] : [best];
}

/**
 * The best choice of a small case before anything is left to chance: every choice where they are few; otherwise downhill from many starts
 * with lots whole (room and lots alone, each vent turned: that pays only once others have followed), then with lots taken apart from the best of these.
 */
export function searchSmall(search: Search, constructed: Choice): Evaluation {
  const { prepared } = search;
  const [every] = bestOfEvery(search);
  if (every) return thoroughlyFrom(search, every.choice);
  const fitting = fittingStarts(prepared)
    .map((choice) => search.evaluated(choice))
    .sort(better)
    .slice(0, mostFitting);
  const whole = distinct(
    [constructed, ...fitting.map(({ choice }) => choice)].map((one) => wholeFrom(search, one)),
  );
  const { choice } = whole[0]!;
  const turned = choice.vents
    .flatMap((_, vent) => withOtherSettings(choice, vent))
    .map((one) => wholeFrom(search, one, true));
  const apart = distinct([...whole, ...turned])
    .slice(0, mostTakenApart)
    .map((one) => thoroughlyFrom(search, one.choice));
  const others = [constructed, unsortedChoice(prepared.problem)].map((one) => thoroughlyFrom(search, one));
  return distinct([...apart, ...others])[0]!;
}
