import type { WrapId } from "@keepwright/catalogue";
import type { Ending } from "@keepwright/physics";
import type { PlaceKind } from "../problem/kitchen.js";

/** Days until past its best: 10 %, 50 % and 90 % of lots like it. */
export interface LifeRange {
  readonly early: number;
  readonly middle: number;
  readonly late: number;
  readonly unit: "d";
}

/** What a part would come to in one place: simulated with everything else lying where the plan puts it. */
export interface Fate {
  readonly place: string;
  readonly placeKind: PlaceKind;
  readonly wrap: WrapId;
  /** Where it ripens first, when it only comes here once ripe. */
  readonly ripensIn?: string;
  readonly life: LifeRange;
  readonly endedBy: Ending;
  /** First day it is ready to eat; null when it does not get there within the planned days. */
  readonly readyOnDay: number | null;
}

/** A place the plan did not choose, and what choosing it would change. */
export interface Alternative extends Fate {
  /** Change of the whole objective [g] if only this part went there, others and vents as planned; above 0 it is worse. */
  readonly worseBy: { readonly value: number; readonly unit: "g" };
  /** It does not fit there beside the rest. */
  readonly tooFull: boolean;
}

/** Another part whose leaving would lengthen this one's life: through its ethylene or its moisture. */
export interface Blame {
  readonly part: string;
  readonly commodity: string;
  /** Middle life without it, and days that it costs. */
  readonly lifeWithout: { readonly value: number; readonly unit: "d" };
  readonly daysLost: { readonly value: number; readonly unit: "d" };
  /** Its share of all days that neighbours cost, each left out by itself, 0…1. */
  readonly share: number;
}

/** Why a part lies where it lies, as data; words are made in handout. */
export interface LotReason {
  readonly part: string;
  readonly commodity: string;
  readonly here: Fate;
  /** One for every other place it may lie in, the least bad first. */
  readonly elsewhere: readonly Alternative[];
  /** Neighbours that shorten its life here, the worst first. */
  readonly blame: readonly Blame[];
}
