import "fake-indexeddb/auto";
import { DatabaseShelf } from "../../src/storage/databaseShelf.js";
import { Keeper } from "../../src/storage/keeper.js";
import type { LocalStore } from "../../src/storage/localCopy.js";
import { how } from "./states.js";

/** A store such as the browser's, that can be told to refuse. */
export class InventedStore implements LocalStore {
  readonly items = new Map<string, string>();
  full = false;
  get length() {
    return this.items.size;
  }
  key = (index: number) => [...this.items.keys()][index] ?? null;
  getItem = (key: string) => this.items.get(key) ?? null;
  setItem(key: string, value: string) {
    if (this.full) throw new DOMException("full", "QuotaExceededError");
    this.items.set(key, value);
  }
  removeItem = (key: string) => void this.items.delete(key);
}

let names = 0;

/** A device with a store and a database of its own, and tabs opened upon it. */
export class Device {
  readonly store = new InventedStore();
  readonly name = `device-${++names}`;
  /** The clock [ms], turned on by hand. */
  time = 1_000_000;
  /** Makes the database refuse: to open, or to write. */
  refuse: "open" | "write" | undefined;
  readonly #shelves: DatabaseShelf[] = [];
  #tabs = 0;

  shelf(): DatabaseShelf {
    const shelf = new DatabaseShelf({ ...how, clock: () => this.time }, this.name);
    this.#shelves.push(shelf);
    return shelf;
  }

  /** A tab that has just been opened and has not reached the database yet. */
  newTab(): Keeper {
    return new Keeper({
      ...how,
      store: () => this.store,
      by: `${this.name}-${++this.#tabs}`,
      clock: () => this.time,
      openShelf: async () => {
        if (this.refuse === "open") throw new DOMException("refused", "SecurityError");
        const shelf = this.shelf();
        const take = shelf.take.bind(shelf);
        shelf.take = async (entries) => {
          if (this.refuse === "write") throw new DOMException("full", "QuotaExceededError");
          return take(entries);
        };
        return shelf;
      },
    });
  }

  async tab(): Promise<Keeper> {
    const tab = this.newTab();
    tab.start();
    await tab.settled();
    return tab;
  }

  close(): void {
    for (const shelf of this.#shelves) shelf.close();
  }
}

/** Waits until a tab shows what is asked for. */
export async function until(holds: () => boolean, what: string): Promise<void> {
  for (let turn = 0; turn < 500; turn++) {
    if (holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 2));
  }
  throw new Error(`It did not come to this: ${what}`);
}
