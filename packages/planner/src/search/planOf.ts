import { type SimulationOutcome, simulate } from "@keepwright/physics";
import { type Plan, planUnits } from "../problem/plan.js";
import { type Part, programmeWith } from "../problem/programme.js";
import { simulationOf } from "../problem/simulationOf.js";
import { cautions } from "../rules/cautions.js";
import { type Evaluation, evaluatePrepared } from "./evaluate.js";
import { placeAir } from "./placeAir.js";
import { plannedLots } from "./plannedLots.js";
import type { Prepared } from "./prepare.js";
import { unsortedChoice } from "./unsorted.js";

function plannedVents({ problem }: Prepared, { choice }: Evaluation): Plan["vents"] {
  return problem.places.flatMap(({ place, vent }) => {
    const setting = vent === undefined ? place.vent : choice.vents[vent];
    return setting === undefined || setting === "choose" ? [] : [{ place: place.id, setting }];
  });
}

const plannedPlaces = (
  { problem }: Prepared,
  evaluation: Evaluation,
  air: SimulationOutcome,
): Plan["places"] =>
  problem.places.map(({ place, index }) => ({
    place: place.id,
    name: place.name,
    placeKind: place.kind,
    litres: place.litres,
    litresTaken: Math.max(...evaluation.taken[index]!),
    ...placeAir(problem, air, index),
  }));

/**
 * The same without moves that never come: what ends before it is ripe stays where it is, and there is no day to name for its move. Judged again
 * where there were any, since a move that is not told costs no effort.
 */
export function withoutVainMoves(prepared: Prepared, evaluation: Evaluation): Evaluation {
  const { choice, outcomes } = evaluation;
  const parts = choice.parts.map((part, index): Part => {
    const { stays } = part.programme;
    const starts = outcomes[index]!.stayStarts;
    const reached = stays.filter((_, stay) => stay === 0 || Number.isFinite(starts[stay]!));
    if (reached.length === stays.length) return part;
    const last = reached.length - 1;
    const { place, wrap } = reached[last]!;
    return {
      lot: part.lot,
      portions: part.portions,
      programme: programmeWith(part.programme, reached.with(last, { place, wrap, until: "never" })),
    };
  });
  const same = parts.every((part, index) => part === choice.parts[index]);
  return same ? evaluation : evaluatePrepared(prepared, { parts, vents: choice.vents });
}

/** What may no longer be eaten at all comes before every other caution. */
const withSafeTimePast = (names: readonly string[], lots: Plan["lots"]): string[] => [
  ...(lots.some(({ safeUntil }) => safeUntil === "past") ? ["safe-time-past"] : []),
  ...names,
];

/** A choice that was judged, written out as a plan. */
export function planOf(prepared: Prepared, judged: Evaluation): Plan {
  const evaluation = withoutVainMoves(prepared, judged);
  const { problem } = prepared;
  const { household } = problem;
  const unsorted = evaluatePrepared(prepared, unsortedChoice(problem));
  // The search leaves the boxes' own record out; the plan tells it.
  const air = simulate(simulationOf(problem, evaluation.choice));
  const lots = plannedLots(prepared, evaluation, air);
  const overflow = problem.places
    .map(({ place, index }) => ({ place: place.id, litres: evaluation.over[index]! }))
    .filter(({ litres }) => litres > 0);
  return {
    version: 1,
    units: planUnits,
    seed: problem.seed,
    from: problem.from,
    days: household.days,
    kitchen: problem.kitchen.name,
    household: {
      people: household.people,
      portionsPerPersonPerDay: household.portionsPerPersonPerDay,
      daysAway: household.daysAway,
    },
    vents: plannedVents(prepared, evaluation),
    places: plannedPlaces(prepared, evaluation, air),
    lots,
    expectedWaste: { value: evaluation.objective.waste, unit: "g" },
    unsorted: {
      expectedWaste: { value: unsorted.objective.waste, unit: "g" },
      objective: unsorted.objective,
    },
    objective: evaluation.objective,
    overflow,
    cautions: withSafeTimePast(cautions(problem, lots), lots),
  };
}
