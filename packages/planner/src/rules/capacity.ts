import type { LotOutcome } from "@keepwright/physics";
import type { Problem } from "../problem/problem.js";
import type { Part } from "../problem/programme.js";

/** Room a part takes in one of its stays [L], wrap included, with all its portions there. */
export function litresInStay(problem: Problem, part: Part, stay: number): number {
  const lot = problem.lots[part.lot]!;
  const wrap = problem.catalogue.wraps.get(part.programme.stays[stay]!.wrap);
  return lot.litres * (part.portions / lot.portions) * (1 + (wrap?.extraRoom.value ?? 0));
}

/** Which of its stays a part is in at the start of a day. */
export function stayOnDay(outcome: LotOutcome, day: number): number {
  let stay = 0;
  while (stay + 1 < outcome.stayStarts.length && outcome.stayStarts[stay + 1]! <= day) stay++;
  return stay;
}

/**
 * Litres taken in each place at the start of each day: what has been eaten has made room. Rows are places, columns the
 * planned days.
 */
export function occupancy(
  problem: Problem,
  parts: readonly Part[],
  outcomes: readonly LotOutcome[],
  eaten: readonly (readonly number[])[],
): Float64Array[] {
  const days = problem.household.days;
  const taken = problem.places.map(() => new Float64Array(days));
  parts.forEach((part, index) => {
    const litres = part.programme.stays.map((_, stay) => litresInStay(problem, part, stay));
    let uneaten = part.portions;
    for (let day = 0; day < days && uneaten > 0; day++) {
      const stay = stayOnDay(outcomes[index]!, day);
      const row = taken[part.programme.stays[stay]!.place]!;
      row[day] = row[day]! + (litres[stay]! * uneaten) / part.portions;
      uneaten -= eaten[index]![day] ?? 0;
    }
  });
  return taken;
}

/** Litres below which a place does not count as overfull: rounding, far below what anyone can see. */
export const roundingLitres = 1e-6;

/** Hard rule where it can be kept: litres over the room of each place on its fullest day. */
export const overfull = (problem: Problem, taken: readonly Float64Array[]): number[] =>
  problem.places.map(({ place }, index) => {
    const over = Math.max(...taken[index]!) - place.litres;
    return over > roundingLitres ? over : 0;
  });
