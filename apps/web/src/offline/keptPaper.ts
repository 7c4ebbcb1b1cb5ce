/// <reference lib="webworker" />

/** The message by which the page has what it prints with kept on the device. */
export const keepPaperMessage = "keep paper";
const cacheName = "keepwright-paper";

/** Asks for every file that is not kept yet; a connection that breaks loses nothing, the next visit goes on. */
async function keepAll(addresses: readonly string[]): Promise<void> {
  const cache = await caches.open(cacheName);
  for (const address of addresses) if (!(await cache.match(address))) await cache.add(address);
}

/** The file as it is kept; else from the network, and kept then. */
async function kept(request: Request): Promise<Response> {
  const cache = await caches.open(cacheName);
  const found = await cache.match(request.url);
  if (found) return found;
  const answer = await fetch(request);
  if (answer.ok) await cache.put(request.url, answer.clone());
  return answer;
}

/** Files of a version before are of no more use once this one is taken. */
async function forgetOthers(addresses: readonly string[]): Promise<void> {
  const cache = await caches.open(cacheName);
  const others = (await cache.keys()).filter(({ url }) => !addresses.includes(url));
  await Promise.all(others.map((request) => cache.delete(request)));
}

/** Keeps what pages are printed with: when it is first used, and when the page says that there is time and leave for it. */
export function keepPaper(worker: ServiceWorkerGlobalScope, files: readonly string[]): void {
  const addresses = files.map((file) => new URL(file, worker.location.href).href);
  worker.addEventListener("fetch", (event) => {
    if (addresses.includes(event.request.url)) event.respondWith(kept(event.request));
  });
  worker.addEventListener("message", (event) => {
    if (event.data === keepPaperMessage) event.waitUntil(keepAll(addresses).catch(() => undefined));
  });
  worker.addEventListener("activate", (event) => event.waitUntil(forgetOthers(addresses)));
}
