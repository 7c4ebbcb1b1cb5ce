import { writeSync } from "node:fs";
import { workerData } from "node:worker_threads";

/** Slot 0 becomes 1 when the work is done; slot 1 becomes 1 when a line has been shown. */
const { line, state } = workerData as { line: string; state: Int32Array };
const second = 1000;

for (let seconds = 1; Atomics.wait(state, 0, 0, second) === "timed-out"; seconds++) {
  Atomics.store(state, 1, 1);
  writeSync(2, `\r${line} ${seconds} s`);
}
