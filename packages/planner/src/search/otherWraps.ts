import type { Problem } from "../problem/problem.js";
import { type Part, type Programme, partDoing, programmeKey, programmeWith } from "../problem/programme.js";
import { standsThere, suitableWraps } from "../rules/suitableWraps.js";
import { withProgramme } from "./moves.js";
import { leastGain, type Search } from "./search.js";

/** A part's programme with another suitable wrap in one of its places. */
export function otherWrapsOf(
  { lots, places, kitchen, catalogue }: Problem,
  { lot, programme }: Part,
): Programme[] {
  const own = programmeKey(programme);
  const wraps = suitableWraps(lots[lot]!, kitchen, catalogue.wraps);
  return programme.stays
    .flatMap((stay, index) =>
      wraps
        .filter((wrap) => standsThere(wrap, places[stay.place]!.place.kind))
        .map((wrap) => {
          const { place, until } = stay;
          return programmeWith(programme, programme.stays.with(index, { place, wrap, until }));
        }),
    )
    .filter((other) => programmeKey(other) !== own);
}

/** Gives a part the wrap that is estimated best, if that helps. */
function rewrap(search: Search, index: number): boolean {
  const { current, prepared, judge } = search;
  const part = current.choice.parts[index]!;
  const changes = otherWrapsOf(prepared.problem, part).map((programme) => {
    const { cost, overflow } = judge.estimate(current, [
      { part: index, like: index, to: partDoing(part, programme) },
    ]);
    return { programme, change: cost + overflow };
  });
  const best = changes.reduce<(typeof changes)[number] | undefined>(
    (least, one) => (one.change < (least?.change ?? -leastGain) ? one : least),
    undefined,
  );
  return best !== undefined && search.attempt(withProgramme(current.choice, index, best.programme));
}

/**
 * Every part beside every other wrap in its places, once: options are chosen for lots alone, where neither smells nor neighbours say which wrap is
 * worth its trouble (decision 0107).
 */
export function improveWraps(search: Search): void {
  for (let index = 0; index < search.current.choice.parts.length; index++) rewrap(search, index);
}
