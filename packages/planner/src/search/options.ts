import { type LotOutcome, publicationSpread } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import { type Programme, type ProgrammeStay, programmeKey } from "../problem/programme.js";
import { programmeEffort } from "../rules/effort.js";
import { chancePastBy } from "../rules/lifeLeft.js";
import { dailyLimit } from "../rules/portionsADay.js";
import { lastSafeDay } from "../rules/safeTime.js";
import { eatingHabits } from "../rules/weights.js";
import { gramCost } from "../schedule/partCosts.js";
import {
  onceRipe,
  type Preparation,
  preparations,
  presentProgrammes,
  singleStays,
  stillRipens,
  untilRipe,
} from "./candidates.js";
import { isSmall } from "./smallCase.js";
import type { SoloAir, Solos } from "./solos.js";

/** A programme worth trying, with what a lot alone in the kitchen would make of it. */
export interface Option {
  readonly programme: Programme;
  readonly key: string;
  /** Cost of the whole lot, alone, in the kitchen's own air [g]; for ordering only. */
  readonly soloCost: number;
  readonly endDay: number;
  readonly ripeDay: number;
}

interface Tried {
  readonly option: Option;
  /** Cost in each of the airs tried. */
  readonly costs: readonly number[];
}

/**
 * Quick cost of a lot alone: every portion on its cheapest free day, no crowd at the table, and the loss of life left to
 * the real judgement.
 */
function soloCost(solos: Solos, lot: BoundLot, programme: Programme, outcome: LotOutcome): number {
  const { household } = solos.problem;
  const limit = dailyLimit(lot, household);
  const lastSafe = lastSafeDay(solos.problem, lot, programme, outcome.stayStarts);
  const spread = Math.hypot(lot.produce.lifeSpread, publicationSpread.betweenReports);
  const gram = (day: number, quality: number): number =>
    day > lastSafe ? 1 : gramCost(chancePastBy(lot, outcome, spread, day), quality);
  let left = lot.portions;
  let cost = 0;
  for (let day = 0; day < household.days && left > 0; day++) {
    if (day < outcome.ripeDay || day > lastSafe) continue;
    const eaten = Math.min(limit, left);
    cost += eaten * gram(day, outcome.quality[day]!);
    left -= eaten;
  }
  const qualityLeft = outcome.quality[household.days]!;
  cost += left * gram(household.days - 1 + eatingHabits.leftOverDays, qualityLeft);
  // A long life is worth something even where all is eaten in time; a hundredth a tenfold only settles near ties.
  const patience = 0.03 * lot.portions * Math.log10(Math.max(outcome.endDay, 0.1));
  return (cost - patience) * lot.gramsPerPortion + programmeEffort(programme, lot);
}

function tryOut(solos: Solos, lot: BoundLot, programme: Programme, airs: readonly SoloAir[]): Tried {
  const outcomes = airs.map((air) => solos.outcome(lot, programme, air));
  const costs = outcomes.map((outcome) => soloCost(solos, lot, programme, outcome));
  const { endDay, ripeDay } = outcomes[0]!;
  return { option: { programme, key: programmeKey(programme), soloCost: costs[0]!, endDay, ripeDay }, costs };
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
    return tryOut(solos, lot, { ...preparation, stays: [stay] }, airs);
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
    stays.map((stay) => tryOut(solos, lot, { ...preparation, stays: [stay] }, own)),
    firstPlace,
  );
  const ripe = onceRipe(lot);
  const lastStays = groupBy(
    stays.map((stay) => tryOut(solos, ripe, { ...preparation, stays: [stay] }, own)),
    firstPlace,
  ).map((tried) => [...tried].sort((a, b) => a.costs[0]! - b.costs[0]!)[0]!.option.programme.stays[0]!);
  const tried = bySingle
    .flatMap(ripeningStays)
    .flatMap((first) =>
      lastStays
        .filter((last) => last.place !== first.place)
        .map((last) =>
          tryOut(solos, lot, { ...preparation, stays: untilRipe(first.place, first.wrap, last) }, own),
        ),
    );
  const best = (group: Tried[]): Tried => [...group].sort((a, b) => a.costs[0]! - b.costs[0]!)[0]!;
  const firstStay = (one: Tried): string => `${firstPlace(one)} ${one.option.programme.stays[0]!.wrap}`;
  return [...new Set([...groupBy(tried, firstStay).map(best), ...groupBy(tried, lastPlace).map(best)])];
}

/** Keeps every way of preparing for the best place only, the best way for all places. */
function overPreparations(byWay: readonly Tried[][]): Tried[] {
  if (byWay.length <= 1) return byWay.flat();
  const cheapest = (tried: readonly Tried[]): Tried =>
    [...tried].sort((a, b) => a.costs[0]! - b.costs[0]!)[0]!;
  const ordered = [...byWay].sort((a, b) => cheapest(a).costs[0]! - cheapest(b).costs[0]!);
  return [...ordered[0]!, ...ordered.slice(1).map(cheapest)];
}

/** Programmes of a lot up to which none is left out in a small case. */
const mostUnpruned = 150;

/** Every programme there is for a lot: each place and wrap, each two places for what still ripens, each preparation. */
function everyWay(problem: Problem, lot: BoundLot): Programme[] {
  const stays = singleStays(problem, lot);
  const moved = stillRipens(lot)
    ? stays.flatMap((first) =>
        stays
          .filter(({ place }) => place !== first.place)
          .map((then) => untilRipe(first.place, first.wrap, then)),
      )
    : [];
  const paths = [...stays.map((stay) => [stay]), ...moved];
  return preparations(lot).flatMap((way) => paths.map((path) => ({ ...way, stays: path })));
}

function promising(solos: Solos, lot: BoundLot): Tried[] {
  const byWay = preparations(lot).map((way) => [
    ...singles(solos, lot, way),
    ...(stillRipens(lot) ? pairs(solos, lot, way) : []),
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
 * still ripens also "here until ripe, then there", and each way of preparing at its best. Every allowed place stays.
 */
export function optionsFor(solos: Solos, lot: BoundLot): Option[] {
  const all = isSmall(solos.problem) ? everyWay(solos.problem, lot) : [];
  const tried =
    all.length > 0 && all.length <= mostUnpruned
      ? all.map((programme) => tryOut(solos, lot, programme, [solos.ownAir]))
      : promising(solos, lot);
  const options = withPresent(solos, lot, tried).map(({ option }) => option);
  return options.sort((a, b) => a.soloCost - b.soloCost || (a.key < b.key ? -1 : 1));
}
