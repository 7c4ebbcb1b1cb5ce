import { lifeRange } from "@keepwright/physics";
import type { LifeRange } from "../explain/reason.js";
import type { PlaceKind } from "../problem/kitchen.js";
import type { Plan, PlannedLot } from "../problem/plan.js";
import { bindProblem, type PlanRequest, type Problem } from "../problem/problem.js";
import { firstReadyDay } from "../rules/readyToEat.js";
import { safeDaysLeft } from "../rules/safeTime.js";
import { stillRipens, untilRipe } from "../search/candidates.js";
import { longestNamed, toldEnding, toldLife } from "../search/plannedLots.js";
import { type Prepared, prepare } from "../search/prepare.js";
import { bestPlaceOf, choosing, mostGoodDays } from "./bestWay.js";
import { asItIs, singleWays, untouchedVents, type WayAlone, wayAlone, withVent } from "./ways.js";

/** A way to keep one lot alone, as its readers see it. */
export interface AloneAnswer {
  readonly stays: readonly (Pick<PlannedLot["stays"][number], "place" | "placeKind" | "wrap" | "moveWhen"> & {
    readonly name: string;
  })[];
  /** Settings of the vents of those places. */
  readonly vents: Plan["vents"];
  readonly life: LifeRange;
  readonly endedBy: PlannedLot["endedBy"];
  /** First day it is ready to eat (0 = first day); null where it never is. */
  readonly readyOnDay: number | null;
  /** Effects that spoil eating there by more than a little, by their names in the catalogue. */
  readonly effects: readonly string[];
}

/** Where one lot alone is kept best: in the whole kitchen, and in each kind of place by itself. */
export interface KeptAlone {
  readonly best: AloneAnswer;
  /** One for each kind of place: what gets ripe there first, then the longest middle life first. */
  readonly inEachKind: readonly AloneAnswer[];
}

function effectsOf(problem: Problem, { programme, spoilt }: WayAlone): string[] {
  if (spoilt < choosing.spoilt) return [];
  const temperatures = programme.stays.map(({ place }) => problem.places[place]!.place.temperature);
  const harming = problem.lots[0]!.produce.eatingEffects.filter(({ above, below }) =>
    temperatures.some((celsius) => celsius > above && celsius < below),
  );
  return [...new Set(harming.map(({ effect }) => effect))];
}

function answer({ problem, spread }: Prepared, way: WayAlone): AloneAnswer {
  const { programme, vents, outcome } = way;
  const range = lifeRange({
    median: Math.min(outcome.endDay, longestNamed),
    spread: spread(0, programme),
  });
  const safeDays = safeDaysLeft(problem, problem.lots[0]!, programme, outcome.stayStarts);
  return {
    stays: programme.stays.map(({ place: index, wrap, until }) => {
      const { place } = problem.places[index]!;
      const moved = until === "ripe" && { moveWhen: "ripe" as const };
      return { place: place.id, placeKind: place.kind, wrap, name: place.name, ...moved };
    }),
    vents: programme.stays.flatMap(({ place: index }) => {
      const { place, vent } = problem.places[index]!;
      const setting = vent === undefined ? place.vent : vents[vent];
      return setting === undefined || setting === "choose" ? [] : [{ place: place.id, setting }];
    }),
    life: toldLife({ range, safeDays }).life,
    endedBy: toldEnding({ range, safeDays }, outcome.endedBy),
    readyOnDay: outcome.ripeDay < outcome.endDay ? firstReadyDay(outcome.ripeDay) : null,
    effects: effectsOf(problem, way),
  };
}

const firstPlace = ({ programme }: WayAlone): number => programme.stays[0]!.place;

/** The best of the ways in each kind of place, in the kitchen's order. */
function bestOfEachKind({ places }: Problem, ways: readonly WayAlone[]): WayAlone[] {
  const kind = (way: WayAlone): PlaceKind => places[firstPlace(way)]!.place.kind;
  const kinds = new Set(ways.map(kind));
  return [...kinds].map((one) => mostGoodDays(ways.filter((way) => kind(way) === one)));
}

/** Here until ripe, then there: from the best and the barest way of each kind of place to the best for the ripe lot in each other. */
function movedWhenRipe(problem: Problem, singles: readonly WayAlone[]): WayAlone[] {
  const lot = problem.lots[0]!;
  if (!stillRipens(lot)) return [];
  const ripening = singles.filter(({ goodDays }) => goodDays > 0);
  const bare = ripening.filter(({ programme }) => programme.stays[0]!.wrap === "none");
  const firsts = new Set([...bestOfEachKind(problem, ripening), ...bestOfEachKind(problem, bare)]);
  const lasts = bestOfEachKind(problem, singleWays({ ...problem, lots: [{ ...lot, ripeness: 1 }] }));
  return [...firsts].flatMap((first) =>
    lasts
      .filter((last) => firstPlace(last) !== firstPlace(first))
      .map((last) => {
        const { place, wrap } = first.programme.stays[0]!;
        const stays = untilRipe(place, wrap, last.programme.stays[0]!);
        const vents = [first, last].reduce((set, way) => {
          const vent = problem.places[firstPlace(way)]!.vent;
          return vent === undefined ? set : withVent(problem, set, firstPlace(way), way.vents[vent]!);
        }, untouchedVents(problem));
        return wayAlone(problem, { ...asItIs, stays }, vents);
      }),
  );
}

/**
 * Declared rule: whole dry bulbs are told to lie outside the refrigerator where there is anywhere else. The physics would keep them in its dry open air; how humid home
 * refrigerators are was never found measured, and the publication named in the catalogue (`dryOutOfRefrigerator`) calls them too humid for bulbs. A plan for many
 * weighs them as the physics does (decision 0113).
 */
function outOfTheDamp({ lots, places }: Problem, ways: readonly WayAlone[]): readonly WayAlone[] {
  const { commodity, form } = lots[0]!;
  if (form.cut || !commodity.dryOutOfRefrigerator) return ways;
  const dry = ways.filter((way) => !places[firstPlace(way)]!.cold);
  return dry.length > 0 ? dry : ways;
}

/**
 * Where the request's one lot would be kept best if it were alone in the kitchen: every place, wrap and setting of a vent is followed to the lot's
 * end, whole and as it came. What counts is how long and how well it can be eaten (`choosing`). Throws as `bindProblem`, and RangeError when the
 * haul has more than one lot.
 */
export function keptAlone(request: PlanRequest): KeptAlone {
  const problem = bindProblem(request);
  if (problem.lots.length !== 1) {
    throw new RangeError(`haul: ${problem.lots.length} lots. Give exactly one: it is asked about alone.`);
  }
  const singles = singleWays(problem);
  const each = bestOfEachKind(problem, singles);
  const prepared = prepare(problem);
  const fit = outOfTheDamp(problem, each);
  const told = each.map((way) => answer(prepared, way));
  return {
    best: answer(prepared, bestPlaceOf([...fit, ...movedWhenRipe(problem, singles)])),
    inEachKind: told.sort(
      (one, other) =>
        Number(one.readyOnDay === null) - Number(other.readyOnDay === null) ||
        other.life.middle - one.life.middle,
    ),
  };
}
