import type { BoundLot } from "../problem/bindHaul.js";
import { untouchedVent } from "../problem/bindKitchen.js";
import type { Choice, Part } from "../problem/programme.js";
import { litresInStay } from "../rules/capacity.js";
import { allowedPlaces } from "../rules/cutInRefrigerator.js";
import type { Option } from "./options.js";
import type { Prepared } from "./prepare.js";
import { litresOfOption, roomPrices } from "./roomPrices.js";

/** Litres still free in each place, whatever the day: a first arrangement counts every stay as if it lasted. */
type Room = Float64Array;

const litresOf = ({ problem }: Prepared, part: Part): Map<number, number> => {
  const litres = new Map<number, number>();
  part.programme.stays.forEach((stay, index) => {
    litres.set(stay.place, Math.max(litres.get(stay.place) ?? 0, litresInStay(problem, part, index)));
  });
  return litres;
};

function take(room: Room, litres: ReadonlyMap<number, number>): void {
  for (const [place, amount] of litres) room[place] = room[place]! - amount;
}

/** Most portions (in whole split units) of a lot that fit with an option. */
function fitting(prepared: Prepared, room: Room, lotIndex: number, portions: number, option: Option): number {
  const lot = prepared.problem.lots[lotIndex]!;
  const whole = litresOf(prepared, { lot: lotIndex, portions, programme: option.programme });
  let share = 1;
  for (const [place, litres] of whole) share = Math.min(share, (room[place]! + 1e-9) / litres);
  if (share >= 1) return portions;
  return Math.max(0, Math.floor((portions * share) / lot.splitUnit) * lot.splitUnit);
}

function leastOver(prepared: Prepared, room: Room, lotIndex: number, portions: number): Option {
  const over = (option: Option): number => {
    const litres = litresOf(prepared, { lot: lotIndex, portions, programme: option.programme });
    let sum = 0;
    for (const [place, amount] of litres) sum += Math.max(0, amount - Math.max(0, room[place]!));
    return sum;
  };
  return [...prepared.options(lotIndex)].sort((a, b) => over(a) - over(b))[0]!;
}

/** Options of a lot with what the room they take is worth, cheapest first. */
function pricedOptions(prepared: Prepared, lot: number, prices: Float64Array): Priced[] {
  return prepared
    .options(lot)
    .map((option) => {
      const room = litresOfOption(prepared, lot, option).reduce(
        (sum, { place, litres }) => sum + prices[place]! * litres,
        0,
      );
      return { option, cost: option.soloCost + room };
    })
    .sort((a, b) => a.cost - b.cost);
}

interface Priced {
  readonly option: Option;
  readonly cost: number;
}

/** Puts a lot into its best option with room; what does not fit goes on to the next best, and at last wherever it is least over. */
function placeLot(prepared: Prepared, room: Room, lot: number, options: readonly Option[]): Part[] {
  const parts: Part[] = [];
  let portions = prepared.problem.lots[lot]!.portions;
  const whole = options.find((option) => fitting(prepared, room, lot, portions, option) === portions);
  for (const option of whole ? [whole] : options) {
    const here = fitting(prepared, room, lot, portions, option);
    if (here === 0) continue;
    const part: Part = { lot, portions: here, programme: option.programme };
    take(room, litresOf(prepared, part));
    parts.push(part);
    portions -= here;
    if (portions === 0) return parts;
  }
  const part: Part = { lot, portions, programme: leastOver(prepared, room, lot, portions).programme };
  take(room, litresOf(prepared, part));
  return [...parts, part];
}

/** What a lot alone would lose by going to its second-best place instead of its best. */
function regret(options: readonly Priced[]): number {
  const best = options[0]!;
  const place = best.option.programme.stays.at(-1)!.place;
  const second = options.find(({ option }) => option.programme.stays.at(-1)!.place !== place);
  return second ? second.cost - best.cost : Number.POSITIVE_INFINITY;
}

/**
 * What comes first in a first arrangement: what would lose most elsewhere, or what is hardest to fit; or the former with what room is worth counted (`roomPrices`).
 */
export type FirstOrder = "regret" | "bulk" | "priced";

/** Litres of the smallest piece of a lot that may lie apart: an uncut pumpkin fits whole or not at all. */
const bulk = ({ litres, splitUnit, portions }: BoundLot): number => (litres * splitUnit) / portions;

/** What lies already, and how the vents are set. */
const nothingYet = ({ problem }: Prepared): Choice => ({
  parts: [],
  vents: problem.vents.map(() => untouchedVent),
});

/**
 * A first arrangement: the most confined lots first, then by the order asked for; each into its best option that still
 * has room.
 *
 * @param around lots that lie where they lie; the others are placed around them
 */
export function construct(
  prepared: Prepared,
  by: FirstOrder = "regret",
  around: Choice = nothingYet(prepared),
): Choice {
  const { problem } = prepared;
  const room = Float64Array.from(problem.places, ({ place }) => place.litres);
  for (const part of around.parts) take(room, litresOf(prepared, part));
  const placed = new Set(around.parts.map(({ lot }) => lot));
  const prices = by === "priced" ? roomPrices(prepared) : new Float64Array(problem.places.length);
  const order = problem.lots
    .filter(({ index }) => !placed.has(index))
    .map((lot) => {
      const options = pricedOptions(prepared, lot.index, prices);
      return {
        index: lot.index,
        options: options.map(({ option }) => option),
        confined: by === "bulk" ? 0 : allowedPlaces(lot, problem.places).length,
        urgency: by === "bulk" ? bulk(lot) : regret(options),
      };
    })
    .sort((a, b) => a.confined - b.confined || b.urgency - a.urgency || a.index - b.index);
  const parts = order.flatMap(({ index, options }) => placeLot(prepared, room, index, options));
  return { parts: [...around.parts, ...parts].sort((a, b) => a.lot - b.lot), vents: around.vents };
}
