/** What something costs [g], and the litres it takes of each place. */
export interface Offer {
  readonly cost: number;
  readonly litres: readonly number[];
}

/** Rounds in which prices are corrected. Declared, no source. */
const rounds = 80;

/** Later rounds take shorter steps. Declared, no source. */
const shorter = 0.3;

/** What an offer costs with the room it takes paid for [g]. */
export function priced({ cost, litres }: Offer, prices: Float64Array): number {
  let sum = cost;
  for (let place = 0; place < prices.length; place++) sum += prices[place]! * litres[place]!;
  return sum;
}

/** The least that all can cost with their room paid for, less what all the room is worth; and the litres wanted then less those there are. */
function boundAt(
  all: readonly (readonly Offer[])[],
  room: readonly number[],
  prices: Float64Array,
): { readonly least: number; readonly over: Float64Array } {
  const over = Float64Array.from(room, (litres) => -litres);
  let least = 0;
  for (const offers of all) {
    let best = offers[0]!;
    let cost = Number.POSITIVE_INFINITY;
    for (const offer of offers) {
      const here = priced(offer, prices);
      if (here < cost) [best, cost] = [offer, here];
    }
    least += cost;
    for (let place = 0; place < room.length; place++) over[place]! += best.litres[place]!;
  }
  for (let place = 0; place < room.length; place++) least -= prices[place]! * room[place]!;
  return { least, over };
}

/** Square of the litres by which prices are to be corrected: room that is left and costs nothing is none. */
const squared = (over: Float64Array, prices: Float64Array): number =>
  over.reduce((sum, litres, place) => sum + (litres < 0 && prices[place] === 0 ? 0 : litres * litres), 0);

/**
 * Prices of a litre of each place [g] at which no assignment can cost less than a bound that is as high as can be found: the Lagrange multipliers of the room, by the subgradient method with
 * steps towards a cost that is known (Polyak's).
 *
 * @param known what an assignment is to cost less than [g]
 * @param most what a litre over the room costs [g]: no price is higher
 */
export function bestPrices(
  all: readonly (readonly Offer[])[],
  room: readonly number[],
  known: number,
  most: number,
): Float64Array {
  const prices = new Float64Array(room.length);
  let best = prices.slice();
  let highest = Number.NEGATIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    const { least, over } = boundAt(all, room, prices);
    if (least > highest) [best, highest] = [prices.slice(), least];
    const length = squared(over, prices);
    if (length < 1e-12) break;
    const step = ((known - least) / length) * (2 * round < rounds ? 1 : shorter);
    for (let place = 0; place < room.length; place++) {
      prices[place] = Math.min(most, Math.max(0, prices[place]! + step * over[place]!));
    }
  }
  return best;
}
