/** Largest relative difference that counts as the same total: both are sums of the same figures. */
export const same = 1e-6;

/**
 * Keeps count of how often the best of some choices was found, and prints it. Where the plan lies below them all it is none of them (it parts a lot where every choice keeps lots whole): whether it is
 * the best there is nobody knows, so such a case counts neither as found nor as missed.
 */
export class Tally {
  #cases = 0;
  #found = 0;
  #below = 0;
  #worst = 0;

  add(gap: number): void {
    this.#cases++;
    if (gap < -same) this.#below++;
    else if (gap <= same) this.#found++;
    this.#worst = Math.max(this.#worst, gap);
  }

  /** Cases in which the plan was found to be the best, of those in which the best is known. */
  get found(): number {
    return this.#found;
  }

  /** Cases in which the best is known: the plan does not lie below every choice that was judged. */
  get known(): number {
    return this.#cases - this.#below;
  }

  toString(): string {
    return `best found in ${this.#found} of ${this.known} cases, worst gap ${(this.#worst * 100).toFixed(2)} %; below every choice tried in ${this.#below} more`;
  }
}
