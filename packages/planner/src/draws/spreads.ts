import { publicationSpread, usualSpentSpread } from "@keepwright/physics";
import { eatingHabits } from "../rules/weights.js";

/** How far what is drawn scatters. The usual sizes are those the planner's own chances are made from, and stand with their sources where those come from. */
export interface Spreads {
  /** Times each place's own spread of temperature [1]. */
  readonly temperature: number;
  /** Share of the variance of temperature that all places of one refrigerator, or all places in the room, have in common [1]. */
  readonly sharedAir: number;
  /** Standard deviation of the share of life spent on arrival [1], drawn for each lot. */
  readonly age: number;
  /** Times each kind's own spread of ln(life) among lots [1], drawn for each lot. */
  readonly biology: number;
  /** Standard deviation of ln(life) between publications [1], drawn for each kind: an error about a kind is one for all its lots. */
  readonly reports: number;
  /** Relative error of ln(life / published life) [1], drawn for each kind. */
  readonly carried: number;
  /** Share of portions eaten late [1], drawn for each portion. */
  readonly lateShare: number;
}

/**
 * The spreads of the planner's own chances. That a refrigerator's places are warm together is declared, no source: what scatters most between homes is the
 * refrigerator (means of −0.6 to 10.4 °C in 112 homes, Evans et al. 2014), and one that is warm is warm all over. See docs/decisions/0108-draws.md.
 */
export const usualSpreads: Spreads = {
  temperature: 1,
  sharedAir: 1,
  age: usualSpentSpread,
  biology: 1,
  reports: publicationSpread.betweenReports,
  carried: publicationSpread.perCarried,
  lateShare: eatingHabits.lateShare,
};

/** Nothing scatters: every draw is the middle. */
export const noSpreads: Spreads = {
  temperature: 0,
  sharedAir: 1,
  age: 0,
  biology: 0,
  reports: 0,
  carried: 0,
  lateShare: 0,
};
