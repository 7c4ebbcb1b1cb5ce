import { untouchedVent } from "../problem/bindKitchen.js";
import type { Choice } from "../problem/programme.js";
import { litresInStay } from "../rules/capacity.js";
import { weights } from "../rules/weights.js";
import type { Option } from "./options.js";
import type { Prepared } from "./prepare.js";

/** Arrangements of whole lots handed on, at most. */
const mostStarts = 60;

/** Arrangements looked at before the rest is left (the cheapest options are looked at first). */
const mostLookedAt = 200_000;

interface Arrangement {
  readonly options: readonly Option[];
  /** Costs of the lots alone, and of the litres over, as if everything lay where it lies first [g]. */
  readonly cost: number;
}

/** The cheapest option alone for every way through the places, and the barest where that is another. */
function byPath(options: readonly Option[]): Option[] {
  const paths = new Map<string, Option>();
  for (const option of options) {
    const { stays } = option.programme;
    const path = stays.map(({ place }) => place).join(" > ");
    const bare = stays.every(({ wrap }) => wrap === "none") ? " bare" : "";
    for (const key of [path, path + bare]) if (!paths.has(key)) paths.set(key, option);
  }
  return [...new Set(paths.values())];
}

/** Looks through all arrangements of whole lots by their costs alone and their room, none of them simulated together. */
class Arranger {
  readonly #prepared: Prepared;
  readonly #options: Option[][];
  /** The least that the lots from each on can cost. */
  readonly #least: number[];
  readonly #found: Arrangement[] = [];
  #looked = 0;

  constructor(prepared: Prepared) {
    this.#prepared = prepared;
    this.#options = prepared.problem.lots.map(({ index }) => byPath(prepared.options(index)));
    this.#least = [0];
    for (const options of [...this.#options].reverse()) {
      this.#least.unshift(this.#least[0]! + Math.min(...options.map(({ soloCost }) => soloCost)));
    }
  }

  best(): Arrangement[] {
    const free = Float64Array.from(this.#prepared.problem.places, ({ place }) => place.litres);
    this.#lay(0, [], 0, free);
    return this.#found;
  }

  #lay(lot: number, chosen: readonly Option[], cost: number, free: Float64Array): void {
    const worst = this.#found.length < mostStarts ? Number.POSITIVE_INFINITY : this.#found.at(-1)!.cost;
    if (cost + this.#least[lot]! >= worst || this.#looked > mostLookedAt) return;
    if (lot === this.#options.length) {
      this.#keep({ options: chosen, cost });
      return;
    }
    const { portions } = this.#prepared.problem.lots[lot]!;
    for (const option of this.#options[lot]!) {
      this.#looked++;
      const part = { lot, portions, programme: option.programme };
      const { place } = option.programme.stays[0]!;
      const before = free[place]!;
      const litres = litresInStay(this.#prepared.problem, part, 0);
      free[place] = before - litres;
      const over = Math.min(litres, Math.max(0, litres - before)) * weights.overflowLitre;
      this.#lay(lot + 1, [...chosen, option], cost + option.soloCost + over, free);
      free[place] = before;
    }
  }

  #keep(arrangement: Arrangement): void {
    this.#found.push(arrangement);
    this.#found.sort((a, b) => a.cost - b.cost);
    if (this.#found.length > mostStarts) this.#found.pop();
  }
}

/**
 * Arrangements of whole lots to begin from in a small case: the cheapest by the lots' costs alone and the room they take. Where room is
 * short, three lots or more may have to change places at once, which no exchange of two finds.
 */
export const fittingStarts = (prepared: Prepared): Choice[] =>
  new Arranger(prepared).best().map(({ options }) => ({
    parts: options.map(({ programme }, lot) => ({
      lot,
      portions: prepared.problem.lots[lot]!.portions,
      programme,
    })),
    vents: prepared.problem.vents.map(() => untouchedVent),
  }));
