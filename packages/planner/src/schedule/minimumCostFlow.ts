import { NodeQueue } from "./nodeQueue.js";

/**
 * Minimum-cost flow by successive shortest paths with node potentials (Ahuja, Magnanti & Orlin, Network Flows, 1993,
 * section 9.7; from memory, checked in tests against the linear-programming solver HiGHS). Exact: with whole capacities
 * and supplies the flow is whole. Costs must be at least 0.
 *
 * Nodes are 0 … nodes − 1.
 */
export interface FlowNetwork {
  readonly nodes: number;
  /** Arcs lie in pairs: 2k forward, 2k + 1 its reverse. */
  readonly heads: number[];
  readonly capacities: number[];
  readonly costs: number[];
  /** Arcs leaving each node. */
  readonly leaving: number[][];
  /** Potentials: with every flow sent so far, cost + potential(tail) − potential(head) ≥ 0 on every arc with room. */
  readonly potentials: Float64Array;
  /** Room for the shortest paths, used again by each. */
  readonly tree: Tree;
}

interface Tree {
  readonly distances: Float64Array;
  readonly arrivedBy: Int32Array;
  readonly done: Uint8Array;
  readonly open: NodeQueue;
}

export function emptyNetwork(nodes: number): FlowNetwork {
  const distances = new Float64Array(nodes);
  return {
    nodes,
    heads: [],
    capacities: [],
    costs: [],
    leaving: Array.from({ length: nodes }, () => []),
    potentials: new Float64Array(nodes),
    tree: {
      distances,
      arrivedBy: new Int32Array(nodes),
      done: new Uint8Array(nodes),
      open: new NodeQueue(distances),
    },
  };
}

/** Adds an arc and returns its number; the flow on it is the capacity of its reverse, arc + 1. */
export function addArc(
  network: FlowNetwork,
  tail: number,
  head: number,
  capacity: number,
  cost: number,
): number {
  const arc = network.heads.length;
  network.heads.push(head, tail);
  network.capacities.push(capacity, 0);
  network.costs.push(cost, -cost);
  network.leaving[tail]!.push(arc);
  network.leaving[head]!.push(arc + 1);
  return arc;
}

export const flowOn = (network: FlowNetwork, arc: number): number => network.capacities[arc + 1]!;

function relax(
  { leaving, capacities, costs, heads, potentials, tree: { distances, done, arrivedBy, open } }: FlowNetwork,
  node: number,
): void {
  const reached = distances[node]!;
  const base = reached + potentials[node]!;
  const arcs = leaving[node]!;
  for (let index = 0; index < arcs.length; index++) {
    const arc = arcs[index]!;
    if (capacities[arc]! <= 0) continue;
    const head = heads[arc]!;
    if (done[head]) continue;
    // Rounding can leave a reduced cost a hair below 0; the distance then stays that of the node itself.
    const distance = Math.max(reached, base + costs[arc]! - potentials[head]!);
    if (distance < distances[head]!) {
      distances[head] = distance;
      arrivedBy[head] = arc;
      open.reached(head);
    }
  }
}

/**
 * Where the cheapest arc out of the source leads to a node that reaches the sink for nothing more, that is a shortest path, and no node is nearer than
 * the sink. Says whether it is so; most portions are sent this way before the days fill.
 */
function straightAhead(network: FlowNetwork, source: number, sink: number): boolean {
  const { leaving, capacities, costs, heads, potentials, tree } = network;
  let nearest = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const arc of leaving[source]!) {
    if (capacities[arc]! <= 0) continue;
    const distance = Math.max(0, potentials[source]! + costs[arc]! - potentials[heads[arc]!]!);
    if (distance < least || (distance === least && heads[arc]! < heads[nearest]!)) {
      least = distance;
      nearest = arc;
    }
  }
  if (nearest < 0) return false;
  const node = heads[nearest]!;
  tree.arrivedBy[node] = nearest;
  if (node !== sink) {
    const last = leaving[node]!.find(
      (arc) =>
        heads[arc] === sink &&
        capacities[arc]! > 0 &&
        least + potentials[node]! + costs[arc]! - potentials[sink]! <= least,
    );
    if (last === undefined) return false;
    tree.arrivedBy[sink] = last;
  }
  tree.distances.fill(least);
  tree.distances[source] = 0;
  return true;
}

/** Shortest path by reduced cost from `source`, as far as `sink`. */
function shortestPath(network: FlowNetwork, source: number, sink: number): void {
  const { distances, arrivedBy, done, open } = network.tree;
  distances.fill(Number.POSITIVE_INFINITY);
  arrivedBy.fill(-1);
  done.fill(0);
  open.clear();
  distances[source] = 0;
  for (let node = source; node !== -1 && node !== sink; node = open.nearest()) {
    done[node] = 1;
    relax(network, node);
  }
}

/** Sends up to `wanted` along the path found; returns how much went. */
function augment(
  { heads, capacities, tree }: FlowNetwork,
  source: number,
  sink: number,
  wanted: number,
): number {
  const { arrivedBy } = tree;
  let amount = wanted;
  for (let node = sink; node !== source; node = heads[arrivedBy[node]! ^ 1]!) {
    amount = Math.min(amount, capacities[arrivedBy[node]!]!);
  }
  for (let node = sink; node !== source; node = heads[arrivedBy[node]! ^ 1]!) {
    const arc = arrivedBy[node]!;
    capacities[arc] = capacities[arc]! - amount;
    capacities[arc ^ 1] = capacities[arc ^ 1]! + amount;
  }
  return amount;
}

/**
 * Sends `supply` from `source` to `sink` at least cost, on top of what flows already (which may be rerouted).
 * Returns what was sent: less than `supply` when the network has no more room.
 */
export function sendFlow(network: FlowNetwork, source: number, sink: number, supply: number): number {
  const { potentials } = network;
  const { distances } = network.tree;
  let sent = 0;
  while (sent < supply) {
    if (!straightAhead(network, source, sink)) shortestPath(network, source, sink);
    const reach = distances[sink]!;
    if (reach === Number.POSITIVE_INFINITY) break;
    for (let node = 0; node < network.nodes; node++) {
      potentials[node] = potentials[node]! + Math.min(distances[node]!, reach);
    }
    sent += augment(network, source, sink, supply - sent);
  }
  return sent;
}
