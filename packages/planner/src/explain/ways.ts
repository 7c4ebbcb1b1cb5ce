import type { Part, Programme } from "../problem/programme.js";
import { singleStays, stillRipens, untilRipe } from "../search/candidates.js";
import type { Evaluation } from "../search/evaluate.js";
import type { Judge } from "../search/judge.js";
import { otherWrapsOf } from "../search/otherWraps.js";
import type { Prepared } from "../search/prepare.js";

/** Ways to lay one part, prepared as planned: each allowed place and wrap and, for what still ripens, from the planned first place or from one the search found good. */
function everyWay({ problem, options }: Prepared, { lot: index, programme }: Part): Programme[] {
  const lot = problem.lots[index]!;
  const singles = singleStays(problem, lot);
  const firsts = stillRipens(lot)
    ? [programme, ...options(index).map((option) => option.programme)].filter(
        ({ stays }) => stays.length > 1 && stays[0]!.until === "ripe",
      )
    : [];
  const ripening = new Map(
    firsts.map(({ stays: [first] }) => [`${first!.place} ${first!.wrap}`, first!] as const),
  );
  const moved = [...ripening.values()].flatMap(({ place, wrap }) =>
    singles.filter((last) => last.place !== place).map((last) => untilRipe(place, wrap, last)),
  );
  return [...singles.map((stay) => [stay]), ...moved].map((stays) => ({ ...programme, stays }));
}

/** Ways told side by side: those that end in one place; in the planned one, with or without ripening elsewhere first. */
function placeOf({ stays }: Programme, planned: Programme): string {
  const last = stays.at(-1)!.place;
  return last === planned.stays.at(-1)!.place ? `${last} of ${stays.length}` : String(last);
}

interface Estimated {
  readonly programme: Programme;
  readonly estimate: number;
}

function estimated(judge: Judge, now: Evaluation, part: number, programme: Programme): Estimated {
  const to: Part = { ...now.choice.parts[part]!, programme };
  const { cost, overflow } = judge.estimate(now, [{ part, like: part, to }]);
  return { programme, estimate: cost + overflow };
}

const leastFirst = (one: Estimated, other: Estimated): number => one.estimate - other.estimate;

/** For every place but the planned one the way that is best there by a quick estimate, the most promising place first. */
export function otherPlaces(prepared: Prepared, judge: Judge, now: Evaluation, part: number): Programme[] {
  const planned = now.choice.parts[part]!;
  const own = placeOf(planned.programme, planned.programme);
  const best = new Map<string, Estimated>();
  for (const programme of everyWay(prepared, planned)) {
    const place = placeOf(programme, planned.programme);
    if (place === own) continue;
    const one = estimated(judge, now, part, programme);
    if (one.estimate < (best.get(place)?.estimate ?? Number.POSITIVE_INFINITY)) best.set(place, one);
  }
  return [...best.values()].sort(leastFirst).map(({ programme }) => programme);
}

/** The planned way with another wrap in one of its places, the most promising first. */
export const otherWraps = (prepared: Prepared, judge: Judge, now: Evaluation, part: number): Programme[] =>
  otherWrapsOf(prepared.problem, now.choice.parts[part]!)
    .map((way) => estimated(judge, now, part, way))
    .sort(leastFirst)
    .map(({ programme }) => programme);
