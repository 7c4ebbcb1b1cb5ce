import { type Programme, programmeKey } from "../problem/programme.js";
import { programmeEffort } from "../rules/effort.js";
import { type Evaluation, evaluatePrepared } from "../search/evaluate.js";
import type { Option } from "../search/options.js";
import type { Prepared } from "../search/prepare.js";
import { searchPlan } from "../search/searchPlan.js";
import { asArranged, type BoundArrangement } from "./bindArrangement.js";

/** A fixed programme as the only option there is. */
function onlyOption({ problem, solos }: Prepared, lot: number, programme: Programme): Option {
  const { endDay, ripeDay } = solos.outcome(problem.lots[lot]!, programme);
  const [key, effort] = [programmeKey(programme), programmeEffort(programme, problem.lots[lot])];
  return { programme, key, effort, soloCost: 0, endDay, ripeDay, inAirs: { costs: undefined } };
}

/** The problem with what the arrangement says fixed. The best life to be had stays that of the whole kitchen. */
export function withFixed(prepared: Prepared, arrangement: BoundArrangement): Prepared {
  const only = new Map(
    [...arrangement.fixed].map(([lot, parts]) => [
      lot,
      parts.map(({ programme }) => onlyOption(prepared, lot, programme)),
    ]),
  );
  return {
    ...prepared,
    options: (lot) => only.get(lot) ?? prepared.options(lot),
    pinned: (choice) => asArranged(arrangement, choice),
  };
}

/**
 * The arrangement made whole and judged: lots it does not mention lie as a plan would have them beside what it says; they are searched for as in a
 * plan. Vents are as said or, where nothing is said, as nobody has touched them: how things lie now is not how they might be set.
 */
export function completed(prepared: Prepared, arrangement: BoundArrangement): Evaluation {
  if (arrangement.fixed.size < prepared.problem.lots.length)
    return searchPlan(withFixed(prepared, arrangement));
  return evaluatePrepared(prepared, asArranged(arrangement, { parts: [], vents: arrangement.vents }));
}
