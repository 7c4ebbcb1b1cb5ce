/**
 * Nodes that have been reached and not yet left, nearest first, of level ones the one with the lowest number: a binary heap in which a node moves
 * forward when a shorter way to it is found (Williams, Heapsort, Communications of the ACM 7, 1964, 347; from memory).
 */
export class NodeQueue {
  readonly #distances: Float64Array;
  /** The heap: every node is no farther than its two children at 2k + 1 and 2k + 2. */
  readonly #heap: Int32Array;
  /** Where each node stands in the heap; −1: nowhere. */
  readonly #place: Int32Array;
  #size = 0;

  /** @param distances of each node; whoever shortens one calls `reached` */
  constructor(distances: Float64Array) {
    this.#distances = distances;
    this.#heap = new Int32Array(distances.length);
    this.#place = new Int32Array(distances.length).fill(-1);
  }

  clear(): void {
    for (let position = 0; position < this.#size; position++) this.#place[this.#heap[position]!] = -1;
    this.#size = 0;
  }

  #before(one: number, other: number): boolean {
    const near = this.#distances[one]!;
    const far = this.#distances[other]!;
    return near < far || (near === far && one < other);
  }

  #put(node: number, position: number): void {
    this.#heap[position] = node;
    this.#place[node] = position;
  }

  /** A node was reached, or reached on a shorter way. */
  reached(node: number): void {
    let position = this.#place[node]!;
    if (position < 0) position = this.#size++;
    while (position > 0) {
      const parent = (position - 1) >> 1;
      const above = this.#heap[parent]!;
      if (!this.#before(node, above)) break;
      this.#put(above, position);
      position = parent;
    }
    this.#put(node, position);
  }

  /** Takes the nearest node out; −1 when there is none. */
  nearest(): number {
    if (this.#size === 0) return -1;
    const nearest = this.#heap[0]!;
    this.#place[nearest] = -1;
    this.#size--;
    if (this.#size > 0) this.#sink(this.#heap[this.#size]!);
    return nearest;
  }

  /** Finds the place of a node that was put in front. */
  #sink(node: number): void {
    let position = 0;
    for (;;) {
      let child = 2 * position + 1;
      if (child >= this.#size) break;
      if (child + 1 < this.#size && this.#before(this.#heap[child + 1]!, this.#heap[child]!)) child++;
      const below = this.#heap[child]!;
      if (!this.#before(below, node)) break;
      this.#put(below, position);
      position = child;
    }
    this.#put(node, position);
  }
}
