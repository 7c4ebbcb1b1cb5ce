import { checkKitchen, describedKitchen } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { freshKey, freshKitchen, isName, renamed, withAnswers } from "../../src/state/ownKitchens.js";

const fresh = () => freshKitchen([], "Ours");

describe("a kitchen of one's own", () => {
  it("begins as the ordinary one, under a key that no other has", () => {
    const first = fresh();
    expect(first).toMatchObject({ key: "own-1", answers: {}, kitchen: { name: "Ours" } });
    const third = { ...first, key: "own-3" };
    expect(freshKey([first, third])).toBe("own-2");
  });

  it("is made of what was said, and unsaid again", () => {
    const said = withAnswers(fresh(), { room: "hot", door: false });
    expect(said.kitchen).toEqual(describedKitchen({ room: "hot", door: false }, "Ours").kitchen);
    const unsaid = withAnswers(said, { door: undefined } as never);
    expect(unsaid.answers).toEqual({ room: "hot" });
    expect(unsaid.kitchen).toEqual(describedKitchen({ room: "hot" }, "Ours").kitchen);
  });

  it("keeps an answer that will not do, and does without it", () => {
    const coldReading = { typed: "60", unit: "°C" } as const;
    const own = withAnswers(fresh(), { room: "cool", cold: "reading", coldReading });
    expect(own.answers?.coldReading).toEqual(coldReading);
    expect(own.kitchen).toEqual(describedKitchen({ room: "cool" }, "Ours").kitchen);
  });

  it("can be planned with however its answers contradict one another", () => {
    const own = withAnswers(fresh(), {
      cold: "reading",
      coldReading: { typed: "16", unit: "°C" },
      room: "reading",
      roomReading: { typed: "-4", unit: "°C" },
      cellar: true,
      cellarReading: { typed: "40", unit: "°C" },
    });
    expect(checkKitchen(own.kitchen).ok).toBe(true);
  });

  it("is called as the person calls it, if that can be read", () => {
    expect(renamed(fresh(), "Theirs").kitchen.name).toBe("Theirs");
    expect(isName(" \u200b ")).toBe(false);
    expect(isName("x".repeat(121))).toBe(false);
    expect(isName("Abuela’s")).toBe(true);
  });
});
