import { untouchedVent } from "../problem/bindKitchen.js";
import { programmeEffort } from "../rules/effort.js";
import { weights } from "../rules/weights.js";
import type { WayAlone } from "./ways.js";

/**
 * How the best way is chosen. Declared preferences, no source: charges for smells, neighbours and the days a household plans for have no say
 * in where a kind belongs, and effort only where the food would hardly be the better for it.
 */
export const choosing = {
  /** Share of quality taken by effects that spoil eating from which a way is passed over [1]. */
  spoilt: 0.1,
  /** Days to eat it in that are enough to pass over longer ways which spoil it [d]. */
  enoughDays: 3,
  /** Share of good days that is too little to wrap, set a vent or move for [1]: far less than what nobody knows about a life. */
  hardlyMore: 0.05,
} as const;

/** What is to be done for it [g, as the planner weighs effort]: wraps, moves, and setting a vent like the least wrap. */
const effort = ({ programme, vents }: WayAlone): number =>
  programmeEffort(programme) +
  vents.filter((setting) => setting !== untouchedVent).length * weights.wrap["paper bag"];

const leastFirst = (one: WayAlone, other: WayAlone): number =>
  effort(one) - effort(other) || one.outcome.ripeDay - other.outcome.ripeDay;

/**
 * The way with the most good days; where several are as good, the one with the least to do, then the one ready soonest, then the first in the
 * kitchen's order. Where it gets ripe in none, the longest life counts.
 */
export function mostGoodDays(ways: readonly WayAlone[]): WayAlone {
  const any = ways.some(({ goodDays }) => goodDays > 0);
  const worth = ({ goodDays, outcome }: WayAlone): number => (any ? goodDays : outcome.endDay);
  const most = Math.max(...ways.map(worth));
  return ways.filter((way) => worth(way) >= (1 - choosing.hardlyMore) * most).sort(leastFirst)[0]!;
}

/** The same among places: those that spoil eating are passed over where another leaves enough days to eat it. */
export function bestPlaceOf(ways: readonly WayAlone[]): WayAlone {
  const kept = ways.filter(({ spoilt }) => spoilt < choosing.spoilt);
  return mostGoodDays(kept.some(({ readyDays }) => readyDays >= choosing.enoughDays) ? kept : ways);
}
