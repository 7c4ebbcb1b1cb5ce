import { unitsOf } from "@keepwright/handout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type History, noHistory, taken } from "../../src/state/history/history.js";
import {
  cleared,
  isExample,
  opened,
  type PlannerChange,
  type PlannerState,
  plannerReducer,
} from "../../src/state/plannerState.js";

const state: PlannerState = {
  version: 5,
  text: "2 kg apples",
  corrections: { "2 kg apples#0": { amount: { value: 500, unit: "g" } } },
  meant: {},
  kitchen: "small",
  kitchens: [],
  people: 3,
  days: 7,
  portions: 5,
  away: [],
  units: unitsOf("us"),
  language: "device",
  region: "device",
  done: [],
  lying: {},
  vents: {},
  chosen: {},
  from: "today",
  before: [],
  missed: [],
  classForm: {},
};

const change: fc.Arbitrary<PlannerChange> = fc.oneof(
  fc.record({ change: fc.constant("text" as const), text: fc.string() }),
  fc.record({
    change: fc.constant("correct" as const),
    key: fc.string(),
    correction: fc.record({ extraDays: fc.integer({ min: 0, max: 60 }) }),
  }),
  fc.record({ change: fc.constant("as read" as const), key: fc.string() }),
  fc.record({ change: fc.constant("people" as const), people: fc.integer({ min: 1, max: 12 }) }),
  fc.record({ change: fc.constant("days" as const), days: fc.integer({ min: 3, max: 21 }) }),
  fc.record({ change: fc.constant("kitchen" as const), kitchen: fc.constantFrom("ordinary", "cellar") }),
);

describe("the next state", () => {
  it("never changes the state before, and only the part that was changed", () => {
    fc.assert(
      fc.property(change, (each) => {
        const before = structuredClone(state);
        const next = plannerReducer(state, each);
        expect(state).toEqual(before);
        const part = each.change === "correct" || each.change === "as read" ? "corrections" : each.change;
        for (const key of Object.keys(state) as (keyof PlannerState)[])
          if (key !== part) expect(next[key]).toEqual(state[key]);
      }),
    );
  });

  it("keeps where a thing is chosen to lie, and forgets it when it is put back", () => {
    const at = { place: "counter", wrap: "paper bag" } as const;
    const kept = plannerReducer(state, { change: "chosen", key: "2 kg apples#0", at });
    expect(kept.chosen).toEqual({ "2 kg apples#0": at });
    expect(plannerReducer(kept, { change: "chosen", key: "2 kg apples#0", at: undefined }).chosen).toEqual(
      {},
    );
    expect(cleared(kept).chosen).toEqual({});
  });

  it("ticks every lot of a task, and takes the ticks away together", () => {
    const done = plannerReducer(state, { change: "done", tasks: ["a", "b", "a"], done: true });
    expect(done.done).toEqual(["a", "b"]);
    expect(plannerReducer(done, { change: "done", tasks: ["a"], done: false }).done).toEqual(["b"]);
  });

  it("adds to an earlier correction of the same line", () => {
    const next = plannerReducer(state, {
      change: "correct",
      key: "2 kg apples#0",
      correction: { form: "cut" },
    });
    expect(next.corrections["2 kg apples#0"]).toEqual({ amount: { value: 500, unit: "g" }, form: "cut" });
  });

  it("puts back what was read, and leaves other lines' corrections alone", () => {
    const other = plannerReducer(state, { change: "correct", key: "figs#0", correction: { leftOut: true } });
    const next = plannerReducer(other, { change: "as read", key: "2 kg apples#0" });
    expect(next.corrections).toEqual({ "figs#0": { leftOut: true } });
  });
});

describe("an answer about a word", () => {
  const answered = plannerReducer(state, {
    change: "correct",
    key: "greens#0",
    correction: { commodity: "kale" },
    meant: { word: "greens", means: "kale" },
  });
  it("holds for the list after it", () => {
    expect(answered.meant).toEqual({ greens: "kale" });
    expect(plannerReducer(answered, { change: "clear" }).meant).toEqual({ greens: "kale" });
    expect(plannerReducer(answered, { change: "open example", example: state }).meant).toEqual({
      greens: "kale",
    });
  });
  it("gives way to another, and is forgotten where the line is asked about again, or the word", () => {
    const again = { change: "as read", key: "greens#0", word: "greens" } as const;
    const chard = {
      change: "correct",
      key: "greens#0",
      correction: { commodity: "chard" },
      meant: { word: "greens", means: "chard" },
    } as const;
    expect(plannerReducer(answered, chard).meant).toEqual({ greens: "chard" });
    expect(plannerReducer(answered, again)).toMatchObject({ meant: {}, corrections: state.corrections });
    expect(plannerReducer(answered, { change: "forget word", word: "greens" })).toEqual({
      ...answered,
      meant: {},
    });
  });
});

describe("starting again and the example", () => {
  const example: PlannerState = { ...state, text: "3 figs", corrections: {}, kitchen: "ordinary", people: 4 };

  it("clears the haul and keeps the kitchen, the people and the units", () => {
    expect(cleared(state)).toEqual({ ...state, text: "", corrections: {} });
  });
  it("opens the example's haul and people in the person's own kitchen and units", () => {
    expect(opened(example, state)).toEqual({ ...example, kitchen: "small", units: unitsOf("us") });
  });
  it("knows the example from one that was touched", () => {
    expect(isExample(opened(example, state), example)).toBe(true);
    expect(isExample(cleared(example), example)).toBe(false);
    const touched = plannerReducer(example, { change: "correct", key: "3 figs#0", correction: {} });
    expect(isExample(touched, example)).toBe(false);
  });
});

describe("the day a list came home", () => {
  const write = (before: PlannerState, text: string, on: string) =>
    plannerReducer(before, { change: "text", text, on });
  const saturday = write({ ...state, text: "" }, "2 kg apples", "2026-06-13");

  it("is that of its first words, and stays when it is changed on the same day", () => {
    expect(saturday).toMatchObject({ from: "2026-06-13", before: [] });
    expect(write(saturday, "3 kg apples", "2026-06-13")).toMatchObject({ from: "2026-06-13", before: [] });
  });

  it("keeps the list as it stood until each later day, once a day", () => {
    const monday = write(
      write(saturday, "2 kg apples\n3", "2026-06-15"),
      "2 kg apples\n3 figs",
      "2026-06-15",
    );
    expect(monday.before).toEqual([{ day: "2026-06-15", text: "2 kg apples" }]);
    expect(write(monday, "3 figs", "2026-06-16").before).toHaveLength(2);
    // A clock that was set back writes nothing before what was there.
    expect(write(monday, "3 figs", "2026-06-12").before).toEqual(monday.before);
  });

  it("begins anew with a new list, and when all of it is said to come home then", () => {
    const missed = plannerReducer(saturday, { change: "missed", keys: ["eat|2026-06-13|a#0"], missed: true });
    expect(missed.missed).toEqual(["eat|2026-06-13|a#0"]);
    expect(write(missed, "", "2026-06-15")).toMatchObject({ from: "today", before: [], missed: [] });
    const anew = plannerReducer({ ...missed, done: ["x"] }, { change: "from", from: "2026-06-15" });
    expect(anew).toMatchObject({ from: "2026-06-15", before: [], missed: [], done: [] });
    expect(cleared(missed)).toMatchObject({ from: "today", missed: [] });
  });
});

describe("another language", () => {
  const example = { ...state, text: "2 kg apples", corrections: {} };
  const spanish = {
    change: "language",
    language: "es",
    instead: { of: "2 kg apples", text: "2 kg de manzanas" },
  } as const;

  it("opens the example anew that nobody has touched", () => {
    expect(plannerReducer(example, spanish)).toEqual({
      ...example,
      language: "es",
      text: "2 kg de manzanas",
    });
  });

  it.each([
    ["words", { text: "3 kg apples" }],
    ["an amount", { corrections: state.corrections }],
    ["what was ticked", { done: ["eat:0:2 kg apples#0"] }],
    ["where it lies", { lying: { "2 kg apples#0": "as planned" as const } }],
  ])("leaves %s as they were entered", (_, touched) => {
    const before = { ...example, ...touched };
    expect(plannerReducer(before, spanish)).toEqual({ ...before, language: "es" });
  });
});

describe("words in an empty box", () => {
  const answered: PlannerState = {
    ...state,
    done: ["eat apples"],
    lying: { "2 kg apples#0": "as planned" },
    chosen: { "2 kg apples#0": "as planned" },
    missed: ["move||"],
  };
  const write = (from: PlannerState, text: string) =>
    plannerReducer(from, { change: "text", text, on: "2026-06-20" });

  it("begin a list anew: nothing answered of the one before falls on it", () => {
    const anew = write(write(answered, " \n"), "2 kg apples");
    const { corrections, done, lying, chosen, missed, from } = anew;
    expect({ corrections, done, lying, chosen, missed }).toEqual({
      corrections: {},
      done: [],
      lying: {},
      chosen: {},
      missed: [],
    });
    expect(from).toBe("2026-06-20");
    expect(anew).toMatchObject({ people: 3, days: 7, kitchen: "small" });
  });

  it("leave all answers while other words stand there, and while it is empty", () => {
    expect(write(answered, "2 kg apples\n3 figs").corrections).toEqual(answered.corrections);
    expect(write(answered, "").corrections).toEqual(answered.corrections);
  });

  it("can be taken back, to the list as it was answered", () => {
    const act = (history: History, text: string, number: number) =>
      taken(history, {
        by: "a",
        number,
        at: number * 1000,
        act: { act: "change", change: { change: "text", text, on: "2026-06-20" } },
      });
    const erased = act(noHistory(answered), "", 1);
    const anew = [..."3 figs"].reduce(
      (history, _, index) => act(history, "3 figs".slice(0, index + 1), index + 2),
      erased,
    );
    const undo = (history: History) =>
      taken(history, { by: "a", number: 99, at: 99_000, act: { act: "undo" } });
    expect(undo(undo(anew)).state).toEqual(answered);
  });
});
