import { unitsOf } from "@keepwright/handout";
import { describedKitchen, ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import type { PlannerState } from "../../src/state/plannerState.js";
import type { Keeper } from "../../src/storage/keeper.js";
import { localAsidePrefix, localKey } from "../../src/storage/localCopy.js";
import { otherwise } from "../support/states.js";
import { textOf, typingOn, useDevice } from "../support/useDevice.js";

const device = useDevice();
const type = typingOn(device);
const asidesOf = async (keeper: Keeper) => (await keeper.asides()).map(({ content }) => content);
/** What a version before had saved. */
const old = {
  version: 1,
  text: "2 kg apples",
  corrections: {},
  kitchen: "small",
  people: 3,
  days: 7,
  units: "us",
};
const oldState: PlannerState = {
  ...otherwise,
  text: "2 kg apples",
  kitchen: "small",
  people: 3,
  days: 7,
  units: unitsOf("us"),
};

describe("a first visit", () => {
  it("shows what is opened otherwise, keeps nothing, and has nothing to undo", async () => {
    const tab = await device().tab();
    expect(tab.now()).toMatchObject({
      state: otherwise,
      keeping: "kept",
      undo: undefined,
      steps: 0,
      asides: 0,
    });
    expect(device().store.items.size).toBe(0);
  });
});

describe("what was entered", () => {
  it("is there in another tab and after a reload, with its history", async () => {
    const tab = await device().tab();
    type(tab, "2 kg apples");
    tab.change({ change: "people", people: 2 });
    await tab.settled();
    const later = await device().tab();
    expect(later.now()).toEqual(tab.now());
    expect(later.now().undo).toEqual({ what: "people", words: "" });
    later.undo();
    later.undo();
    expect(later.now().state).toEqual(otherwise);
    later.redo();
    await later.settled();
    expect(textOf(await device().tab())).toBe("2 kg apples");
  });

  it("is there when the tab was ended before the database had it", async () => {
    const first = await device().tab();
    type(first, "2 kg apples");
    await first.settled();
    device().close();
    type(first, "2 kg apples, 3 figs");
    await first.settled();
    expect(first.now().keeping).toBe("without history");
    const tab = device().newTab();
    expect(textOf(tab)).toBe("2 kg apples, 3 figs");
    tab.start();
    await tab.settled();
    expect(textOf(tab)).toBe("2 kg apples, 3 figs");
    tab.undo();
    expect(textOf(tab)).toBe("2 kg apples");
  });

  it("may be typed before the database is open", async () => {
    const first = await device().tab();
    first.change({ change: "people", people: 2 });
    await first.settled();
    const tab = device().newTab();
    type(tab, "early");
    tab.start();
    type(tab, "early bird");
    await tab.settled();
    expect(tab.now().state).toEqual({ ...otherwise, text: "early bird", people: 2 });
    expect(textOf(await device().tab())).toBe("early bird");
  });

  it("is there where the copy was taken away, and the copy with it", async () => {
    const tab = await device().tab();
    type(tab, "2 kg apples");
    await tab.settled();
    device().store.items.clear();
    expect(textOf(await device().tab())).toBe("2 kg apples");
    expect(JSON.parse(device().store.getItem(localKey) ?? "").text).toBe("2 kg apples");
  });

  it("keeps no more steps than it says, the newest", async () => {
    const tab = await device().tab();
    for (let turn = 1; turn <= 520; turn++) type(tab, `${turn}`);
    await tab.settled();
    const later = await device().tab();
    expect(later.now().steps).toBe(500);
    for (let turn = 0; turn < 30; turn++) {
      later.undo();
      await later.settled();
    }
    expect(textOf(later)).toBe("490");
  });
});

describe("a record of a version before", () => {
  it("is moved into the database, and stays where it was until the database has it", async () => {
    device().store.setItem(localKey, JSON.stringify(old));
    device().refuse = "open";
    const refused = await device().tab();
    expect(refused.now().state).toEqual(oldState);
    expect(refused.now().keeping).toBe("without history");
    expect(JSON.parse(device().store.getItem(localKey) ?? "")).toEqual(old);
    device().refuse = undefined;
    const tab = await device().tab();
    expect(tab.now().state).toEqual(oldState);
    device().store.items.clear();
    expect((await device().tab()).now().state).toEqual(oldState);
  });

  it("that lies there although the database has more is a step that can be undone, once", async () => {
    const tab = await device().tab();
    type(tab, "newer");
    await tab.settled();
    device().store.setItem(localKey, JSON.stringify(old));
    device().store.full = true;
    const later = await device().tab();
    expect(later.now().state).toEqual(oldState);
    expect(later.now().undo).toEqual({ what: "recovered", words: "" });
    later.undo();
    await later.settled();
    expect(textOf(await device().tab())).toBe("newer");
  });
});

describe("a broken record", () => {
  it.each(["{oops", "[1, 2]", "null", '{"name":"x","text":7}'])(
    "%s is set aside as it is, once",
    async (kept) => {
      device().store.setItem(localKey, kept);
      const tab = await device().tab();
      expect(tab.now().state).toEqual(otherwise);
      expect(await asidesOf(tab)).toEqual([kept]);
      expect([...device().store.items.keys()].filter((key) => key.startsWith(localAsidePrefix))).toEqual([]);
      expect((await device().tab()).now().asides).toBe(1);
      const [aside] = await tab.asides();
      if (aside) await tab.dropAside(aside);
      expect(tab.now().asides).toBe(0);
    },
  );

  it("is laid aside even where there is no database", async () => {
    device().store.setItem(localKey, "{oops");
    device().refuse = "open";
    const tab = await device().tab();
    expect(tab.now().asides).toBe(1);
    expect(await asidesOf(tab)).toEqual(["{oops"]);
    type(tab, "new");
    expect(await asidesOf(await device().tab())).toEqual(["{oops"]);
  });

  it("keeps the words and tells what could not be used", async () => {
    device().store.setItem(
      localKey,
      JSON.stringify({ text: "2 kg apples", people: -1, kitchen: "constructor" }),
    );
    const tab = await device().tab();
    expect(tab.now().state).toEqual({ ...otherwise, text: "2 kg apples" });
    const [aside, ...others] = await tab.asides();
    expect(others).toEqual([]);
    expect(aside?.unused.map(({ field, value }) => [field, value])).toEqual([
      ["kitchen", '"constructor"'],
      ["people", "-1"],
    ]);
  });

  it("with a kitchen that contradicts itself is set aside, and the kitchen described again where it can be", async () => {
    const cold = { ...ordinaryKitchens.small, room: { ...ordinaryKitchens.small.room, temperature: 2 } };
    const answers = { refrigerator: "hip" } as const;
    const kitchens = [
      { key: "own-1", kitchen: cold },
      { key: "own-2", kitchen: cold, answers },
    ];
    device().store.setItem(localKey, JSON.stringify({ ...otherwise, kitchens }));
    const tab = await device().tab();
    const again = describedKitchen(answers, cold.name).kitchen;
    expect(tab.now().state.kitchens).toEqual([{ key: "own-2", kitchen: again, answers }]);
    expect(JSON.parse((await asidesOf(tab))[0] ?? "").kitchens).toEqual(kitchens);
    expect(tab.now().asides).toBe(1);
    expect((await device().tab()).now().asides).toBe(1);
  });

  it("in the database is set aside with the steps that led to it", async () => {
    const tab = await device().tab();
    type(tab, "2 kg apples");
    await tab.settled();
    await breakDatabase(device().name, (now) =>
      now.put({ key: "now", state: { text: 7 }, at: 1, last: 1, revision: 1 }),
    );
    device().store.items.clear();
    const later = await device().tab();
    expect(later.now()).toMatchObject({ state: otherwise, undo: undefined, asides: 1 });
    expect((await asidesOf(later))[0]).toContain("2 kg apples");
    type(later, "new");
    await later.settled();
    expect(textOf(await device().tab())).toBe("new");
  });

  it("among the steps is set aside, and the state stays", async () => {
    const tab = await device().tab();
    type(tab, "2 kg apples");
    await tab.settled();
    await breakDatabase(device().name, (_, steps) => steps.put({ number: 1, patch: "?" }));
    const later = await device().tab();
    expect(later.now()).toMatchObject({ undo: undefined, asides: 1 });
    expect(textOf(later)).toBe("2 kg apples");
  });
});

/** Writes into the database past the page. */
async function breakDatabase(
  name: string,
  write: (now: IDBObjectStore, steps: IDBObjectStore) => void,
): Promise<void> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const asked = indexedDB.open(name);
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
  const transaction = database.transaction(["now", "steps"], "readwrite");
  write(transaction.objectStore("now"), transaction.objectStore("steps"));
  await new Promise((resolve) => {
    transaction.oncomplete = resolve;
  });
  database.close();
}
