import { drawnFigure } from "../draws/drawnFigure.js";
import type { PlannedMeals } from "../draws/meals.js";
import { dayEaten, firstPortions, isGood, refuseCarriedOver } from "../draws/portions.js";
import { repeated, simulateDraw } from "../draws/simulateDraw.js";
import { usualSpreads } from "../draws/spreads.js";
import type { Problem } from "../problem/problem.js";
import { lastSafeDay } from "../rules/safeTime.js";
import type { SideDay } from "./twoWays.js";

export type DrawnEvening = Required<Pick<SideDay, "eatenRange" | "lostRange" | "leftRange">>;

/** Grams in each draw, by evening. */
interface Tally {
  readonly eaten: readonly Float64Array[];
  readonly lost: readonly Float64Array[];
}

/** Adds one portion to the evenings of a draw: lost from the day it is no longer good, or eaten on its day. */
function addPortion(
  { eaten, lost }: Tally,
  evenings: readonly number[],
  draw: number,
  grams: number,
  eatenOn: number,
  left: boolean,
  good: (day: number) => boolean,
): void {
  for (const [at, evening] of evenings.entries()) {
    const over = at === evenings.length - 1;
    const day = over ? eatenOn : Math.min(evening, eatenOn);
    if (!good(day)) lost[at]![draw]! += grams;
    else if (eatenOn <= evening && !left) eaten[at]![draw]! += grams;
  }
}

const range = (values: Float64Array) => {
  const { low, high } = drawnFigure(values);
  return { low, high };
};

/**
 * How far what is eaten, lost and left on each evening scatters, when one way of laying things is carried out many times: the same draws as `carryOut`, and
 * so the same waste in the end. What is left over is lost or left, never eaten, within the evenings.
 *
 * @param evenings days in order [d from the first]; on the last, everything has had its day
 * @param count draws, at least 1
 */
export function drawnEvenings(
  problem: Problem,
  meals: PlannedMeals,
  evenings: readonly number[],
  count: number,
): DrawnEvening[] {
  refuseCarriedOver(problem);
  const { choice, occasions } = meals;
  const asked = repeated(problem, choice, problem.seed, usualSpreads);
  const firsts = firstPortions(meals);
  const rows = () => evenings.map(() => new Float64Array(count));
  const tally = { eaten: rows(), lost: rows() };
  for (let draw = 0; draw < count; draw++) {
    for (const [index, outcome] of simulateDraw(asked, draw).entries()) {
      const part = choice.parts[index]!;
      const lot = problem.lots[part.lot]!;
      const lastSafe = lastSafeDay(problem, lot, part.programme, outcome.stayStarts);
      const good = (day: number): boolean => isGood(lot, outcome, lastSafe, day);
      for (const [at, occasion] of occasions[index]!.entries()) {
        const first = firsts[index]![at]!;
        for (let portion = first; portion < first + occasion.portions; portion++) {
          const on = dayEaten(asked, asked.keys[part.lot]!, occasion, portion, draw);
          addPortion(tally, evenings, draw, lot.gramsPerPortion, on, occasion.left, good);
        }
      }
    }
  }
  const brought = problem.lots.reduce(
    (sum, { portions, gramsPerPortion }) => sum + portions * gramsPerPortion,
    0,
  );
  return evenings.map((_, at) => ({
    eatenRange: range(tally.eaten[at]!),
    lostRange: range(tally.lost[at]!),
    leftRange: range(
      tally.eaten[at]!.map((eaten, draw) => Math.max(0, brought - eaten - tally.lost[at]![draw]!)),
    ),
  }));
}
