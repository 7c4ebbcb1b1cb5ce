import { paperFiles } from "virtual:paper-files";

/** Whether all that pages are printed with is on the device, so that printing needs no network. */
export async function isPaperKept(): Promise<boolean> {
  try {
    const found = Object.values(paperFiles).map((file) => caches.match(new URL(file, document.baseURI)));
    return (await Promise.all(found)).every((answer) => answer !== undefined);
  } catch {
    // Where the browser keeps nothing, everything comes from the network.
    return false;
  }
}
