import { better, from } from "./downhill.js";
import type { Evaluation } from "./evaluate.js";
import { type Going, goings, lastPlace } from "./goings.js";
import { letFollow } from "./improve.js";
import { withProgramme } from "./moves.js";
import { givesNoGas, partWith } from "./ranked.js";
import { leastGain, type Search } from "./search.js";
import type { Start } from "./swaps.js";

/** Times a giver changes places with all that lies elsewhere, at most: a fixed number, never a clock. Declared, no source. */
const mostTimes = 3;

/** Where a part is hoped best outside a place. */
function bestOutside(ways: ReadonlyMap<number, Going>, place: number): Going | undefined {
  let best: Going | undefined;
  for (const going of ways.values()) {
    if (going.place !== place && (!best || going.hope < best.hope)) best = going;
  }
  return best;
}

function estimated({ current, judge }: Search, all: readonly Going[]): Start {
  const { cost, overflow } = judge.estimate(
    current,
    all.map(({ part, option }) => ({ part, like: part, to: partWith(current, part, option) })),
  );
  const choice = all.reduce(
    (sum, { part, option }) => withProgramme(sum, part, option.programme),
    current.choice,
  );
  const name = all.map(({ part, place }) => `${current.choice.parts[part]!.lot}>${place}`).join(" ");
  return { name, choice, change: cost + overflow };
}

/** A giver in every other place where something lies that gives off next to nothing: it comes there, and all of that leaves. */
function comingsOf(search: Search, giver: number, quiet: readonly number[]): Start[] {
  const { parts } = search.current.choice;
  const here = lastPlace(parts[giver]!);
  return [...goings(search, giver).values()].flatMap((coming): Start[] => {
    const leaving = quiet.filter((part) => lastPlace(parts[part]!) === coming.place);
    if (coming.place === here || leaving.length === 0) return [];
    const gone = leaving.flatMap((part) => bestOutside(goings(search, part), coming.place) ?? []);
    return [estimated(search, [coming, ...gone])];
  });
}

/** Changes in which what gives off ripening gas comes to a place and everything else leaves it that promise a gain as they stand, best first. */
function promisingComings(search: Search): Start[] {
  const { parts } = search.current.choice;
  const quiet = parts.flatMap((part, index) => (givesNoGas(search, part) ? [index] : []));
  return parts
    .flatMap((part, index) => (givesNoGas(search, part) ? [] : comingsOf(search, index, quiet)))
    .filter(({ change }) => change < -leastGain)
    .sort((a, b) => a.change - b.change);
}

/**
 * What gives off ripening gas comes to a place and all else there leaves, each for where it is hoped best, where that is estimated to gain as it stands; then those that it stirs follow. While the gas is in the
 * cold nothing gains by going there, and while they lie where it might go it gains nothing by leaving: no change of one or two finds that way.
 */
export function moveGivers(search: Search, start: Evaluation): Evaluation {
  let best = start;
  for (let time = 0; time < mostTimes; time++) {
    search.goBackTo(best);
    const [next] = promisingComings(search);
    if (!next) return best;
    const found = from(search, next.choice, letFollow);
    if (better(best, found) === best) return best;
    best = found;
  }
  return best;
}
