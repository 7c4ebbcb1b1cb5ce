import { describe, expect, it } from "vitest";
import { localKey } from "../../src/storage/localCopy.js";
import { otherwise } from "../support/states.js";
import { textOf, typingOn, useDevice } from "../support/useDevice.js";

const device = useDevice();
const type = typingOn(device);

describe("a device that refuses", () => {
  it("the database keeps the copy, and undoes within the visit", async () => {
    device().refuse = "open";
    const tab = await device().tab();
    type(tab, "2 kg apples");
    expect(tab.now().keeping).toBe("without history");
    expect(textOf(await device().tab())).toBe("2 kg apples");
    tab.undo();
    expect(textOf(tab)).toBe("3 figs");
  });
  it("the copy keeps everything in the database", async () => {
    device().store.full = true;
    const tab = await device().tab();
    type(tab, "2 kg apples");
    await tab.settled();
    expect(tab.now().keeping).toBe("kept");
    expect(textOf(await device().tab())).toBe("2 kg apples");
  });
  it("both says so, and everything stays on the page", async () => {
    device().store.full = true;
    device().refuse = "open";
    const tab = await device().tab();
    expect(tab.now().keeping).toBe("refused");
    type(tab, "2 kg apples");
    expect(textOf(tab)).toBe("2 kg apples");
    tab.undo();
    tab.redo();
    expect(textOf(tab)).toBe("2 kg apples");
  });
  it("to write for a while has everything once it takes it again", async () => {
    const tab = await device().tab();
    device().refuse = "write";
    device().store.full = true;
    type(tab, "one");
    await tab.settled();
    expect(tab.now().keeping).toBe("refused");
    type(tab, "two");
    await tab.settled();
    device().refuse = undefined;
    type(tab, "three");
    await tab.settled();
    expect(tab.now()).toMatchObject({ keeping: "kept", steps: 3 });
    const later = await device().tab();
    expect(textOf(later)).toBe("three");
    later.undo();
    expect(textOf(later)).toBe("two");
  });
});

describe("forgetting everything", () => {
  const fill = async () => {
    device().store.setItem(localKey, "{oops");
    const tab = await device().tab();
    type(tab, "2 kg apples");
    tab.change({ change: "people", people: 2 });
    await tab.settled();
    return tab;
  };
  it("leaves nothing behind", async () => {
    const tab = await fill();
    expect(await tab.forget()).toBe(true);
    expect(tab.now()).toMatchObject({ state: otherwise, steps: 0, asides: 0, undo: "forgotten" });
    expect(device().store.items.size).toBe(0);
    expect((await device().tab()).now()).toMatchObject({ state: otherwise, undo: undefined, asides: 0 });
  });
  it("can be undone with its history until the page is closed, and what came since is to be had again", async () => {
    const tab = await fill();
    const before = tab.now();
    await tab.forget();
    type(tab, "since then");
    await tab.settled();
    tab.undo();
    await tab.settled();
    expect(tab.now().undo).toBe("forgotten");
    tab.undo();
    await tab.settled();
    expect(tab.now()).toMatchObject({
      state: before.state,
      steps: before.steps,
      asides: 1,
      undo: before.undo,
    });
    tab.redo();
    await tab.settled();
    expect(textOf(tab)).toBe("since then");
    tab.undo();
    tab.undo();
    tab.undo();
    await tab.settled();
    expect(tab.now().state).toEqual(otherwise);
    expect((await device().tab()).now().redo).toEqual({ what: "rewritten", words: "2 kg apples" });
  });
  it("works without a database", async () => {
    device().refuse = "open";
    const tab = await device().tab();
    type(tab, "2 kg apples");
    await tab.forget();
    expect(textOf(tab)).toBe("3 figs");
    expect(device().store.items.size).toBe(0);
    tab.undo();
    expect(textOf(tab)).toBe("2 kg apples");
    expect(textOf(await device().tab())).toBe("2 kg apples");
  });
});
