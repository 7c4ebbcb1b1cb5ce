/** The part of a worker that the page uses, so that another can stand in for it in tests. */
export type WorkerPart = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror">;
