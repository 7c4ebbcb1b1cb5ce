import type { Choice } from "../problem/programme.js";
import { choiceKey } from "../problem/programme.js";
import type { CrowdedAir } from "./crowdedAir.js";
import { type Evaluation, evaluatePrepared } from "./evaluate.js";
import { Judge } from "./judge.js";
import type { Prepared } from "./prepare.js";
import { type RankedOption, rankedOptions } from "./ranked.js";
import { isSmall } from "./smallCase.js";

/** Gains below this [g] do not count: they would only let rounding lead the search. */
export const leastGain = 1e-6;

/** Judgements kept whole, at most: each holds the record of a simulation. */
const mostKept = 400;

/** Change of a part's life, as a share, that makes it worth looking at again. */
export const lifeThatMatters = 0.01;

/** Whether a part's programme changed, or its neighbours changed its life, between two evaluations. */
function stirred(before: Evaluation, after: Evaluation, part: number): boolean {
  if (before.choice.parts[part]!.programme !== after.choice.parts[part]!.programme) return true;
  const was = before.outcomes[part]!.endDay;
  return Math.abs(after.outcomes[part]!.endDay - was) > lifeThatMatters * was;
}

/** Places fuller on their fullest day before than after. */
function placesWithMoreRoom(before: Evaluation, after: Evaluation): Set<number> {
  const fullest = (taken: Float64Array): number => taken.reduce((most, litres) => Math.max(most, litres), 0);
  const places = before.taken.flatMap((taken, place) =>
    fullest(after.taken[place]!) < fullest(taken) - leastGain ? [place] : [],
  );
  return new Set(places);
}

/** A search under way: where it stands, and the two ways of judging a change: quickly by estimate, exactly in full. */
export class Search {
  readonly prepared: Prepared;
  readonly judge: Judge;
  current: Evaluation;
  /** Where all cold places are short of room: the air of the kitchen when it is full, for hopes. */
  crowded: CrowdedAir | undefined;
  /** Choices judged in full so far. */
  judged = 0;
  /** Parts that found nothing better, and whose lot has not changed since. */
  readonly settled = new Set<number>();
  /** Places where a settled part would do better but for the room. */
  readonly #wanted = new Map<number, readonly number[]>();
  readonly #seen = new Map<string, number>();
  readonly #kept = new Map<string, Evaluation>();
  readonly #rankings = new WeakMap<Evaluation, Map<number, RankedOption[]>>();

  constructor(prepared: Prepared, start: Choice) {
    this.prepared = prepared;
    this.judge = new Judge(prepared);
    this.current = evaluatePrepared(prepared, prepared.pinned(start));
  }

  /** A choice judged in full. In small cases, where starts often lead to the same places, it is kept with all that was found from there. */
  evaluated(wanted: Choice): Evaluation {
    const choice = this.prepared.pinned(wanted);
    const key = choiceKey(choice);
    const known = this.#kept.get(key);
    if (known) return known;
    this.judged += 1;
    const evaluation = evaluatePrepared(this.prepared, choice);
    this.#seen.set(key, evaluation.objective.total);
    if (isSmall(this.prepared.problem) && this.#kept.size < mostKept) this.#kept.set(key, evaluation);
    return evaluation;
  }

  /** Stands at a choice, better or not. */
  goTo(choice: Choice): Evaluation {
    const evaluation = this.evaluated(choice);
    this.#stand(evaluation);
    return evaluation;
  }

  /** Stands where it stood before: what was found there in vain need not be looked for again. */
  goBackTo(evaluation: Evaluation): void {
    this.#stand(evaluation);
  }

  #stand(evaluation: Evaluation): void {
    const before = this.current;
    this.current = evaluation;
    if (before?.choice.parts.length !== evaluation.choice.parts.length) {
      this.settled.clear();
      return;
    }
    const roomier = placesWithMoreRoom(before, evaluation);
    for (const part of [...this.settled]) {
      const awake = this.#wanted.get(part)?.some((place) => roomier.has(place)) ?? false;
      if (awake || stirred(before, evaluation, part)) this.settled.delete(part);
    }
  }

  /** A part found nothing better; it is looked at again once it or its air has changed, or there is more room where it would rather lie. */
  settle(part: number): void {
    this.settled.add(part);
    const blocked = this.ranked(part).filter(({ cost, overflow }) => cost < -leastGain && overflow > 0);
    const places = blocked.flatMap(({ option }) => option.programme.stays.map(({ place }) => place));
    this.#wanted.set(part, [...new Set(places)]);
  }

  /** Options of a part that may better things from where the search stands; remembered while it stands there. */
  ranked(part: number): RankedOption[] {
    const known = this.#rankings.get(this.current) ?? new Map<number, RankedOption[]>();
    this.#rankings.set(this.current, known);
    const ranking = known.get(part) ?? rankedOptions(this, part);
    known.set(part, ranking);
    return ranking;
  }

  /** Goes to the choice if, judged exactly, it is better. A choice seen before is known without a second look. */
  attempt(wanted: Choice): boolean {
    const choice = this.prepared.pinned(wanted);
    const key = choiceKey(choice);
    const seen = this.#seen.get(key);
    const least = this.current.objective.total - leastGain;
    if (seen !== undefined && seen >= least) return false;
    const evaluation = this.evaluated(choice);
    if (evaluation.objective.total >= least) return false;
    this.#stand(evaluation);
    return true;
  }
}
