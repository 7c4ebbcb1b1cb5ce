import { at, type LotOutcome, simulate } from "@keepwright/physics";
import { untouchedVent } from "../problem/bindKitchen.js";
import { type VentSetting, ventSettings } from "../problem/kitchen.js";
import type { Problem } from "../problem/problem.js";
import type { Programme, ProgrammeStay } from "../problem/programme.js";
import { simulationOf } from "../problem/simulationOf.js";
import { litresInStay } from "../rules/capacity.js";
import { singleStays } from "../search/candidates.js";

/** One way to keep a lot that is alone in its kitchen, and what becomes of it. */
export interface WayAlone {
  readonly programme: Programme;
  /** A setting for each of the kitchen's vents that can be set; those of other places as nobody has touched them. */
  readonly vents: readonly VentSetting[];
  readonly outcome: LotOutcome;
  /** Days it is there to be eaten: ripe and not past its best [d]. 0 where it never gets ripe. */
  readonly readyDays: number;
  /** The same days, each counted by the quality it is then eaten at (0…1) [d]. */
  readonly goodDays: number;
  /** Share of quality [0…1] that effects which spoil eating have taken by its end: blackening, lost flavour, sweetening … */
  readonly spoilt: number;
}

/** Days followed: the longest storage life the catalogue accepts, so that hardly any life ends beyond. */
const followedDays = 400;

/** Mean quality between two times [d] within one day, taken to run straight from one whole day to the next. */
function meanQuality({ quality }: LotOutcome, from: number, to: number): number {
  const day = Math.floor(from);
  const [now, next] = [quality[day]!, quality[day + 1]!];
  return now + ((from + to) / 2 - day) * (next - now);
}

function goodDays(outcome: LotOutcome): number {
  const end = Math.min(outcome.endDay, followedDays);
  let sum = 0;
  for (let from = outcome.ripeDay; from < end; from = Math.floor(from) + 1) {
    const to = Math.min(end, Math.floor(from) + 1);
    sum += (to - from) * meanQuality(outcome, from, to);
  }
  return sum;
}

/** Follows the problem's only lot with a programme. */
export function wayAlone(problem: Problem, programme: Programme, vents: readonly VentSetting[]): WayAlone {
  const choice = { parts: [{ lot: 0, portions: problem.lots[0]!.portions, programme }], vents };
  const outcome = simulate({ ...simulationOf(problem, choice), horizonDays: followedDays }).lots[0]!;
  return {
    programme,
    vents,
    outcome,
    readyDays: Math.max(0, outcome.endDay - outcome.ripeDay),
    goodDays: goodDays(outcome),
    spoilt: outcome.daily[Math.floor(Math.min(outcome.endDay, followedDays))]![at.eatingHarm]!,
  };
}

export const asItIs = { leavesOff: false, dried: false } as const;

/** The vents with the setting of one place changed, where it has a vent that can be set. */
export function withVent(
  problem: Problem,
  vents: readonly VentSetting[],
  place: number,
  setting: VentSetting,
): readonly VentSetting[] {
  const vent = problem.places[place]!.vent;
  return vent === undefined ? vents : vents.with(vent, setting);
}

export const untouchedVents = (problem: Problem): readonly VentSetting[] =>
  problem.vents.map(() => untouchedVent);

const settingsOf = (problem: Problem, { place }: ProgrammeStay): readonly VentSetting[] =>
  problem.places[place]!.vent === undefined ? [untouchedVent] : ventSettings;

/** Stays in places with room for the whole lot; all of them where it fits in none. */
function fittingStays(problem: Problem): readonly ProgrammeStay[] {
  const lot = problem.lots[0]!;
  const stays = singleStays(problem, lot);
  const fitting = stays.filter((stay) => {
    const part = { lot: 0, portions: lot.portions, programme: { ...asItIs, stays: [stay] } };
    return litresInStay(problem, part, 0) <= problem.places[stay.place]!.place.litres;
  });
  return fitting.length > 0 ? fitting : stays;
}

/** Every place with room for it, wrap and setting of its vent in which the problem's only lot may lie until it is eaten. */
export const singleWays = (problem: Problem): WayAlone[] =>
  fittingStays(problem).flatMap((stay) =>
    settingsOf(problem, stay).map((setting) =>
      wayAlone(
        problem,
        { ...asItIs, stays: [stay] },
        withVent(problem, untouchedVents(problem), stay.place, setting),
      ),
    ),
  );
