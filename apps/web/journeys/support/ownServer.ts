import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { onTestFinished } from "vitest";
// @ts-expect-error: a plain script without types
import { serveFolder } from "../../../../scripts/lib/serveFolder.mjs";

const built = fileURLToPath(new URL("../../dist", import.meta.url));

/** A copy of the built page on a server of its own, which can be ended and whose files can be changed; the copy goes when the test is over. */
export async function ownServer() {
  const folder = mkdtempSync(join(tmpdir(), "keepwright-page-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  cpSync(built, folder, { recursive: true });
  const { address, server } = await serveFolder(folder, { firstPort: 0 });
  const end = () =>
    new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return { folder, address: address as string, end };
}

/** Until the service worker has the page in hand: from then on it works without a network. */
export const controlled = (page: Page) =>
  page.waitForFunction(() => navigator.serviceWorker.controller !== null, undefined, { timeout: 120_000 });
