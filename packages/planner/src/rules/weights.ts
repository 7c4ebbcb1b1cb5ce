import type { WrapId } from "@keepwright/catalogue";

/**
 * What the planner prefers, in grams of edible produce wasted. These are declared preferences with no source; the
 * reasons are in docs/decisions/0101-weights-of-the-objective.md. The mass on arrival counts as edible: the catalogue
 * holds no share of peel and stones.
 */
export const weights = {
  /** A gram eaten at quality 0, against a gram wasted. */
  qualityLost: 0.5,
  /** A gram left at the end of the planned days where it lies so badly that none of its best life remains. */
  lifeLostLeft: 0.15,
  /** The same for a gram that is eaten: only settles what the other terms leave level. */
  lifeLostEaten: 0.01,
  /** A gram left at the end of the planned days, however well it keeps: it was brought home to be eaten. */
  uneatenLeft: 0.1,
  /** A gram of a taker lying in one air with a giver of smell. */
  smellTaken: 0.03,
  /** Dairy taken to stand in every refrigerator [g]: butter, milk and cheese in use. */
  dairyGrams: 500,
  /** One wrapping, by wrap [g]. */
  wrap: {
    none: 0,
    "paper bag": 2,
    "perforated bag": 2,
    "closed film bag": 2,
    "damp towel": 4,
    "beeswax cloth": 3,
    foil: 3,
    "lidded box": 3,
    "glass of water": 5,
  } satisfies Record<WrapId, number>,
  /** One move to another place later [g]. */
  move: 6,
  /** Moving at once what an earlier plan left lying elsewhere, and had not meant to move [g]. */
  needlessMove: 8,
  /** Wrapping it anew, besides the wrap itself [g]. */
  needlessRewrap: 4,
  /** Turning a vent that an earlier plan had set [g]. */
  ventTurned: 3,
  /** Each further part a lot is split into [g]. */
  split: 8,
  /** Twisting leaves off, which has to be done before eating anyway; drying what is wet [g]. */
  leavesOff: 0,
  drying: 4,
  /** A litre over the room of a place [g]: more than a whole haul, so it is never chosen where anything fits. */
  overflowLitre: 1e6,
  /** A portion eaten on a day above the pace at which the haul lasts until the next [g]. */
  aheadOfPace: 2,
  /** A gram that is not as wanted on the day it is wanted for: not ready, past its best, or eaten before. See decision 0110. */
  wishMissed: 1,
  /** A gram that is ready later than it was wanted for, and one that is eaten later, for each day. */
  dayReadyLate: 0.05,
  dayEatenLate: 0.05,
  /** Days late beyond which later is no worse [d]: what never gets ready counts as that late. */
  mostDaysLate: 14,
  /** Prefers, among days that cost the same, the earlier one for what ends sooner [share of a gram a day]. Not reported. */
  tieOfDays: 1e-6,
} as const;

/** How much of one thing people eat, and when what is left over gets eaten. Declared preferences, no source. */
export const eatingHabits = {
  /** How much faster than evenly a haul is eaten: 1 would end it on the last planned day exactly. */
  aheadOfEven: 1.25,
  /** Portions of one lot a person eats on one day. */
  portionsOfOneLot: 2,
  /** The same for seasonings. */
  portionsOfOneSeasoning: 1,
  /** Days after the last planned day when what is left over is taken to be eaten. */
  leftOverDays: 3,
  /** Share of portions eaten later than planned, and how many days later: a plan must forgive being missed. */
  lateShare: 0.2,
  lateDays: 3,
} as const;
