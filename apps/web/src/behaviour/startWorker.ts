/** A worker that plans and answers; its script is one and the same for everything that is worked out beside the page. */
export const startWorker = () => new Worker(new URL("./planWorker.ts", import.meta.url), { type: "module" });
