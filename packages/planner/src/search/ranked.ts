import { type Part, partDoing, programmeKey } from "../problem/programme.js";
import { litresInStay } from "../rules/capacity.js";
import { programmeEffort } from "../rules/effort.js";
import { weights } from "../rules/weights.js";
import type { Evaluation } from "./evaluate.js";
import { beyondAnyCost, type EstimatedChange } from "./judge.js";
import type { Option } from "./options.js";
import type { Search } from "./search.js";
import { isSmall } from "./smallCase.js";

/** An option of a part with the estimated change [g] it would bring. */
export interface RankedOption extends EstimatedChange {
  readonly part: number;
  readonly option: Option;
}

/** The part with another programme. */
export const partWith = (current: Evaluation, index: number, option: Option): Part =>
  partDoing(current.choice.parts[index]!, option.programme);

/**
 * The least an option of a part could cost: the part as if alone in the kitchen, its air dry or damp (or that of a full kitchen, where room is short) as
 * suits it best. Neighbours only add ethylene.
 */
export function hopefulCost(
  { prepared, judge, crowded }: Search,
  current: Evaluation,
  part: Part,
  option: Option,
): number {
  let least = Number.POSITIVE_INFINITY;
  for (const cost of prepared.soloCosts(part.lot, option)) {
    least = Math.min(least, judge.price(current, part, cost));
  }
  const whenCrowded = crowded?.costs(part.lot, option);
  if (whenCrowded) least = Math.min(least, judge.price(current, part, whenCrowded));
  return least + option.effort;
}

/** Ethylene [µL/h] at its most below which a part is taken to do its neighbours no harm: an apple gives off tens of times that. */
const harmless = 0.5;

/** Whether a part gives off next to nothing of the gas that ripens. */
export function givesNoGas({ prepared }: Search, part: Part): boolean {
  const { produce, gramsPerPortion } = prepared.problem.lots[part.lot]!;
  return Math.max(...produce.ethyleneRipe.values) * ((part.portions * gramsPerPortion) / 1000) < harmless;
}

function harmsNobody(search: Search, part: Part): boolean {
  const { problem, smelling } = search.prepared;
  return givesNoGas(search, part) && !smelling.has(problem.lots[part.lot]!.produce.id);
}

/** What the part costs now, with what the others would gain if it were gone [g]: found by taking it away. */
function costWithHarm({ judge }: Search, current: Evaluation, index: number): number {
  const gone = judge.estimate(current, [{ part: index, like: index }]);
  // Taking a part away counts as joining two, which is not meant here.
  return -gone.cost - weights.split;
}

/** Hope is judged without neighbours and at a longer step: an option may be better than hoped by this share of its grams. */
const allowance = 0.003;

function allowanceFor({ prepared }: Search, part: Part): number {
  return allowance * part.portions * prepared.problem.lots[part.lot]!.gramsPerPortion;
}

type ByPart = Map<number, number>;
const costsWithHarm = new WeakMap<Evaluation, ByPart>();

/** The part's cost now with the harm it does, and a little more: an option that costs less by itself is worth knowing in full. */
export function costToBeat(search: Search, current: Evaluation, index: number): number {
  const known: ByPart = costsWithHarm.get(current) ?? new Map();
  costsWithHarm.set(current, known);
  const cost = known.get(index) ?? costWithHarm(search, current, index);
  known.set(index, cost);
  return cost + allowanceFor(search, current.choice.parts[index]!);
}

/** The same for hopes, taking the word of a part that gives off next to nothing: an option hoped to cost less is worth a look. */
function costToHopeFor(search: Search, current: Evaluation, index: number): number {
  const part = current.choice.parts[index]!;
  if (!harmsNobody(search, part)) return costToBeat(search, current, index);
  const lot = search.prepared.problem.lots[part.lot];
  const now = search.judge.priceNow(current, index) + programmeEffort(part.programme, lot);
  return now + allowanceFor(search, part);
}

/** Options looked at in earnest: the most hopeful for every last place, and the most hopeful of all. Small cases: all. */
const mostHopeful = 3;

/**
 * Whether a part is wanted for a day, or gives off the gas that ripens one that is. What is hoped of an option leaves the neighbours out, and here
 * they are the point of it.
 */
function mayServeWish({ current, prepared: { problem } }: Search, index: number): boolean {
  if (!problem.lots.some(({ wish }) => wish !== undefined)) return false;
  const { produce, wish } = problem.lots[current.choice.parts[index]!.lot]!;
  return wish !== undefined || produce.ripening !== undefined;
}

/** What an option must be hoped to cost less than: nothing is ruled out in small hauls, nor for what lies in an overfull place or may serve a wish. */
export function limitOfHope(search: Search, index: number): number {
  const { current, prepared } = search;
  const crowded = current.choice.parts[index]!.programme.stays.some((stay) => current.over[stay.place]! > 0);
  const small = isSmall(prepared.problem);
  return crowded || small || mayServeWish(search, index)
    ? beyondAnyCost
    : costToHopeFor(search, current, index);
}

/** Options from which on it pays to know what the part costs with the harm it does, to leave out what others would have of them. */
const manyHopeful = 3;

interface Hopeful {
  readonly option: Option;
  readonly to: Part;
  readonly hope: number;
}

/**
 * The few worth an estimate, most hopeful first: for every last place the most hopeful and, as long as what is tried there finds too little room,
 * the next that takes less.
 */
class Worth {
  readonly #small: boolean;
  /** Litres an option must take less than, by last place: 0 once one has fitted. */
  readonly #room = new Map<number, number>();
  #tried = 0;

  constructor({ prepared }: Search) {
    this.#small = isSmall(prepared.problem);
  }

  estimating(place: number, litres: number): boolean {
    const worth = litres < (this.#room.get(place) ?? Number.POSITIVE_INFINITY) || this.#tried < mostHopeful;
    this.#tried++;
    return this.#small || worth;
  }

  learnt(place: number, litres: number, fits: boolean): void {
    this.#room.set(place, fits ? 0 : Math.min(litres, this.#room.get(place) ?? litres));
  }
}

/** Estimates the hopeful ones, until the rest could not be better than the best found that has room. */
function estimated(search: Search, index: number, hopeful: readonly Hopeful[], now: number): RankedOption[] {
  const ranked: RankedOption[] = [];
  if (hopeful.length === 0) return ranked;
  const worth = new Worth(search);
  // The cost to beat takes an estimate itself: for a few options it is not worth knowing.
  const most =
    now < beyondAnyCost && hopeful.length >= manyHopeful
      ? Math.max(now, costToBeat(search, search.current, index))
      : beyondAnyCost;
  let least = 0;
  for (const { option, to, hope } of hopeful) {
    if (hope - now >= least) break;
    const last = to.programme.stays.length - 1;
    const { place } = to.programme.stays[last]!;
    const litres = litresInStay(search.prepared.problem, to, last);
    if (!worth.estimating(place, litres)) continue;
    const change = search.judge.estimate(search.current, [{ part: index, like: index, to }], most);
    ranked.push({ part: index, option, cost: change.cost, overflow: change.overflow });
    worth.learnt(place, litres, change.overflow <= 0);
    if (change.overflow <= 0) least = Math.min(least, change.cost + change.overflow);
  }
  return ranked.sort(byChange);
}

/** Options of a part other than its own that may better things, by estimated change, best first. */
export function rankedOptions(search: Search, index: number): RankedOption[] {
  const { current, prepared } = search;
  const part = current.choice.parts[index]!;
  const own = programmeKey(part.programme);
  const now = limitOfHope(search, index);
  const hopeful: Hopeful[] = [];
  for (const option of prepared.options(part.lot)) {
    if (option.key === own) continue;
    const hope = hopefulCost(search, current, part, option);
    if (hope < now) hopeful.push({ option, to: partWith(current, index, option), hope });
  }
  hopeful.sort((a, b) => a.hope - b.hope);
  return estimated(search, index, hopeful, now);
}

/** Best first; level ones in the order of their names. */
const byChange = (a: RankedOption, b: RankedOption): number =>
  a.cost + a.overflow - b.cost - b.overflow || (a.option.key < b.option.key ? -1 : 1);

/**
 * A few options of a part away from some places, cheapest by hope, judged: for one that is to make room. `gain` [g]: what that room is worth to
 * the other; what would cost more is left out.
 */
export function waysOut(
  search: Search,
  index: number,
  places: ReadonlySet<number>,
  most: number,
  gain: number,
): RankedOption[] {
  const { current, prepared, judge } = search;
  const { lot } = current.choice.parts[index]!;
  const all = isSmall(prepared.problem) || mayServeWish(search, index);
  const limit = all ? beyondAnyCost : costToHopeFor(search, current, index) + gain;
  return prepared
    .options(lot)
    .filter(({ programme }) => !programme.stays.some((stay) => places.has(stay.place)))
    .map((option) => ({
      option,
      to: partWith(current, index, option),
      hope: hopefulCost(search, current, current.choice.parts[index]!, option),
    }))
    .filter(({ hope }) => hope < limit)
    .sort((a, b) => a.hope - b.hope)
    .slice(0, most)
    .map(({ option, to }) => {
      const { cost, overflow } = judge.estimate(current, [{ part: index, like: index, to }], limit);
      return { part: index, option, cost, overflow };
    })
    .sort(byChange);
}
