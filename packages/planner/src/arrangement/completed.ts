import { untouchedVent } from "../problem/bindKitchen.js";
import { type VentSetting, ventSettings } from "../problem/kitchen.js";
import { type Programme, programmeKey } from "../problem/programme.js";
import { type Evaluation, evaluatePrepared } from "../search/evaluate.js";
import type { Option } from "../search/options.js";
import type { Prepared } from "../search/prepare.js";
import { searchPlan } from "../search/searchPlan.js";
import { asArranged, type BoundArrangement } from "./bindArrangement.js";

/** Settings of the vents looked at one by one, at most: five vents that can be set. */
const mostSettings = 243;

/** A fixed programme as the only option there is. */
function onlyOption({ problem, solos }: Prepared, lot: number, programme: Programme): Option {
  const { endDay, ripeDay } = solos.outcome(problem.lots[lot]!, programme);
  return { programme, key: programmeKey(programme), soloCost: 0, endDay, ripeDay };
}

/** The problem with what the arrangement says fixed. The best life to be had stays that of the whole kitchen. */
function withFixed(prepared: Prepared, arrangement: BoundArrangement): Prepared {
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

/** Every setting of the vents that are not mentioned. */
const everySetting = ({ vents }: BoundArrangement): VentSetting[][] =>
  vents.reduce<VentSetting[][]>(
    (ways, said) => ways.flatMap((way) => (said ? [said] : ventSettings).map((setting) => [...way, setting])),
    [[]],
  );

/**
 * The arrangement made whole and judged: what it does not mention lies, and is set, as a plan would have it beside what it says. Where only
 * vents are left open every setting is judged; where lots are, they are searched for as in a plan.
 */
export function completed(prepared: Prepared, arrangement: BoundArrangement): Evaluation {
  const { lots, vents } = prepared.problem;
  const open = ventSettings.length ** arrangement.vents.filter((setting) => setting === undefined).length;
  if (arrangement.fixed.size < lots.length || open > mostSettings)
    return searchPlan(withFixed(prepared, arrangement));
  const bare = { parts: [], vents: vents.map(() => untouchedVent) };
  const { parts } = asArranged(arrangement, bare);
  return everySetting(arrangement)
    .map((settings) => evaluatePrepared(prepared, { parts, vents: settings }))
    .reduce((best, one) => (one.objective.total < best.objective.total ? one : best));
}
