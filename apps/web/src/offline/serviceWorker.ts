/// <reference lib="webworker" />
import { addRoute, cleanupOutdatedCaches, precache } from "workbox-precaching";
import { keepPaper } from "./keptPaper.js";

/** Files of the built page with their revisions, written in by the build; a hashed name is its own revision. */
declare const pageFiles: { url: string; revision: string | null }[];
declare const paperFiles: string[];
declare const self: ServiceWorkerGlobalScope;

// All of the page is kept on the device at the first visit. A newer version is kept beside it and waits: it is taken when the person says
// so, or when the page is opened next after all of its windows were closed.
precache(pageFiles);
// Before the route, which would not know these files.
keepPaper(self, paperFiles);
addRoute({ directoryIndex: "index.html", cleanURLs: false });
cleanupOutdatedCaches();

self.addEventListener("message", ({ data }) => {
  if (data === "take over") void self.skipWaiting();
});
// So that a first visit, too, goes on when the network does not.
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
