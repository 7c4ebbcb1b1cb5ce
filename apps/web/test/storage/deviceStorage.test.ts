import { unitsOf } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import type { PlannerState } from "../../src/state/plannerState.js";
import { load, save, setAsideKey, storageKey } from "../../src/storage/deviceStorage.js";

const otherwise: PlannerState = {
  version: 3,
  text: "3 figs",
  corrections: {},
  kitchen: "ordinary",
  kitchens: [],
  people: 4,
  days: 10,
  portions: 5,
  away: [],
  units: unitsOf("metric"),
  language: "device",
  region: "device",
  done: [],
  lying: {},
  vents: {},
};
const how = { otherwise, kinds: new Set(["fig"]) };

function storeWith(kept: Record<string, string> = {}) {
  const items = new Map(Object.entries(kept));
  const store = {
    getItem: (key: string) => items.get(key) ?? null,
    setItem: (key: string, value: string) => void items.set(key, value),
  };
  return { items, reach: () => store };
}

describe("keeping on the device", () => {
  it("gives back what was saved", () => {
    const { reach } = storeWith();
    const state = { ...otherwise, text: "2 kg apples", people: 2 };
    expect(save(state, reach)).toBe(true);
    expect(load(how, reach)).toEqual(state);
  });
  it("opens the other state where nothing was saved, and sets nothing aside", () => {
    const { reach, items } = storeWith();
    expect(load(how, reach)).toBe(otherwise);
    expect(items.size).toBe(0);
  });
  it.each(["{oops", "[]", "null", '{"text":7}'])("sets %s aside before it is written over", (kept) => {
    const { reach, items } = storeWith({ [storageKey]: kept });
    expect(load(how, reach)).toBe(otherwise);
    expect(items.get(setAsideKey)).toBe(kept);
  });
  it("says when the device refuses to keep, and opens the other state when it refuses to read", () => {
    const refused = () => {
      throw new Error("refused");
    };
    expect(save(otherwise, refused)).toBe(false);
    expect(load(how, refused)).toBe(otherwise);
  });
});
