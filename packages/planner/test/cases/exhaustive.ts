import { ventSettings } from "../../src/problem/kitchen.js";
import type { Problem } from "../../src/problem/problem.js";
import type { Choice, Part, Programme, ProgrammeStay } from "../../src/problem/programme.js";
import { evaluate } from "../../src/search/evaluateChoice.js";

/** Every way to choose one item from each list. */
export function* everyWay<Item>(lists: readonly (readonly Item[])[]): Generator<readonly Item[]> {
  const [first, ...rest] = lists;
  if (first === undefined) {
    yield [];
    return;
  }
  for (const item of first) for (const others of everyWay(rest)) yield [item, ...others];
}

/** Days on which unripe fruit that is wanted for a day may be moved: every planned one before it. */
function daysToMove({ wish }: Problem["lots"][number], days: number, ripens: boolean): number[] {
  if (!wish || !ripens) return [];
  const wanted = wish.when === "by" || wish.when === "on" ? wish.last : wish.first;
  return Array.from({ length: days }, (_, day) => day).filter((day) => day >= 1 && day < wanted);
}

/** Held somewhere until a day, then either of the ways that begin somewhere else. */
const datedPaths = (
  days: readonly number[],
  stays: readonly ProgrammeStay[],
  moved: readonly ProgrammeStay[][],
) =>
  days.flatMap((day) =>
    stays.flatMap((first) =>
      [...stays.map((stay) => [stay]), ...moved]
        .filter(([next]) => next!.place !== first.place)
        .map((then): ProgrammeStay[] => [{ ...first, until: { day } }, ...then]),
    ),
  );

/**
 * Every programme of a lot, none left out as unpromising: each place, each wrap, each preparation; for what still ripens also
 * each pair of places, moved when ripe. Restated here from the rules, not taken from the search: cut produce, and what is sold
 * under the same control, lies in the refrigerator where there is one; what is cut is covered where a cover is at hand; only stems stand in water, and not in a drawer; whole fruit that ripens, and what is told
 * to be taken out of sealed bags, is not shut in; a damp towel
 * is for leaves, stems and roots that need not be kept dry.
 */
export function everyProgramme({ places, kitchen, household, lots }: Problem, index: number): Programme[] {
  const { form, commodity, produce, ripeness } = lots[index]!;
  const cold = places.filter((place) => place.place.refrigerator !== undefined);
  const controlled = form.cut || commodity.controlledAsSold !== undefined;
  const allowed = controlled && cold.length > 0 ? cold : places;
  const stands = commodity.standsInWater?.value === true && !form.cut;
  const atHand = ["none", ...kitchen.wraps.filter((wrap) => wrap !== "glass of water" || stands)] as const;
  const covers = atHand.filter((wrap) =>
    ["closed film bag", "lidded box", "beeswax cloth", "foil"].includes(wrap),
  );
  const breathes =
    commodity.ripening !== undefined ||
    commodity.preparation.some((step) => step.do === "remove from sealed bag");
  const open = atHand.filter((wrap) => !["closed film bag", "lidded box", "foil"].includes(wrap));
  const damp =
    ["leaf", "head", "stem", "flower", "herb", "root"].includes(commodity.organ) &&
    !commodity.preparation.some((step) =>
      ["keep dry and unwashed", "remove from sealed bag"].includes(step.do),
    );
  const whole = (breathes ? open : atHand).filter((wrap) => damp || wrap !== "damp towel");
  const wraps = controlled ? (covers.length > 0 ? covers : atHand) : whole;
  const stay = (place: number, wrap: ProgrammeStay["wrap"], until: ProgrammeStay["until"]) => ({
    place,
    wrap,
    until,
  });
  const stays = allowed.flatMap(({ index: at, place: { kind } }) =>
    wraps
      .filter((wrap) => wrap !== "glass of water" || kind !== "crisper drawer")
      .map((wrap) => stay(at, wrap, "never")),
  );
  const ripens = produce.ripening !== undefined && ripeness < 1 && !form.cut;
  const moved = stays.flatMap((first) =>
    stays
      .filter((then) => ripens && then.place !== first.place)
      .map((then) => [{ ...first, until: "ripe" as const }, then]),
  );
  const dated = datedPaths(daysToMove(lots[index]!, household.days, ripens), stays, moved);
  const preparations = [
    ...everyWay([form.tops ? [false, true] : [false], form.wet ? [false, true] : [false]]),
  ];
  return preparations.flatMap(([leavesOff, dried]) =>
    [...stays.map((one) => [one]), ...moved, ...dated].map((path) => ({
      leavesOff: leavesOff!,
      dried: dried!,
      stays: path,
    })),
  );
}

/** Number of choices: ways for each lot, times settings for each vent. */
export const countChoices = (ways: readonly (readonly unknown[])[], vents: number): number =>
  ways.reduce((product, { length }) => product * length, ventSettings.length ** vents);

/** Every way to leave a lot whole or to part it in two, in whole pieces, each part with a programme of its own. */
export function everyDivision({ lots }: Problem, index: number, programmes: readonly Programme[]): Part[][] {
  const { portions, splitUnit } = lots[index]!;
  const part = (count: number, programme: Programme): Part => ({ lot: index, portions: count, programme });
  const whole = programmes.map((programme) => [part(portions, programme)]);
  const divided: Part[][] = [];
  for (let first = splitUnit; first < portions; first += splitUnit) {
    for (const [one, other] of everyWay([programmes, programmes])) {
      if (one !== other) divided.push([part(first, one!), part(portions - first, other!)]);
    }
  }
  return [...whole, ...divided];
}

/** The best of all choices, each judged exactly: one division for each lot, one setting for each vent. */
export function bestOfAll(problem: Problem, divisions: readonly (readonly (readonly Part[])[])[]) {
  let best: { choice: Choice; total: number } | undefined;
  for (const vents of everyWay(problem.vents.map(() => ventSettings))) {
    for (const chosen of everyWay(divisions)) {
      const choice = { parts: chosen.flat(), vents };
      const { total } = evaluate(problem, choice).objective;
      if (best === undefined || total < best.total) best = { choice, total };
    }
  }
  return best!;
}
