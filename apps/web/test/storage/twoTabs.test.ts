import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pauseInTyping } from "../../src/state/history/history.js";
import { spliceBetween } from "../../src/state/history/patch.js";
import type { Keeper } from "../../src/storage/keeper.js";
import { Device, until } from "../support/device.js";
import { anyChange, otherwise } from "../support/states.js";
import { useDevice } from "../support/useDevice.js";

const device = useDevice();

/** Until both tabs show the same state and nothing is under way. */
async function atRest(...tabs: readonly Keeper[]): Promise<void> {
  await Promise.all(tabs.map((tab) => tab.settled()));
  const states = () =>
    new Set(tabs.map((tab) => JSON.stringify([tab.now().state, tab.now().undo, tab.now().redo])));
  await until(() => states().size === 1, `one state in all tabs, not ${[...states()].join(" and ")}`);
}

/** Every text that can be come back to from here. */
async function textsOf(tab: Keeper): Promise<Set<string>> {
  while (tab.now().redo) {
    tab.redo();
    await tab.settled();
  }
  const texts = new Set([tab.now().state.text]);
  while (tab.now().undo) {
    tab.undo();
    await tab.settled();
    texts.add(tab.now().state.text);
  }
  return texts;
}

describe("two tabs", () => {
  it("see what is changed in one another, and undo it", async () => {
    const [one, other] = [await device().tab(), await device().tab()];
    one.change({ change: "text", text: "2 kg apples" });
    await atRest(one, other);
    expect(other.now().state.text).toBe("2 kg apples");
    other.undo();
    await atRest(one, other);
    expect(one.now().state).toEqual(otherwise);
    expect(one.now().redo).toEqual({ what: "rewritten", words: "2 kg apples" });
  });

  it("keep both of two changes at the same moment", async () => {
    const [one, other] = [await device().tab(), await device().tab()];
    one.change({ change: "people", people: 2 });
    other.change({ change: "text", text: "2 kg apples" });
    await atRest(one, other);
    expect(one.now().state).toEqual({ ...otherwise, people: 2, text: "2 kg apples" });
  });

  it("that type the same text at the same moment lose neither, and say so", async () => {
    const [one, other] = [await device().tab(), await device().tab()];
    one.change({ change: "text", text: "4 limes" });
    other.change({ change: "text", text: "5 dates" });
    await atRest(one, other);
    expect(one.now().undo).toMatchObject({ what: "over another tab" });
    expect([...(await textsOf(one))].sort()).toEqual(["3 figs", "4 limes", "5 dates"]);
  });

  it("that write lines at the same moment have both", async () => {
    const [one, other] = [await device().tab(), await device().tab()];
    one.change({ change: "text", text: "3 figs\nmine" });
    other.change({ change: "text", text: "3 figs\nyours" });
    await atRest(one, other);
    for (const tab of [one, other])
      expect(tab.now().state.text.split("\n").sort()).toEqual(["3 figs", "mine", "yours"]);
  });

  it("end in the same state whatever is done in them, and lose no text", async () => {
    const move = fc.oneof(
      { weight: 5, arbitrary: anyChange.map((change) => ({ do: "change" as const, change })) },
      fc.constant({ do: "undo" as const }),
      fc.constant({ do: "redo" as const }),
    );
    const moves = fc.array(fc.tuple(fc.boolean(), fc.boolean(), move), { minLength: 1, maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(moves, async (all) => {
        const own = new Device();
        const tabs = [await own.tab(), await own.tab()] as const;
        const entered = new Set<string>();
        for (const [second, wait, each] of all) {
          own.time += pauseInTyping + 1;
          const tab = tabs[second ? 1 : 0];
          const seen = tab.now().state.text;
          if (each.do === "change") tab.change(each.change);
          else tab[each.do]();
          // Where the tabs act at the same moment, what one shows for an instant may not be what comes of it: but typed is typed.
          if (each.do === "change" && each.change.change === "text")
            entered.add(spliceBetween(seen, each.change.text)?.inserted ?? "");
          if (wait) await tab.settled();
        }
        await atRest(...tabs);
        const later = await own.tab();
        expect(later.now().state).toEqual(tabs[0].now().state);
        const texts = await textsOf(later);
        for (const letters of entered)
          expect(
            [...texts].filter((text) => text.includes(letters)),
            letters,
          ).not.toEqual([]);
        own.close();
      }),
      { numRuns: 60 },
    );
  });
});
