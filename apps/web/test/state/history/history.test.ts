import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Act,
  type Entry,
  type History,
  noHistory,
  pauseInTyping,
  taken,
} from "../../../src/state/history/history.js";
import { patchBetween, patched, spliceBetween, unpatched } from "../../../src/state/history/patch.js";
import { anyChange, anyState, otherwise } from "../../support/states.js";

let number = 0;
const entry = (act: Act, at = 0, by = "tab"): Entry => ({ by, number: ++number, at, act });
const text = (words: string): Act => ({ act: "change", change: { change: "text", text: words } });
const typed = (history: History, words: string, at: number, by = "tab") =>
  taken(history, entry(text(words), at, by));
const undo = (history: History) => taken(history, entry({ act: "undo" }));
const redo = (history: History) => taken(history, entry({ act: "redo" }));
const names = (history: History) => history.past.map(({ name }) => [name.what, name.words]);

const act: fc.Arbitrary<Act> = fc.oneof(
  { weight: 4, arbitrary: anyChange.map((change): Act => ({ act: "change", change })) },
  fc.constant<Act>({ act: "undo" }),
  fc.constant<Act>({ act: "redo" }),
);
const acts = fc.array(fc.tuple(act, fc.integer({ min: 0, max: 2 * pauseInTyping })), { maxLength: 30 });

/** The history after acts with pauses between them. */
const after = (done: readonly (readonly [Act, number])[]): History[] => {
  let time = 0;
  let history = noHistory(otherwise);
  return done.map(([each, pause]) => {
    time += pause;
    history = taken(history, entry(each, time));
    return history;
  });
};

describe("what parts two states", () => {
  it("leads from one to the other and back", () => {
    fc.assert(
      fc.property(anyState, anyState, (before, next) => {
        const patch = patchBetween(before, next);
        expect(patched(before, patch)).toEqual(next);
        expect(unpatched(next, patch)).toEqual(before);
      }),
    );
  });
  it("is one stretch of the text, as short as can be", () => {
    expect(spliceBetween("2 kg apples", "2 kg ripe apples")).toEqual({
      start: 5,
      removed: "",
      inserted: "ripe ",
    });
    expect(spliceBetween("aaa", "aa")).toEqual({ start: 2, removed: "a", inserted: "" });
    expect(spliceBetween("same", "same")).toBeUndefined();
  });
  it("adds the words at the end where the text is another than it should be", () => {
    const patch = patchBetween({ ...otherwise, text: "3 figs" }, { ...otherwise, text: "" });
    expect(unpatched({ ...otherwise, text: "2 limes" }, patch).text).toBe("3 figs2 limes");
    expect(
      patched({ ...otherwise, text: "2 limes" }, patchBetween(otherwise, { ...otherwise, text: "4 figs" }))
        .text,
    ).toBe("2 limes\n4");
  });
});

describe("any sequence of things done", () => {
  it("can be undone to the beginning and done again to the end", () => {
    fc.assert(
      fc.property(acts, (done) => {
        const end = after(done).at(-1) ?? noHistory(otherwise);
        let history = end;
        while (history.past.length > 0) history = undo(history);
        expect(history.state).toEqual(otherwise);
        while (history.future.length > 0) history = redo(history);
        const tip = end.future.reduce(redo, end);
        expect(history.state).toEqual(tip.state);
      }),
    );
  });

  it("loses no text: every text that was left standing for longer than a pause can be come back to", () => {
    fc.assert(
      fc.property(acts, (done) => {
        const paused = done.map(([each, pause]) => [each, pause + pauseInTyping + 1] as const);
        const histories = after(paused);
        let history = histories.at(-1) ?? noHistory(otherwise);
        while (history.future.length > 0) history = redo(history);
        const reached = new Set([history.state.text]);
        while (history.past.length > 0) {
          history = undo(history);
          reached.add(history.state.text);
        }
        for (const { state } of histories) expect(reached).toContain(state.text);
      }),
    );
  });

  it("never uses a number twice, and leaves the history alone where nothing changes", () => {
    fc.assert(
      fc.property(acts, (done) => {
        for (const history of after(done)) {
          const numbers = [...history.past, ...history.future].map((step) => step.number);
          expect(numbers).toEqual([...new Set(numbers)].sort((one, other) => one - other));
          expect(Math.max(0, ...numbers)).toBeLessThanOrEqual(history.last);
          expect(taken(history, entry(text(history.state.text)))).toBe(history);
        }
      }),
    );
  });
});

describe("letters typed in one go", () => {
  const letters = (words: string, from: History, start: number, pause = 100) =>
    [...words].reduce(
      (history, letter, index) => typed(history, history.state.text + letter, start + index * pause),
      from,
    );
  const empty = noHistory({ ...otherwise, text: "" });

  it("are one step, named by the line", () => {
    const history = letters("2 kg apples", empty, 0);
    expect(names(history)).toEqual([["typed", "2 kg apples"]]);
    expect(undo(history).state.text).toBe("");
  });
  it("are another step after a pause", () => {
    const history = letters(" or pears", letters("2 kg apples", empty, 0), 60_000);
    expect(history.past).toHaveLength(2);
    expect(undo(history).state.text).toBe("2 kg apples");
  });
  it("are another step in another tab, and after something else was done", () => {
    const first = letters("ab", empty, 0);
    expect(typed(first, "abc", 210, "other").past).toHaveLength(2);
    const people: Act = { act: "change", change: { change: "people", people: 2 } };
    expect(typed(taken(first, entry(people, 205)), "abc", 210).past).toHaveLength(3);
  });
  it("may be mended on the way, but taking out more is a step of its own", () => {
    const slip = letters("2 kg aplp", empty, 0);
    const mended = letters("ples", typed(typed(slip, "2 kg apl", 910), "2 kg ap", 920), 930);
    expect(names(mended)).toEqual([["typed", "2 kg apples"]]);
    const gone = typed(mended, "", 1500);
    expect(names(gone)).toEqual([
      ["typed", "2 kg apples"],
      ["erased", "2 kg apples"],
    ]);
    expect(undo(gone).state.text).toBe("2 kg apples");
  });
  it("that replace what was typed a moment ago leave it in the history", () => {
    const history = typed(letters("2 kg apples", empty, 0), "3 figs", 1200);
    expect(undo(history).state.text).toBe("2 kg apples");
    expect(names(history).at(-1)).toEqual(["rewritten", "3 figs"]);
  });
});

describe("what was undone", () => {
  it("is still to be had after something new was done", () => {
    const one = typed(noHistory(otherwise), "3 figs\n2 limes", 0);
    const other = typed(undo(one), "3 figs\n5 kiwis", 10_000);
    expect(other.state.text).toBe("3 figs\n5 kiwis");
    expect(names(other).map(([what]) => what)).toEqual(["typed", "went back", "typed"]);
    expect(undo(undo(other)).state.text).toBe("3 figs\n2 limes");
  });
});

describe("a text typed over that of another tab", () => {
  it("says so and leaves the other in the history", () => {
    const theirs = typed(noHistory(otherwise), "4 dates", 0, "other");
    const own: Act = { act: "change", change: { change: "text", text: "5 limes" }, from: "3 figs" };
    const history = taken(theirs, entry(own, 50));
    expect(names(history).at(-1)).toEqual(["over another tab", "5 limes"]);
    expect(undo(history).state.text).toBe("4 dates");
  });
  it("is put into it where both wrote in other places", () => {
    const theirs = typed(noHistory(otherwise), "3 figs\ntheirs", 0, "other");
    const own: Act = { act: "change", change: { change: "text", text: "3 figs\nmine" }, from: "3 figs" };
    const history = taken(theirs, entry(own, 50));
    expect(history.state.text).toBe("3 figs\ntheirs\nmine");
    expect(undo(history).state.text).toBe("3 figs\ntheirs");
  });
  it("is no such thing where both are the same", () => {
    const theirs = typed(noHistory(otherwise), "3 figs!", 0, "other");
    const own: Act = { act: "change", change: { change: "text", text: "3 figs!" }, from: "3 figs" };
    expect(taken(theirs, entry(own, 50))).toBe(theirs);
  });
});

describe("the name of a step", () => {
  it.each([
    [{ change: "correct", key: "2 kg apples#0", correction: { grams: 5 } }, "corrected", "2 kg apples"],
    [
      { change: "correct", key: "2 kg #1 apples#12", correction: { leftOut: true } },
      "left out",
      "2 kg #1 apples",
    ],
    [{ change: "people", people: 1 }, "people", ""],
    [{ change: "clear" }, "cleared", ""],
    [{ change: "region", region: "US" }, "region", ""],
  ] as const)("for %j is “%s %s”", (change, what, words) => {
    const start = noHistory({ ...otherwise, text: "something else" });
    expect(taken(start, entry({ act: "change", change })).past.at(-1)?.name).toEqual({ what, words });
  });
});
