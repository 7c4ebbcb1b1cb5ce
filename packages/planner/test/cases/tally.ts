/** Largest relative difference that counts as the same total: both are sums of the same figures. */
export const same = 1e-6;

/** Keeps count of how often the best was found, and prints it. */
export class Tally {
  #cases = 0;
  #found = 0;
  #worst = 0;

  add(gap: number): void {
    this.#cases++;
    if (gap <= same) this.#found++;
    this.#worst = Math.max(this.#worst, gap);
  }

  get found(): number {
    return this.#found;
  }

  toString(): string {
    return `best found in ${this.#found} of ${this.#cases} cases, worst gap ${(this.#worst * 100).toFixed(2)} %`;
  }
}
