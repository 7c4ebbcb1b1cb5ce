import { dairy } from "@keepwright/catalogue";
import { carriedFrom, lifeSpread, type Trajectory, trajectory, usualSpentSpread } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import { type Choice, type Programme, programmeKey } from "../problem/programme.js";
import { simulationOf } from "../problem/simulationOf.js";
import { daysOnceCut, isCutWhenBegun } from "../rules/cutOpen.js";
import { startedFrom, wholeLife } from "../rules/lifeLeft.js";
import { pacePerDay, placesAtTable } from "../rules/portionsADay.js";
import { lastSafeDay } from "../rules/safeTime.js";
import { weights } from "../rules/weights.js";
import type { Pace } from "../schedule/eatingDays.js";
import { type PartCosts, partCosts } from "../schedule/partCosts.js";
import { interchangeable, type Kept, type KeptSpreads, nothingKept, stillHolds } from "./kept.js";
import { type Option, optionsFor } from "./options.js";
import { ripeningSpreadOf } from "./ripeningSpread.js";
import type { Solos } from "./solos.js";

/** A problem with what the search looks up again and again. None of it depends on the order of questions. */
export interface Prepared {
  readonly problem: Problem;
  /** What of it may outlive the problem. */
  readonly kept: Kept;
  readonly solos: Solos;
  /** Portions at the table on each planned day. */
  readonly table: readonly number[];
  /** Portions a day at which the haul lasts, and what each further one costs. */
  readonly pace: Pace;
  readonly options: (lot: number) => readonly Option[];
  /** Longest median life [d] of a lot alone among its options, those that never ripen left out where any does. */
  readonly bestLife: (lot: number) => number;
  /** Standard deviation of ln(life) with a programme. */
  readonly spread: (lot: number, programme: Programme) => number;
  /** Standard deviation of ln(time to ripen) with a programme [1]; only worked out for what is wanted for a day, else 0. */
  readonly ripeningSpread: (lot: number, programme: Programme) => number;
  /** Costs of a part of a lot alone with an option, in each of the airs worth trying. */
  readonly soloCosts: (lot: number, option: Option) => readonly PartCosts[];
  /** Of each lot, days for which a piece is safe after that on which it is begun [d]; Infinity where no limit binds. */
  readonly keepsOnceBegun: readonly number[];
  /** Kinds in the haul that give or take smell from another kind in it. */
  readonly smelling: ReadonlySet<string>;
  /** A choice with what must not be changed put back as it is to be; the choice itself where everything is free. */
  readonly pinned: (choice: Choice) => Choice;
  /** The whole kitchen simulated together, on record. */
  readonly simulate: (choice: Choice) => Trajectory;
}

function remembered<Key, Value>(find: (key: Key) => Value): (key: Key) => Value {
  const found = new Map<Key, Value>();
  return (key) => {
    if (!found.has(key)) found.set(key, find(key));
    return found.get(key)!;
  };
}

/** Life [d] above which a longer one counts for nothing: the longest the catalogue's schema accepts. */
const longestCounted = 400;

function longestLife(options: readonly Option[]): number {
  const ripening = options.filter(({ ripeDay }) => Number.isFinite(ripeDay));
  const longest = Math.max(...(ripening.length > 0 ? ripening : options).map(({ endDay }) => endDay));
  return Math.min(longest, longestCounted);
}

/**
 * The spread of a lot alone; its temperature's part is half the difference in ln(life) between every place one spread warmer and colder. Of what is carried over that is the
 * life left: what it has had is taken to have gone as much faster or slower (inferred; exact where it lies in one place from first to last).
 */
function spreadOf(solos: Solos, lot: BoundLot, programme: Programme): number {
  const { produce, spent } = lot;
  const outcome = (warmer: number) => solos.outcome(lot, programme, solos.ownAir, warmer);
  const { endDay, endedBy } = outcome(0);
  return lifeSpread({
    biology: produce.lifeSpread,
    temperatureSpread: 1,
    temperatureSlope: carriedFrom(outcome(1).endDay, outcome(-1).endDay) / 2,
    spent,
    spentSpread: usualSpentSpread,
    carried: carriedFrom(wholeLife(lot, endDay), startedFrom(solos.problem, lot, programme, endedBy)),
  });
}

function soloCostsOf(
  { problem, solos, spread, ripeningSpread, bestLife }: Prepared,
  index: number,
  { programme }: Option,
): PartCosts[] {
  const lot = problem.lots[index]!;
  return solos.airsFor(programme.stays.at(-1)!.place).map((air) => {
    const outcome = solos.outcome(lot, programme, air);
    const lastSafe = lastSafeDay(problem, lot, programme, outcome.stayStarts);
    const ripening = ripeningSpread(index, programme);
    const life = spread(index, programme);
    return partCosts(lot, outcome, life, bestLife(index), problem.household, lastSafe, ripening);
  });
}

const tablePortions = ({ lots }: Problem): number =>
  lots.reduce((sum, lot) => sum + (lot.seasoning ? 0 : lot.portions), 0);

/** Value of a key in a map, found and kept where it is not there yet. */
function keptOr<Key, Value>(map: Map<Key, Value>, key: Key, find: () => Value): Value {
  const known = map.get(key);
  if (known !== undefined) return known;
  const found = find();
  map.set(key, found);
  return found;
}

function prepareWith(problem: Problem, kept: Kept): Prepared {
  const { solos } = kept;
  const names = problem.lots.map(interchangeable);
  const options = (lot: number): readonly Option[] =>
    keptOr(kept.options, names[lot]!, () => optionsFor(solos, problem.lots[lot]!));
  const rememberedSpread =
    (known: KeptSpreads, find: typeof spreadOf): Prepared["spread"] =>
    (lot, programme) => {
      const name = names[lot]!;
      // By the programme itself first, which saves spelling it out.
      const byProgramme = keptOr(known.byProgramme, name, () => new Map<Programme, number>());
      const found = byProgramme.get(programme);
      if (found !== undefined) return found;
      return keptOr(byProgramme, programme, () =>
        keptOr(known.byName, `${name} ${programmeKey(programme)}`, () =>
          find(solos, problem.lots[lot]!, programme),
        ),
      );
    };
  const ripeningSpread = rememberedSpread(kept.ripeningSpreads, ripeningSpreadOf);
  const prepared: Prepared = {
    problem,
    kept,
    solos,
    table: placesAtTable(problem.household),
    pace: {
      portions: pacePerDay(problem.household, tablePortions(problem), problem.standing?.pace),
      cost: weights.aheadOfPace,
    },
    keepsOnceBegun: problem.lots.map((lot) =>
      isCutWhenBegun(lot) ? daysOnceCut(problem, lot) : Number.POSITIVE_INFINITY,
    ),
    smelling: smellingKinds(problem),
    options,
    bestLife: remembered((lot: number) => longestLife(options(lot))),
    spread: rememberedSpread(kept.spreads, spreadOf),
    ripeningSpread: (lot, programme) => (problem.lots[lot]!.wish ? ripeningSpread(lot, programme) : 0),
    soloCosts: (lot, option) => {
      option.inAirs.costs ??= soloCostsOf(prepared, lot, option);
      return option.inAirs.costs;
    },
    pinned: (choice) => choice,
    simulate: (choice) => {
      const run = trajectory(simulationOf(problem, choice), kept.compiler);
      kept.compiler = run.inner.compiler;
      return run;
    },
  };
  return prepared;
}

function smellingKinds({ lots, catalogue }: Problem): Set<string> {
  const kinds = new Set(lots.map(({ commodity }) => commodity.id));
  const pairs = catalogue.odours.filter(
    ({ giver, taker }) => kinds.has(giver) && (kinds.has(taker) || taker === dairy),
  );
  return new Set(pairs.flatMap(({ giver, taker }) => [giver, taker]));
}

const known = new WeakMap<Problem, Prepared>();

/** What belongs to a problem, made once for each. */
export function prepare(problem: Problem): Prepared {
  const prepared = known.get(problem) ?? prepareWith(problem, nothingKept(problem));
  known.set(problem, prepared);
  return prepared;
}

/** The same, with what was worked out for an earlier problem as far as it still holds. */
export function prepareAfter(before: Prepared, problem: Problem): Prepared {
  if (!stillHolds(before.problem, problem)) return prepare(problem);
  const prepared = prepareWith(problem, before.kept);
  known.set(problem, prepared);
  return prepared;
}
