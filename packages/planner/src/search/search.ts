import type { Choice } from "../problem/programme.js";
import { choiceKey } from "../problem/programme.js";
import { type Evaluation, evaluatePrepared } from "./evaluate.js";
import { Judge } from "./judge.js";
import type { Prepared } from "./prepare.js";

/** Gains below this [g] do not count: they would only let rounding lead the search. */
export const leastGain = 1e-6;

/** A search under way: where it stands, and the two ways of judging a change: quickly by estimate, exactly in full. */
export class Search {
  readonly prepared: Prepared;
  readonly judge: Judge;
  current: Evaluation;
  readonly #seen = new Map<string, number>();

  constructor(prepared: Prepared, start: Choice) {
    this.prepared = prepared;
    this.judge = new Judge(prepared);
    this.current = this.goTo(start);
  }

  /** Stands at a choice, better or not. */
  goTo(choice: Choice): Evaluation {
    this.current = evaluatePrepared(this.prepared, choice);
    this.#seen.set(choiceKey(choice), this.current.objective.total);
    return this.current;
  }

  /** Goes to the choice if, judged exactly, it is better. A choice seen before is known without a second look. */
  attempt(choice: Choice): boolean {
    const key = choiceKey(choice);
    const seen = this.#seen.get(key);
    const least = this.current.objective.total - leastGain;
    if (seen !== undefined && seen >= least) return false;
    const evaluation = evaluatePrepared(this.prepared, choice);
    this.#seen.set(key, evaluation.objective.total);
    if (evaluation.objective.total >= least) return false;
    this.current = evaluation;
    return true;
  }
}
