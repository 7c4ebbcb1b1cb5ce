import { Worker } from "node:worker_threads";
import type { RowTask } from "./batchWorker.js";
import { problemsOf, type RowOutcome } from "./outcome.js";
import type { BatchSettings } from "./settings.js";

/** Workers that make sheets, one row each at a time. */
export interface Crew {
  /** Gives a row to the next worker that is free; resolves once it was taken, so that no more rows wait than there are workers. */
  readonly give: (task: RowTask) => Promise<void>;
  /** Resolves when every row that was given is done. */
  readonly finish: () => Promise<void>;
}

type Told = (outcome: RowOutcome, task: RowTask) => void;

/** One worker. One that breaks down fails the row it was at, and another takes its place. */
class Hand {
  #worker: Worker | undefined;
  constructor(
    private readonly settings: BatchSettings,
    private readonly folder: string,
  ) {}

  work(task: RowTask): Promise<RowOutcome> {
    this.#worker ??= new Worker(new URL("./batchWorker.js", import.meta.url), {
      workerData: { settings: this.settings, folder: this.folder },
    });
    const worker = this.#worker;
    return new Promise((resolve) => {
      const broken = (error: unknown) => {
        this.#worker = undefined;
        resolve({ line: task.line, id: task.id, outcome: "failed", problems: problemsOf(error) });
      };
      const stopped = () => broken(new Error("the worker stopped"));
      worker.once("error", broken);
      worker.once("exit", stopped);
      worker.once("message", (outcome: RowOutcome) => {
        worker.off("error", broken);
        worker.off("exit", stopped);
        resolve(outcome);
      });
      worker.postMessage(task);
    });
  }

  async leave(): Promise<void> {
    await this.#worker?.terminate();
  }
}

/** A crew of so many workers. `told` hears of every row once, when it is done. */
export function crew(size: number, settings: BatchSettings, folder: string, told: Told): Crew {
  const free = Array.from({ length: size }, () => new Hand(settings, folder));
  const hands = [...free];
  const waiting: (() => void)[] = [];
  const running = new Set<Promise<void>>();
  // What the teller could not do, such as write its list: the run ends with it, but not before every worker is at rest.
  const faults: unknown[] = [];
  const start = (hand: Hand, task: RowTask) => {
    const work = hand
      .work(task)
      .then((outcome) => told(outcome, task))
      .catch((fault: unknown) => faults.push(fault))
      .then(() => {
        running.delete(work);
        free.push(hand);
        waiting.shift()?.();
      });
    running.add(work);
  };
  return {
    async give(task) {
      while (free.length === 0) await new Promise<void>((resolve) => waiting.push(resolve));
      if (faults.length === 0) start(free.pop()!, task);
    },
    async finish() {
      await Promise.all(running);
      await Promise.all(hands.map((hand) => hand.leave()));
      if (faults.length > 0) throw faults[0];
    },
  };
}
