import type { Evaluation } from "./evaluate.js";
import { exchange } from "./exchange.js";
import { withProgramme } from "./moves.js";
import { improvePairs } from "./pairs.js";
import { leastGain, type Search } from "./search.js";
import { isSmall } from "./smallCase.js";
import { joinParts, shiftPortions, splitParts, splitToFit } from "./splitting.js";
import { turnVents } from "./turnVents.js";

/** Options of a part judged in full, at most. */
const mostTried = 2;

/** Gives a part the best other programme, if that helps. */
function improvePart(search: Search, part: number): boolean {
  const { choice } = search.current;
  return search
    .ranked(part)
    .slice(0, mostTried)
    .some(
      ({ option, cost, overflow }) =>
        cost + overflow < -leastGain && search.attempt(withProgramme(choice, part, option.programme)),
    );
}

/** Parts in the order of what they cost now, dearest first. */
function dearestFirst({ current }: Search): number[] {
  const cost = current.costs.map(({ costs, costLeft }, part) =>
    current.eating.eaten[part]!.reduce(
      (sum, portions, day) => (portions > 0 ? sum + portions * costs[day]! : sum),
      current.eating.left[part]! * costLeft,
    ),
  );
  return cost.map((_, part) => part).sort((a, b) => cost[b]! - cost[a]! || a - b);
}

/** Goes through the parts that may still find something better. */
const improveParts = (search: Search): boolean =>
  dearestFirst(search).reduce((improved, part) => {
    if (search.settled.has(part)) return improved;
    if (improvePart(search, part)) return true;
    search.settle(part);
    return improved;
  }, false);

/** Looks at all parts once more: what others did may have made room or cleared the air for one that was settled. */
function improveSettled(search: Search): boolean {
  search.settled.clear();
  return improveParts(search);
}

type Kind = (search: Search) => boolean;

/** Kinds of change that found nothing better than a judged choice: they need not look again when a search comes back to it. */
const inVain = new WeakMap<Evaluation, Set<Kind>>();

function tryKind(search: Search, kind: Kind): boolean {
  // Passes over settled parts, so it may find something another time.
  if (kind === improveParts) return kind(search);
  const { current } = search;
  const tried = inVain.get(current) ?? new Set<Kind>();
  inVain.set(current, tried);
  if (tried.has(kind)) return false;
  const helped = kind(search);
  if (!helped) tried.add(kind);
  return helped;
}

/**
 * Choices judged in full in one descent, at most, in cases that are not small: several times what a haul that fits needs. Where far more
 * came home than there is room for, there is always another portion to push elsewhere; a fixed number ends that, never a clock.
 */
const mostJudged = 200;

/** Small cases: one that helped starts again with the cheapest kind. */
function cheapestFirst(search: Search, kinds: readonly Kind[]): void {
  let kind = 0;
  while (kind < kinds.length) kind = tryKind(search, kinds[kind]!) ? 0 : kind + 1;
}

/**
 * Each kind in turn for as long as it helps, until a whole round has found nothing. After each that helped the parts it stirred look
 * around first. A kind that looks at everything so looks seldom, and not after every portion that another kind moved.
 */
function inTurn(search: Search, kinds: readonly Kind[]): void {
  const most = search.judged + mostJudged;
  let vain = 0;
  for (let kind = 0; vain < kinds.length && search.judged < most; kind = (kind + 1) % kinds.length) {
    vain++;
    while (search.judged < most && tryKind(search, kinds[kind]!)) {
      vain = 0;
      while (search.judged < most && improveParts(search));
    }
  }
}

const untilNoneHelps = (search: Search, kinds: readonly Kind[]): void =>
  isSmall(search.prepared.problem) ? cheapestFirst(search, kinds) : inTurn(search, kinds);

/** Lets the parts find their places without turning a vent. */
export function settle(search: Search): void {
  const kinds = [improveSettled, improvePairs];
  untilNoneHelps(search, kinds);
}

/** Lets those that a change has stirred find their places, and those that these stir, and so on. */
export function letFollow(search: Search): void {
  while (improveParts(search));
}

/** Goes downhill without taking lots apart, as far as it goes: a lot taken apart early is seldom put together again. */
export const descendWhole = (search: Search): void =>
  untilNoneHelps(search, [improveParts, turnVents, improveSettled, exchange, improvePairs]);

const quick: readonly Kind[] = [improveParts, turnVents, exchange, joinParts];
const thorough: readonly Kind[] = [
  improveParts,
  turnVents,
  improveSettled,
  exchange,
  splitParts,
  shiftPortions,
  joinParts,
  improvePairs,
];

/** Goes downhill by the cheaper kinds of change; one that helped starts again with the cheapest. */
export const descendQuickly = (search: Search): void => untilNoneHelps(search, quick);

/** Only for what is not settled; where too little room is left, also for what is in the way. */
export function mend(search: Search): void {
  const crowded = search.current.objective.overflow > 0;
  untilNoneHelps(search, crowded ? [...quick, shiftPortions, splitToFit] : [improveParts, shiftPortions]);
}

/** Also looks again at parts that were settled before others moved, and takes lots apart. */
export const descend = (search: Search): void => untilNoneHelps(search, thorough);

/** Also lets lots lie in part where there is no room for all of them: last, since what is taken apart so is seldom put together again. */
export const finish = (search: Search): void => untilNoneHelps(search, [...thorough, splitToFit]);
