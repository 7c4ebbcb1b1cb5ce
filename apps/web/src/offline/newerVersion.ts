import { keepPaperInTime } from "./paperInTime.js";

/** What is known of a newer version: none, one that waits, or one that another window has taken already. */
export type NewerVersion = "none" | "waiting" | "taken";

let known: NewerVersion = "none";
let waiting: ServiceWorker | undefined;
const listeners = new Set<() => void>();

function tell(next: NewerVersion): void {
  known = next;
  for (const hear of listeners) hear();
}

function watch(registration: ServiceWorkerRegistration): void {
  const found = (worker: ServiceWorker | null) => {
    // The first one of all replaces nothing.
    if (!worker || !navigator.serviceWorker.controller) return;
    waiting = worker;
    tell("waiting");
  };
  found(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed") found(worker);
    });
  });
}

/** Keeps the page on the device and looks for newer versions; where the browser cannot, the page works all the same. */
export async function keepOnDevice(): Promise<void> {
  if (!("serviceWorker" in navigator)) return;
  const had = navigator.serviceWorker.controller !== null;
  let first = !had;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (!first) tell("taken");
    first = false;
  });
  try {
    watch(await navigator.serviceWorker.register(new URL("serviceWorker.js", document.baseURI)));
    keepPaperInTime();
  } catch {
    // Without leave to keep files there is no offline page, and nothing else is lost.
  }
}

export const newerVersion = (): NewerVersion => known;
export function listen(hear: () => void): () => void {
  listeners.add(hear);
  return () => listeners.delete(hear);
}

/** Opens the newer version: what was entered is kept at every change, so it is there again after the page is opened anew. */
export function takeNewer(): void {
  if (known === "taken" || !waiting) {
    location.reload();
    return;
  }
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
  waiting.postMessage("take over");
}
