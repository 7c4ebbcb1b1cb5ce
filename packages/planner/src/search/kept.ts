import type { Trajectory } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import type { Programme } from "../problem/programme.js";
import type { Option } from "./options.js";
import { isSmall } from "./smallCase.js";
import { alikeLots, Solos } from "./solos.js";

/** Spreads of lots alike with a programme, by the programme itself and by what it says. */
export interface KeptSpreads {
  readonly byProgramme: Map<string, Map<Programme, number>>;
  readonly byName: Map<string, number>;
}

const noSpreads = (): KeptSpreads => ({ byProgramme: new Map(), byName: new Map() });

/**
 * What was worked out about lots alone in one kitchen for one household. It is kept by what a lot is like, not by which lot of which haul it is, so it
 * still holds when the haul is corrected. What is kept never changes a result.
 */
export interface Kept {
  readonly solos: Solos;
  readonly options: Map<string, readonly Option[]>;
  readonly spreads: KeptSpreads;
  readonly ripeningSpreads: KeptSpreads;
  /** What runs worked out about kinds and temperatures, handed on from each to the next. */
  compiler: Trajectory["inner"]["compiler"] | undefined;
}

export const nothingKept = (problem: Problem): Kept => ({
  solos: new Solos(problem),
  options: new Map(),
  spreads: noSpreads(),
  ripeningSpreads: noSpreads(),
  compiler: undefined,
});

const wished = ({ wish }: BoundLot): string => (wish ? Object.values(wish).join(" ") : "");

/** Two lots for which the same options are the best, and cost the same, as a text. */
export const interchangeable = (lot: BoundLot): string =>
  `${alikeLots(lot)} ${lot.portions} ${lot.splitUnit} ${lot.lot.extraDays} ${JSON.stringify(lot.lot.carried)} ${wished(lot)}`;

const alike = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Whether what was worked out for one problem holds for the lots of another: same kitchen, household and catalogue, and looked at as closely. */
export const stillHolds = (before: Problem, now: Problem): boolean =>
  before.catalogue === now.catalogue &&
  isSmall(before) === isSmall(now) &&
  alike(before.kitchen, now.kitchen) &&
  alike(before.household, now.household);
