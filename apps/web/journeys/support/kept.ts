import type { Page } from "playwright-core";
import { expect } from "vitest";

/** Key of the copy, and of what was all there was until version 2. */
export const copyKey = "keepwright.haul";

/** Whether everything done on the page is in the database: then the copy's number is the database's. */
const isAtRest = (page: Page): Promise<boolean> =>
  page.evaluate(async (key) => {
    const { kept } = JSON.parse(localStorage.getItem(key) ?? "{}");
    if (!kept) return false;
    if (!(await indexedDB.databases()).some(({ name }) => name === "keepwright")) return false;
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const asked = indexedDB.open("keepwright");
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
    const row = await new Promise<{ seen?: Record<string, number> } | undefined>((resolve, reject) => {
      const asked = database.transaction("now").objectStore("now").get("now");
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
    database.close();
    return (row?.seen?.[kept.by] ?? 0) >= kept.number;
  }, copyKey);

/** Until everything done on the page is in the database. Asked again and again: `waitForFunction` does not wait for a promise's answer. */
export const atRest = (page: Page): Promise<void> =>
  expect.poll(() => isAtRest(page), { timeout: 30_000 }).toBe(true);

/** Puts a record into the copy's place. */
export const putCopy = (page: Page, value: string): Promise<void> =>
  page.evaluate(([key, kept]) => localStorage.setItem(key ?? "", kept ?? ""), [copyKey, value]);

/** For `before`: the device refuses both of its stores. */
export function refuseBoth(): void {
  const refuse = () => {
    throw new DOMException("refused", "SecurityError");
  };
  Object.defineProperty(window, "localStorage", { get: refuse });
  Object.defineProperty(window, "indexedDB", { get: refuse });
}

/** For `before`: both stores can be read and are full. */
export function fillBoth(): void {
  const full = () => {
    throw new DOMException("full", "QuotaExceededError");
  };
  Storage.prototype.setItem = full;
  IDBObjectStore.prototype.put = full;
  IDBObjectStore.prototype.add = full;
}

/** For `before`: no database, but the smaller store works. */
export function refuseDatabase(): void {
  Object.defineProperty(window, "indexedDB", {
    get: () => {
      throw new DOMException("refused", "SecurityError");
    },
  });
}
