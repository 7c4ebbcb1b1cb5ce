import type { LotOutcome } from "@keepwright/physics";
import type { Part } from "../problem/programme.js";
import { litresInStay, stayOnDay } from "../rules/capacity.js";
import type { Evaluation } from "./evaluate.js";
import type { PartChange } from "./judge.js";
import type { Prepared } from "./prepare.js";

/** Adds (sign 1) or takes away (−1) a part's litres, eaten day by day as `eaten` of `portions` says. */
function addLitres(
  { problem }: Prepared,
  rows: Map<number, Float64Array>,
  taken: readonly Float64Array[],
  part: Part,
  outcome: LotOutcome,
  eaten: readonly number[],
  portions: number,
  sign: number,
): void {
  const litres = part.programme.stays.map((_, stay) => litresInStay(problem, part, stay));
  let uneaten = portions;
  for (let day = 0; day < problem.household.days && uneaten > 0; day++) {
    const stay = stayOnDay(outcome, day);
    const { place } = part.programme.stays[stay]!;
    const row = rows.get(place) ?? taken[place]!.slice();
    rows.set(place, row);
    row[day] = row[day]! + (sign * litres[stay]! * uneaten) / portions;
    uneaten -= eaten[day] ?? 0;
  }
}

/**
 * Litres over the room of all places after the changes, everything being eaten as it is now.
 *
 * @param outcomes of each changed part that stays, in the order of the changes
 */
export function litresOver(
  prepared: Prepared,
  current: Evaluation,
  changes: readonly PartChange[],
  outcomes: readonly LotOutcome[],
): number {
  const { problem } = prepared;
  const rows = new Map<number, Float64Array>();
  let next = 0;
  for (const { part, like, to } of changes) {
    const eaten = current.eating.eaten[like]!;
    const { portions } = current.choice.parts[like]!;
    if (part !== "new") {
      const before = current.choice.parts[part]!;
      const own = current.eating.eaten[part]!;
      addLitres(prepared, rows, current.taken, before, current.outcomes[part]!, own, before.portions, -1);
    }
    if (to) addLitres(prepared, rows, current.taken, to, outcomes[next++]!, eaten, portions, 1);
  }
  return problem.places.reduce((sum, { place, index }) => {
    const row = rows.get(index);
    if (!row) return sum + current.over[index]!;
    const over = row.reduce((most, litres) => Math.max(most, litres), 0) - place.litres;
    return over > 1e-6 ? sum + over : sum;
  }, 0);
}
