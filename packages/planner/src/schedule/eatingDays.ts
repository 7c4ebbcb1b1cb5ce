import { sum } from "../problem/sum.js";
import { eatenWhileSafe, thrownPortions } from "./eatenWhileSafe.js";
import { addArc, emptyNetwork, type FlowNetwork, flowOn, sendFlow } from "./minimumCostFlow.js";

/** A part waiting to be eaten: its portions, and what eating one of them costs on each day. */
export interface PartToEat {
  /** Parts of one lot share a group, and its daily limit. */
  readonly group: number;
  readonly portions: number;
  /** Cost of one portion eaten on each day, at least 0; Infinity on days it may not be eaten. */
  readonly costs: ArrayLike<number>;
  /** Cost of one portion left over after the last day, finite and at least 0. */
  readonly costLeft: number;
  /** Seasonings take no place at the table. */
  readonly takesPlace: boolean;
  /** Most portions of the whole group on one day. */
  readonly dailyLimit: number;
  /** Of what is safe for some days only once a piece is begun: portions in a piece, days after that of cutting [d], and the cost of one portion thrown away then. */
  readonly piece?: { readonly size: number; readonly keeps: number; readonly costThrown: number };
}

/** The cheapest eating days: portions of each part on each day, and left over. */
export interface EatingDays {
  readonly eaten: readonly (readonly number[])[];
  readonly left: readonly number[];
  /** How many of what is left are of a piece that was begun and is no longer safe then. */
  readonly thrown: readonly number[];
  readonly cost: number;
  /** What one more portion at the table would save on each day (0 where there is room): the day's dual price. */
  readonly dayPrices: readonly number[];
}

interface Built {
  readonly network: FlowNetwork;
  readonly sink: number;
  /** Node of each day at the table. */
  readonly firstDay: number;
  /** Arc of each part to each day (−1 where it may not be eaten), and to being left over. */
  readonly arcs: readonly (readonly number[])[];
  readonly leftArcs: readonly number[];
}

/** Portions a day that cost nothing more, and what each further one costs [g]. */
export interface Pace {
  readonly portions: number;
  readonly cost: number;
}

const noPace: Pace = { portions: Number.POSITIVE_INFINITY, cost: 0 };

function groupSizes(parts: readonly PartToEat[]): Map<number, number> {
  const sizes = new Map<number, number>();
  for (const part of parts) sizes.set(part.group, (sizes.get(part.group) ?? 0) + 1);
  return sizes;
}

/**
 * Nodes: one a part; the days at the table; for every split lot one a day, through which its parts share the daily limit;
 * the sink. A lot in one part needs no such node: its arc carries the limit.
 */
function build(parts: readonly PartToEat[], places: readonly number[], pace: Pace): Built {
  const days = places.length;
  const split = [...groupSizes(parts)].filter(([, size]) => size > 1).map(([group]) => group);
  const firstDay = parts.length;
  const firstGroupDay = firstDay + days;
  const sink = firstGroupDay + split.length * days;
  const network = emptyNetwork(sink + 1);
  for (let day = 0; day < days; day++) {
    const easy = Math.min(places[day]!, pace.portions);
    addArc(network, firstDay + day, sink, easy, 0);
    if (places[day]! > easy) addArc(network, firstDay + day, sink, places[day]! - easy, pace.cost);
  }
  const target = (part: PartToEat, day: number): number => (part.takesPlace ? firstDay + day : sink);
  for (const [position, group] of split.entries()) {
    const any = parts.find((part) => part.group === group)!;
    for (let day = 0; day < days; day++) {
      addArc(network, firstGroupDay + position * days + day, target(any, day), any.dailyLimit, 0);
    }
  }
  const arcs = parts.map((part, node) => {
    const position = split.indexOf(part.group);
    return Array.from({ length: days }, (_, day) => {
      const cost = part.costs[day]!;
      if (!Number.isFinite(cost)) return -1;
      const head = position < 0 ? target(part, day) : firstGroupDay + position * days + day;
      return addArc(network, node, head, part.dailyLimit, cost);
    });
  });
  const leftArcs = parts.map((part, node) => addArc(network, node, sink, part.portions, part.costLeft));
  return { network, sink, firstDay, arcs, leftArcs };
}

/**
 * Which portions are eaten on which day, solved exactly as a minimum-cost flow; after it, what would be eaten of a piece begun too long ago is put right (`eatenWhileSafe`).
 *
 * @param parts what there is to eat
 * @param pace portions a day above which each costs more (not counted in the returned cost, see `aheadOfPace`)
 * @param places portions that can be eaten on each day (0 on days away), seasonings not counted
 */
export function eatingDays(
  parts: readonly PartToEat[],
  places: readonly number[],
  pace: Pace = noPace,
): EatingDays {
  const { network, sink, firstDay, arcs, leftArcs } = build(parts, places, pace);
  for (const [node, part] of parts.entries()) sendFlow(network, node, sink, part.portions);
  const cheapest = arcs.map((row) => row.map((arc) => (arc < 0 ? 0 : flowOn(network, arc))));
  const eaten = eatenWhileSafe(parts, places, pace, cheapest);
  const left = parts.map((part, index) =>
    eaten[index] === cheapest[index] ? flowOn(network, leftArcs[index]!) : part.portions - sum(eaten[index]!),
  );
  const thrown = parts.map((part, index) => thrownPortions(part, eaten[index]!));
  let cost = 0;
  parts.forEach((part, index) => {
    cost += (left[index]! - thrown[index]!) * part.costLeft;
    if (thrown[index]! > 0) cost += thrown[index]! * part.piece!.costThrown;
    eaten[index]!.forEach((portions, day) => {
      if (portions > 0) cost += portions * part.costs[day]!;
    });
  });
  const dayPrices = places.map((_, day) =>
    Math.max(0, network.potentials[sink]! - network.potentials[firstDay + day]!),
  );
  return { eaten, left, thrown, cost, dayPrices };
}
