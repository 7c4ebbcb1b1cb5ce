import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { isLetter, rest, whenRested } from "../../src/behaviour/restingLetters.js";
import type { PlannerState } from "../../src/state/plannerState.js";
import type { Kept } from "../../src/storage/keeper.js";
import { otherwise } from "../support/states.js";

/** What is kept, changed as the test has it. */
function shelf() {
  let kept = { state: { ...otherwise, text: "2 kg apples\n" }, steps: 0 } as Kept;
  let heard: () => void = () => undefined;
  const told: string[] = [];
  const keeper = {
    now: () => kept,
    listen: (listener: () => void) => {
      heard = listener;
      return () => {
        heard = () => undefined;
      };
    },
  };
  const stop = whenRested(keeper, ({ state, steps }) => told.push(`${state.text.split("\n")[1]} ${steps}`));
  const become = (state: Partial<PlannerState>, steps = 0) => {
    kept = { ...kept, state: { ...kept.state, ...state }, steps };
    heard();
  };
  const type = (line: string, steps?: number) => become({ text: `2 kg apples\n${line}` }, steps);
  return { told, type, become, stop };
}

describe("letters on their way to the rest of the page", () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it("are told of once, when the hand rests", () => {
    const { told, type } = shelf();
    for (const line of ["3", "3 ", "3 l", "3 le"]) {
      type(line);
      vi.advanceTimersByTime(rest - 1);
    }
    expect(told).toEqual([]);
    vi.advanceTimersByTime(1);
    expect(told).toEqual(["3 le 0"]);
  });
  it("are told of at once when the line is ended, or when they come many together", () => {
    const { told, type } = shelf();
    type("3");
    type("3\n");
    type("3 lemons\n");
    expect(told).toEqual(["3 0", "3 lemons 0"]);
    vi.advanceTimersByTime(rest);
    expect(told).toHaveLength(2);
  });
  it("go along with anything else that is done meanwhile, which does not wait", () => {
    const { told, type, become } = shelf();
    type("3");
    become({ people: 5 });
    expect(told).toEqual(["3 0"]);
  });
  it("wait with the day they are typed on: the first on a list of days ago too is asked about once", () => {
    const { told, become } = shelf();
    const before = [{ day: "2026-06-14", text: "2 kg apples\n" }];
    become({ text: "3 kg apples\n", before });
    vi.advanceTimersByTime(rest - 1);
    become({ text: "3 kg pples\n" });
    expect(told).toEqual([]);
    vi.advanceTimersByTime(rest);
    expect(told).toHaveLength(1);
    become({ from: "2026-06-15", before: [] });
    expect(told).toHaveLength(2);
  });
  it("still wait when it is heard that they are kept", () => {
    const { told, type } = shelf();
    type("3");
    type("3", 1);
    expect(told).toEqual([]);
    vi.advanceTimersByTime(rest);
    expect(told).toEqual(["3 1"]);
    type("3", 2);
    expect(told.at(-1)).toBe("3 2");
  });
  it("are told to nobody who no longer listens", () => {
    const { told, type, stop } = shelf();
    type("3");
    stop();
    vi.advanceTimersByTime(rest);
    expect(told).toEqual([]);
  });
});

describe("a letter", () => {
  it("is one more, one less or another, anywhere within a line", () => {
    for (const [now, before] of [
      ["leeks", "leek"],
      ["leks", "leeks"],
      ["peeks", "leeks"],
      ["", "l"],
    ] as const)
      expect(isLetter(now, before), `${before} → ${now}`).toBe(true);
  });
  it("is not a line ended or joined, a word, nor two letters changed", () => {
    for (const [now, before] of [
      ["leeks\n", "leeks"],
      ["leeks", "leeks\n"],
      ["leeks pears", "leeks"],
      ["beeds", "leeks"],
    ] as const)
      expect(isLetter(now, before), `${before} → ${now}`).toBe(false);
  });
});
