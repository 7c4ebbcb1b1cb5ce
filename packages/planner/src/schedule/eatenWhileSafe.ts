import { piecesBegun, thrownOf } from "../rules/cutOpen.js";
import type { Pace, PartToEat } from "./eatingDays.js";

/** Room for one part beside all others: portions on each day, and how many of them are not ahead of the pace. */
interface Room {
  readonly most: number[];
  readonly easy: number[];
  readonly paceCost: number;
}

const sumOn = (
  parts: readonly PartToEat[],
  eaten: readonly (readonly number[])[],
  day: number,
  counts: (part: PartToEat, index: number) => boolean,
): number => parts.reduce((sum, part, index) => (counts(part, index) ? sum + eaten[index]![day]! : sum), 0);

function roomFor(
  parts: readonly PartToEat[],
  eaten: readonly (readonly number[])[],
  own: number,
  places: readonly number[],
  pace: Pace,
): Room {
  const mine = parts[own]!;
  const others = (day: number): number =>
    sumOn(parts, eaten, day, ({ takesPlace }, index) => takesPlace && index !== own);
  const sameLot = (day: number): number =>
    sumOn(parts, eaten, day, ({ group }, index) => group === mine.group && index !== own);
  const atTable = (room: number, day: number): number =>
    mine.takesPlace ? Math.max(0, room - others(day)) : Number.POSITIVE_INFINITY;
  const most = places.map((room, day) =>
    Number.isFinite(mine.costs[day]!)
      ? Math.max(0, Math.min(atTable(room, day), mine.dailyLimit - sameLot(day)))
      : 0,
  );
  return { most, easy: places.map((_, day) => atTable(pace.portions, day)), paceCost: pace.cost };
}

/** A piece eaten portion by portion on the cheapest days from one on while it is safe: portions by day, and what they cost. */
function eatPiece(part: PartToEat, room: Room, eaten: readonly number[], first: number, portions: number) {
  const { keeps } = part.piece!;
  const last = Math.min(eaten.length - 1, first + keeps);
  const own = eaten.map(() => 0);
  let cost = 0;
  let uneaten = portions;
  for (; uneaten > 0; uneaten--) {
    let best = -1;
    let least = part.piece!.costThrown;
    for (let day = first; day <= last; day++) {
      const before = eaten[day]! + own[day]!;
      if (before >= room.most[day]!) continue;
      const dear = part.costs[day]! + (before >= room.easy[day]! ? room.paceCost : 0);
      if (dear < least) {
        least = dear;
        best = day;
      }
    }
    if (best < 0) break;
    own[best]!++;
    cost += least;
  }
  return { own, cost: cost + uneaten * part.piece!.costThrown };
}

/** A part eaten anew, piece by piece, each begun on the day on which most of it is eaten for least while it is safe. */
function eatAnew(part: PartToEat, room: Room, planned: readonly number[]): number[] {
  const { size } = part.piece!;
  let eaten = planned.map(() => 0);
  let whole = part.portions;
  const wanted = planned.reduce((sum, portions) => sum + portions, 0);
  for (let begun = 0; begun < Math.ceil(wanted / size); begun++) {
    const portions = Math.min(size, whole);
    whole -= portions;
    const ways = planned.map((_, first) => eatPiece(part, room, eaten, first, portions));
    const { own } = ways.reduce((best, way) => (way.cost < best.cost ? way : best));
    eaten = eaten.map((before, day) => before + own[day]!);
  }
  const { tooLate } = piecesBegun(eaten, part.portions, size, part.piece!.keeps);
  return eaten.map((portions, day) => portions - tooLate[day]!);
}

/**
 * Eating days on which nothing is eaten of a piece that was begun too long ago: hard rule. A part whose cheapest days break it, or leave a rest to throw away, is eaten anew between the meals of the others: as much
 * of each piece as can be while it is safe, the rest left over. Not the best for all parts together, which no flow can find (a piece's days begin with its own first portion).
 */
export function eatenWhileSafe(
  parts: readonly PartToEat[],
  places: readonly number[],
  pace: Pace,
  planned: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  let eaten = planned;
  for (const [index, part] of parts.entries()) {
    if (part.piece === undefined) continue;
    const { size, keeps } = part.piece;
    const { tooLate } = piecesBegun(eaten[index]!, part.portions, size, keeps);
    const inTime = tooLate.every((portions) => portions === 0);
    if (inTime && thrownPortions(part, eaten[index]!) === 0) continue;
    eaten = eaten.with(index, eatAnew(part, roomFor(parts, eaten, index, places, pace), eaten[index]!));
  }
  return eaten;
}

/** Portions left over of pieces that were begun, and no longer safe when what is left is eaten. */
export function thrownPortions({ piece, portions }: PartToEat, eaten: readonly number[]): number {
  if (piece === undefined) return 0;
  const { pieces } = piecesBegun(eaten, portions, piece.size, piece.keeps);
  return pieces.reduce((sum, one) => sum + thrownOf(one, eaten.length), 0);
}
