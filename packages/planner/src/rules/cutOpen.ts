import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import { safeDaysIn } from "./safeTime.js";
import { eatingHabits } from "./weights.js";

/** A whole piece that is begun: what is left of it is cut from then on. */
export interface BegunPiece {
  /** Day of its first portion, of its last one, and last day on which it may be eaten [d from the first]. */
  readonly day: number;
  readonly lastMeal: number;
  readonly lastSafeDay: number;
  /** Portions in it, and how many of them are eaten. */
  readonly portions: number;
  readonly eaten: number;
}

/** How the pieces of a part are eaten, one after the other. */
export interface Begun {
  readonly pieces: readonly BegunPiece[];
  /** Portions, by day, for which there is no piece that may still be eaten. */
  readonly tooLate: readonly number[];
}

/** Pieces of these are broken off, not cut (common practice, no source): cloves and stalks. */
const brokenOff = new Set(["clove", "stalk"]);
/** Whether a piece of a lot comes apart by hand, so that what is left of it is whole. */
export const breaksApart = ({ commodity }: BoundLot): boolean =>
  commodity.household.units.some(({ name }) => brokenOff.has(name));

/** Whether a lot comes in pieces of several portions, so that one that is not eaten up at once is cut. */
export const isCutWhenBegun = (lot: BoundLot): boolean =>
  !lot.form.cut && lot.splitUnit > 1 && !breaksApart(lot);

/** Sums of stays are rounded this little, as in `safeTime`. */
const rounding = 1e-9;

/**
 * Days after that of cutting on which what is left of a piece may still be eaten [d]: 0 where no place of the kitchen keeps it longer than hours, Infinity where no limit binds.
 * Whole days of the longest safe time among the places, as for what came home cut some days ago: nobody puts it where it keeps less long.
 */
export function daysOnceCut(problem: Problem, lot: BoundLot): number {
  const longest = problem.places.map((place) => safeDaysIn(problem, lot, place));
  return Math.floor(Math.max(0, ...longest) + rounding);
}

/**
 * The pieces that are begun when so many portions are eaten on each day: one piece after the other, the next when one is eaten up or no longer safe.
 *
 * @param eaten portions of the part on each day
 * @param portions portions of the part in all
 * @param size portions in a whole piece
 * @param keeps days for which a piece is safe after that on which it is begun; see `daysOnceCut`
 */
export function piecesBegun(eaten: readonly number[], portions: number, size: number, keeps: number): Begun {
  const pieces: BegunPiece[] = [];
  let whole = portions;
  let open: BegunPiece | undefined;
  const tooLate = eaten.map((wanted, day) => {
    let hungry = wanted;
    while (hungry > 0) {
      if (open === undefined || open.eaten === open.portions || day > open.lastSafeDay) {
        if (whole === 0) return hungry;
        const next = Math.min(size, whole);
        whole -= next;
        open = { day, lastMeal: day, lastSafeDay: day + keeps, portions: next, eaten: 0 };
        pieces.push(open);
      }
      const some = Math.min(hungry, open.portions - open.eaten);
      open = { ...open, lastMeal: day, eaten: open.eaten + some };
      pieces[pieces.length - 1] = open;
      hungry -= some;
    }
    return 0;
  });
  return { pieces, tooLate };
}

/**
 * Portions of a piece that are left over when it is no longer safe: what is left over is eaten some days after the last planned one (`eatingHabits.leftOverDays`).
 *
 * @param days number of planned days
 */
export const thrownOf = ({ lastSafeDay, portions, eaten }: BegunPiece, days: number): number =>
  lastSafeDay < days - 1 + eatingHabits.leftOverDays ? portions - eaten : 0;
