import { litresInStay } from "../rules/capacity.js";
import type { Option } from "./options.js";
import type { Prepared } from "./prepare.js";

/** Rounds in which prices are corrected; each looks once at every option of every lot, and simulates nothing. Declared, no source. */
const rounds = 60;

/** Litres an option takes in some place. */
interface Taken {
  readonly place: number;
  readonly litres: number;
}

/** Litres a whole lot takes with an option, by place, a stay taken to last. */
export function litresOfOption({ problem }: Prepared, lot: number, { programme }: Option): Taken[] {
  const part = { lot, portions: problem.lots[lot]!.portions, programme };
  return programme.stays.map(({ place }, stay) => ({ place, litres: litresInStay(problem, part, stay) }));
}

interface Offer {
  readonly cost: number;
  readonly taken: readonly Taken[];
}

const atPrices = ({ cost, taken }: Offer, prices: Float64Array): number =>
  taken.reduce((sum, { place, litres }) => sum + prices[place]! * litres, cost);

/** Litres wanted in each place when every lot goes where it is cheapest. */
function wantedAt(offers: readonly (readonly Offer[])[], prices: Float64Array): Float64Array {
  const wanted = new Float64Array(prices.length);
  for (const ofLot of offers) {
    let best = ofLot[0]!;
    let least = Number.POSITIVE_INFINITY;
    for (const offer of ofLot) {
      const cost = atPrices(offer, prices);
      if (cost < least) [best, least] = [offer, cost];
    }
    for (const { place, litres } of best.taken) wanted[place]! += litres;
  }
  return wanted;
}

/**
 * What a litre of each place is worth [g], by lots alone: prices at which about as much wants to lie there as there is room for. They rise where
 * more wants to come and fall where room is left, by less each round (the subgradient method for the room of a generalised assignment). A bulky lot that
 * gains little in a place gives way there to many small ones that gain more. 0 wherever there is room enough.
 */
export function roomPrices(prepared: Prepared): Float64Array {
  const { lots, places } = prepared.problem;
  const offers = lots.map(({ index }) =>
    prepared.options(index).map((option) => ({
      cost: option.soloCost,
      taken: litresOfOption(prepared, index, option),
    })),
  );
  const litres = lots.reduce((sum, lot) => sum + lot.litres, 0);
  const grams = lots.reduce((sum, lot) => sum + lot.portions * lot.gramsPerPortion, 0);
  const prices = new Float64Array(places.length);
  const mean = new Float64Array(places.length);
  for (let round = 0; round < rounds; round++) {
    const wanted = wantedAt(offers, prices);
    const step = grams / litres / (1 + round / 4);
    for (const { index, place } of places) {
      const over = (wanted[index]! - place.litres) / place.litres;
      prices[index] = Math.max(0, prices[index]! + step * Math.max(-1, Math.min(1, over)));
      // The mean of the later half: single rounds swing about the price.
      if (2 * round >= rounds) mean[index]! += prices[index]! / (rounds / 2);
    }
  }
  return mean;
}

/** Whether room is worth something in every cold place: then it matters most which lots give way to which. */
export function coldIsShort(prepared: Prepared): boolean {
  const prices = roomPrices(prepared);
  return prepared.problem.places.every(({ cold, index }) => !cold || prices[index]! > 0);
}
