import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import { type Programme, type ProgrammeStay, programmeKey, programmeWith } from "../problem/programme.js";
import { programmeEffort } from "../rules/effort.js";
import type { PartCosts } from "../schedule/partCosts.js";
import {
  moveDays,
  onceRipe,
  type Preparation,
  preparations,
  presentProgrammes,
  singleStays,
  stillRipens,
  untilDay,
  untilRipe,
} from "./candidates.js";
import { isSmall } from "./smallCase.js";
import { soloCost } from "./soloCost.js";
import type { SoloAir, Solos } from "./solos.js";

/** A programme worth trying, with what a lot alone in the kitchen would make of it. */
export interface Option {
  readonly programme: Programme;
  readonly key: string;
  /** Of the programme [g]. */
  readonly effort: number;
  /** Cost of the whole lot, alone, in the kitchen's own air [g]; for ordering only. */
  readonly soloCost: number;
  readonly endDay: number;
  readonly ripeDay: number;
  /** Room for what it costs a part of its lot alone, in each of the airs worth trying, once that has been asked for. */
  readonly inAirs: { costs: readonly PartCosts[] | undefined };
}

interface Tried {
  readonly option: Option;
  /** Cost in each of the airs tried. */
  readonly costs: readonly number[];
}

function tryOut(solos: Solos, lot: BoundLot, programme: Programme, airs: readonly SoloAir[]): Tried {
  const outcomes = airs.map((air) => solos.outcome(lot, programme, air));
  const costs = outcomes.map((outcome) => soloCost(solos, lot, programme, outcome));
  const { endDay, ripeDay } = outcomes[0]!;
  const [key, effort] = [programmeKey(programme), programmeEffort(programme, lot)];
  const option = {
    programme,
    key,
    effort,
    soloCost: costs[0]!,
    endDay,
    ripeDay,
    inAirs: { costs: undefined },
  };
  return { option, costs };
}

/** Those tried that are best in some air among their like, with the runner-up in the kitchen's own air and the barest. */
function bestInSomeAir(tried: readonly Tried[]): Tried[] {
  const airs = tried[0]?.costs.length ?? 0;
  // The first wrap tried takes the least room: it must stay where every litre counts.
  const kept = new Set<Tried>(tried.slice(0, 1));
  for (let air = 0; air < airs; air++) {
    const order = [...tried].sort((a, b) => a.costs[air]! - b.costs[air]!);
    for (const one of order.slice(0, air === 0 ? 2 : 1)) kept.add(one);
  }
  // Wraps come in the order of their room: where little is left, one that takes less may be the best that fits.
  let least = Number.POSITIVE_INFINITY;
  for (const one of tried) {
    if (one.costs[0]! >= least) continue;
    least = one.costs[0]!;
    kept.add(one);
  }
  return tried.filter((one) => kept.has(one));
}

function groupBy<Item>(items: readonly Item[], key: (item: Item) => string): Item[][] {
  const groups = new Map<string, Item[]>();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return [...groups.values()];
}

const firstPlace = (tried: Tried): string => String(tried.option.programme.stays[0]!.place);
const lastPlace = (tried: Tried): string => String(tried.option.programme.stays.at(-1)!.place);

function singles(solos: Solos, lot: BoundLot, preparation: Preparation): Tried[] {
  const stays = singleStays(solos.problem, lot);
  const tried = stays.map((stay) => {
    const airs = solos.airsFor(stay.place);
    return tryOut(solos, lot, programmeWith(preparation, [stay]), airs);
  });
  return groupBy(tried, firstPlace).flatMap(bestInSomeAir);
}

/** Wraps worth ripening in at one place: bare, the quickest, and the best. */
function ripeningStays(tried: readonly Tried[]): ProgrammeStay[] {
  const ripening = tried.filter(({ option }) => Number.isFinite(option.ripeDay));
  const bare = ripening.find(({ option }) => option.programme.stays[0]!.wrap === "none");
  const quickest = [...ripening].sort((a, b) => a.option.ripeDay - b.option.ripeDay)[0];
  const best = [...ripening].sort((a, b) => a.costs[0]! - b.costs[0]!)[0];
  return [...new Set([bare, quickest, best])].flatMap((one) => (one ? [one.option.programme.stays[0]!] : []));
}

/** Here until ripe, then there: the best for every first stay, and the best for every last place. */
function pairs(solos: Solos, lot: BoundLot, preparation: Preparation): Tried[] {
  const own = [solos.ownAir];
  const stays = singleStays(solos.problem, lot);
  const bySingle = groupBy(
    stays.map((stay) => tryOut(solos, lot, programmeWith(preparation, [stay]), own)),
    firstPlace,
  );
  const ripe = onceRipe(lot);
  const lastStays = groupBy(
    stays.map((stay) => tryOut(solos, ripe, programmeWith(preparation, [stay]), own)),
    firstPlace,
  ).map((tried) => [...tried].sort((a, b) => a.costs[0]! - b.costs[0]!)[0]!.option.programme.stays[0]!);
  const tried = bySingle
    .flatMap(ripeningStays)
    .flatMap((first) =>
      lastStays
        .filter((last) => last.place !== first.place)
        .map((last) =>
          tryOut(solos, lot, programmeWith(preparation, untilRipe(first.place, first.wrap, last)), own),
        ),
    );
  const best = (group: Tried[]): Tried => [...group].sort((a, b) => a.costs[0]! - b.costs[0]!)[0]!;
  const firstStay = (one: Tried): string => `${firstPlace(one)} ${one.option.programme.stays[0]!.wrap}`;
  return [...new Set([...groupBy(tried, firstStay).map(best), ...groupBy(tried, lastPlace).map(best)])];
}

/** Places to hold it in, places to ripen in, and places to go on to, that are worth combining: with every day they are many. */
const mostHolding = 2;
const mostRipening = 3;
const mostAfterwards = 2;

/** The first of each place, in the order given. */
const onePerPlace = (tried: readonly Tried[]): ProgrammeStay[] =>
  groupBy(tried, firstPlace).map((group) => group[0]!.option.programme.stays[0]!);

/**
 * Held until a day, then brought out to ripen, and on once ripe: for what is wanted for a day. Held where it keeps longest, ripened where it is
 * quickest, kept afterwards where the ripe keeps best; of every two places the best.
 */
function broughtOut(solos: Solos, lot: BoundLot, preparation: Preparation): Tried[] {
  const days = moveDays(solos.problem, lot);
  if (days.length === 0) return [];
  const own = [solos.ownAir];
  const stays = singleStays(solos.problem, lot);
  const triedAs = (one: BoundLot): Tried[] =>
    stays.map((stay) => tryOut(solos, one, programmeWith(preparation, [stay]), own));
  const [whole, ripe] = [triedAs(lot), triedAs(onceRipe(lot))];
  const longest = (tried: readonly Tried[]): Tried[] =>
    [...tried].sort((a, b) => b.option.endDay - a.option.endDay);
  const holding = onePerPlace(longest(whole)).slice(0, mostHolding);
  const quickest = [...whole].sort((a, b) => a.option.ripeDay - b.option.ripeDay);
  const ripening = onePerPlace(quickest.filter(({ option }) => Number.isFinite(option.ripeDay)));
  const afterwards = onePerPlace(longest(ripe)).slice(0, mostAfterwards);
  const ways = ripening
    .slice(0, mostRipening)
    .flatMap((second) => [
      [second],
      ...afterwards
        .filter(({ place }) => place !== second.place)
        .map((third) => untilRipe(second.place, second.wrap, third)),
    ]);
  const tried = holding.flatMap((first) =>
    days.flatMap((day) =>
      ways
        .filter(([next]) => next!.place !== first.place)
        .map((then) => tryOut(solos, lot, programmeWith(preparation, untilDay(first, day, then)), own)),
    ),
  );
  const places = ({ option }: Tried): string => option.programme.stays.map(({ place }) => place).join(" ");
  return groupBy(tried, places).flatMap((group) =>
    [...group].sort((a, b) => a.costs[0]! - b.costs[0]!).slice(0, mostPerPath),
  );
}

/** Days kept of each way through the places: the lot's neighbours and its parts may want another than it does alone. */
const mostPerPath = 2;

/** Keeps every way of preparing for the best place only, the best way for all places. */
function overPreparations(byWay: readonly Tried[][]): Tried[] {
  if (byWay.length <= 1) return byWay.flat();
  const cheapest = (tried: readonly Tried[]): Tried =>
    [...tried].sort((a, b) => a.costs[0]! - b.costs[0]!)[0]!;
  const ordered = [...byWay].sort((a, b) => cheapest(a).costs[0]! - cheapest(b).costs[0]!);
  return [...ordered[0]!, ...ordered.slice(1).map(cheapest)];
}

/** Programmes of a lot up to which none is left out in a small case; more where days to move on add to them. */
const mostUnpruned = 150;
const mostUnprunedWithWish = 100;

/**
 * Every programme there is for a lot: each place and wrap, each two places for what still ripens, each preparation; where it is wanted for a day,
 * also held in another place until any day before.
 */
export function everyWay(problem: Problem, lot: BoundLot): Programme[] {
  const stays = singleStays(problem, lot);
  const moved = stillRipens(lot)
    ? stays.flatMap((first) =>
        stays
          .filter(({ place }) => place !== first.place)
          .map((then) => untilRipe(first.place, first.wrap, then)),
      )
    : [];
  const dated = moveDays(problem, lot).flatMap((day) =>
    stays.flatMap((first) =>
      [...stays.map((stay) => [stay]), ...moved]
        .filter(([next]) => next!.place !== first.place)
        .map((then) => untilDay(first, day, then)),
    ),
  );
  const paths = [...stays.map((stay) => [stay]), ...moved, ...dated];
  return preparations(lot).flatMap((way) => paths.map((path) => programmeWith(way, path)));
}

function promising(solos: Solos, lot: BoundLot): Tried[] {
  const byWay = preparations(lot).map((way) => [
    ...singles(solos, lot, way),
    ...(stillRipens(lot) ? pairs(solos, lot, way) : []),
    ...broughtOut(solos, lot, way),
  ]);
  return overPreparations(byWay);
}

/** What is carried over may always stay as it lies, or do what the earlier plan had before it. */
function withPresent(solos: Solos, lot: BoundLot, tried: readonly Tried[]): Tried[] {
  const known = new Set(tried.map(({ option }) => option.key));
  const more = presentProgrammes(solos.problem, lot).filter((one) => !known.has(programmeKey(one)));
  return [...tried, ...more.map((programme) => tryOut(solos, lot, programme, [solos.ownAir]))];
}

/**
 * The programmes worth trying for a lot, cheapest alone first. In small cases all of them, as long as they can be counted. Otherwise: for every place the best wraps in several airs, for what
 * still ripens also "here until ripe, then there", for what is wanted for a day also held until a day and brought out then, and each way of preparing
 * at its best. Every allowed place stays.
 */
export function optionsFor(solos: Solos, lot: BoundLot): Option[] {
  const all = isSmall(solos.problem) ? everyWay(solos.problem, lot) : [];
  const tried =
    all.length > 0 && all.length <= (lot.wish ? mostUnprunedWithWish : mostUnpruned)
      ? all.map((programme) => tryOut(solos, lot, programme, [solos.ownAir]))
      : promising(solos, lot);
  const options = withPresent(solos, lot, tried).map(({ option }) => option);
  return options.sort((a, b) => a.soloCost - b.soloCost || (a.key < b.key ? -1 : 1));
}
