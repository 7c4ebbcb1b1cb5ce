import { untouchedVent } from "../problem/bindKitchen.js";
import type { Choice, Part } from "../problem/programme.js";
import { presentProgrammes } from "../search/candidates.js";
import type { Evaluation } from "../search/evaluate.js";
import { descend, finish } from "../search/improve.js";
import { withProgramme } from "../search/moves.js";
import type { Prepared } from "../search/prepare.js";
import { leastGain, Search } from "../search/search.js";
import { searchPlan } from "../search/searchPlan.js";

/** Everything as it lies, with the moves that were foreseen; what came home, and what may not lie as it does, in its best place alone. */
export function presentChoice({ problem, options }: Prepared): Choice {
  const parts = problem.lots.map((lot): Part => {
    const programme = presentProgrammes(problem, lot)[0] ?? options(lot.index)[0]!.programme;
    return { lot: lot.index, portions: lot.portions, programme };
  });
  const vents = problem.vents.map((_, vent) => problem.standing?.vents[vent] ?? untouchedVent);
  return { parts, vents };
}

/** A part of a choice does what its lot would do if nothing were decided anew. */
const isLeft = ({ problem }: Prepared, part: Part): boolean => {
  const { carried } = problem.lots[part.lot]!;
  if (!carried) return true;
  const [first] = part.programme.stays;
  const { lies, remainder } = carried;
  return [lies, remainder[0]!].some(({ place, wrap }) => place === first!.place && wrap === first!.wrap);
};

/** Gain [g] below which nobody is asked to move, wrap anew or turn anything, its cost paid: no scale in a kitchen shows it. Declared preference, no source. */
const leastWorthAsking = 1;

/** Puts back, one by one, whatever is as well left where it lies; and vents as they stand. Only where next to nothing is lost by it. */
function putBack(search: Search): void {
  const { prepared } = search;
  const { problem } = prepared;
  const tries = (): Choice[] => {
    const { choice } = search.current;
    const parts = choice.parts.flatMap((part, index) =>
      isLeft(prepared, part)
        ? []
        : presentProgrammes(problem, problem.lots[part.lot]!).map((programme) =>
            withProgramme(choice, index, programme),
          ),
    );
    const vents = choice.vents.flatMap((setting, vent) => {
      const stood = problem.standing?.vents[vent];
      return stood === undefined || stood === setting
        ? []
        : [{ ...choice, vents: choice.vents.with(vent, stood) }];
    });
    return [...parts, ...vents];
  };
  const noWorse = (choice: Choice): boolean => {
    const { total } = search.current.objective;
    return search.evaluated(choice).objective.total <= total + leastWorthAsking;
  };
  for (let back = tries().find(noWorse); back; back = tries().find(noWorse)) search.goTo(back);
}

/**
 * The best choice found for what lies in a kitchen already and what came home: downhill from how it lies, and as for a new haul; the former where they are as good. Whatever
 * is as well left where it lies is put back at last, so that each move that is left has its gain, `leastWorthAsking` or more.
 */
export function searchFromPresent(prepared: Prepared): Evaluation {
  const present = presentChoice(prepared);
  const search = new Search(prepared, present);
  descend(search);
  finish(search);
  const near = search.current;
  const anew = searchPlan(prepared);
  const best = anew.objective.total < near.objective.total - leastGain ? anew : near;
  search.goTo(best.choice);
  putBack(search);
  return search.current;
}
