import { Worker } from "node:worker_threads";

const clearLine = "\r\u001b[K";

/**
 * Shows a line on standard error once a second has passed, and the seconds from then on. Planning keeps this thread
 * busy, so another one does the telling.
 */
export function showProgress(line: string): () => void {
  const state = new Int32Array(new SharedArrayBuffer(8));
  const ticker = new Worker(new URL("./progressTicker.js", import.meta.url), { workerData: { line, state } });
  ticker.unref();
  ticker.on("error", () => undefined);
  return () => {
    Atomics.store(state, 0, 1);
    Atomics.notify(state, 0);
    void ticker.terminate();
    if (Atomics.load(state, 1) === 1) process.stderr.write(clearLine);
  };
}
