import type { Objective } from "./plan.js";

/** An objective each of whose terms is worked out by itself. */
export const termByTerm = (term: (name: keyof Objective) => number): Objective => ({
  waste: term("waste"),
  qualityLost: term("qualityLost"),
  lifeLost: term("lifeLost"),
  effort: term("effort"),
  overflow: term("overflow"),
  wishesMissed: term("wishesMissed"),
  total: term("total"),
});

/** One objective less another, term by term. */
export const objectiveLess = (one: Objective, other: Objective): Objective =>
  termByTerm((name) => one[name] - other[name]);

/** Objectives added up, term by term. */
export const objectiveSum = (objectives: readonly Objective[]): Objective =>
  termByTerm((name) => objectives.reduce((sum, one) => sum + one[name], 0));
