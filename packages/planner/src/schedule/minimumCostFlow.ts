/**
 * Minimum-cost flow by successive shortest paths with node potentials (Ahuja, Magnanti & Orlin, Network Flows, 1993,
 * section 9.7; from memory, checked in tests against the linear-programming solver HiGHS). Exact: with whole capacities
 * and supplies the flow is whole. Costs must be at least 0.
 *
 * Nodes are 0 … nodes − 1. The graphs here have at most a few hundred nodes, so the nearest node is found by a plain scan.
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
}

export const emptyNetwork = (nodes: number): FlowNetwork => ({
  nodes,
  heads: [],
  capacities: [],
  costs: [],
  leaving: Array.from({ length: nodes }, () => []),
  potentials: new Float64Array(nodes),
});

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

interface Tree {
  readonly distances: Float64Array;
  readonly arrivedBy: Int32Array;
  readonly done: Uint8Array;
}

function nearestOpen({ distances, done }: Tree): number {
  let nearest = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let node = 0; node < distances.length; node++) {
    if (!done[node] && distances[node]! < least) {
      least = distances[node]!;
      nearest = node;
    }
  }
  return nearest;
}

function relax(
  { leaving, capacities, costs, heads, potentials }: FlowNetwork,
  tree: Tree,
  node: number,
): void {
  const base = tree.distances[node]! + potentials[node]!;
  for (const arc of leaving[node]!) {
    if (capacities[arc]! <= 0) continue;
    const head = heads[arc]!;
    // Rounding can leave a reduced cost a hair below 0; the distance then stays that of the node itself.
    const distance = Math.max(tree.distances[node]!, base + costs[arc]! - potentials[head]!);
    if (!tree.done[head] && distance < tree.distances[head]!) {
      tree.distances[head] = distance;
      tree.arrivedBy[head] = arc;
    }
  }
}

/** Shortest path by reduced cost from `source`, as far as `sink`. */
function shortestPath(network: FlowNetwork, source: number, sink: number): Tree {
  const tree: Tree = {
    distances: new Float64Array(network.nodes).fill(Number.POSITIVE_INFINITY),
    arrivedBy: new Int32Array(network.nodes).fill(-1),
    done: new Uint8Array(network.nodes),
  };
  tree.distances[source] = 0;
  for (let node = source; node !== -1 && node !== sink; node = nearestOpen(tree)) {
    tree.done[node] = 1;
    relax(network, tree, node);
  }
  return tree;
}

/** Sends up to `wanted` along the path found; returns how much went. */
function augment(network: FlowNetwork, tree: Tree, source: number, sink: number, wanted: number): number {
  const { heads, capacities } = network;
  let amount = wanted;
  for (let node = sink; node !== source; node = heads[tree.arrivedBy[node]! ^ 1]!) {
    amount = Math.min(amount, capacities[tree.arrivedBy[node]!]!);
  }
  for (let node = sink; node !== source; node = heads[tree.arrivedBy[node]! ^ 1]!) {
    const arc = tree.arrivedBy[node]!;
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
  let sent = 0;
  while (sent < supply) {
    const tree = shortestPath(network, source, sink);
    const reach = tree.distances[sink]!;
    if (reach === Number.POSITIVE_INFINITY) break;
    const { potentials } = network;
    for (let node = 0; node < network.nodes; node++) {
      potentials[node] = potentials[node]! + Math.min(tree.distances[node]!, reach);
    }
    sent += augment(network, tree, source, sink, supply - sent);
  }
  return sent;
}
