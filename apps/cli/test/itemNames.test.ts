import { catalogue, namesOf } from "@keepwright/catalogue";
import { readHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { keepwright } from "./support/built.js";

const refused = (name: string): boolean =>
  readHaul(name, catalogue()).items.some((item) =>
    item.questions.some((question) => question.ask === "unsafe or other"),
  );

/** Kinds whose names the reader of hauls holds back with a caution; a look-up tells of them, hazards first. */
const heldBack = ["bean-sprouts", "alfalfa-sprouts", "wild-mushroom"];

describe("what a plan holds back", () => {
  it("is no name of a kind in the catalogue but of the few declared here", () => {
    const kinds = [...catalogue().commodities.values()];
    const others = kinds.filter(({ id }) => !heldBack.includes(id)).flatMap((kind) => namesOf(kind));
    expect(others.length).toBeGreaterThan(500);
    expect(others.filter(refused)).toEqual([]);
    expect(heldBack.map((id) => refused(catalogue().commodities.get(id)!.names.en.many))).toEqual([
      true,
      true,
      true,
    ]);
  });
  it.each(["bean sprouts", "rotten tomatoes", "wild mushrooms", "garlic in oil", "mouldy bread fruit"])(
    "is “%s”",
    (name) => expect(refused(name)).toBe(true),
  );
});

describe("a look-up", () => {
  it.each(["bean sprouts", "wild mushrooms"])("tells of %s with what can hurt", (name) => {
    const { code, out } = keepwright(["item", name]);
    expect(code).toBe(0);
    expect(out).toMatch(/TAKE CARE\n[\s\S]*cook/i);
  });
  it.each(["rotten tomatoes", "garlic in oil"])("refuses %s with the caution", (name) => {
    expect(keepwright(["item", name]).code).not.toBe(0);
  });
  it("tells how to see that it is ripe, that it is going, that it must go, how to save it, and its seasons", () => {
    const { out } = keepwright(["item", "peach"]);
    for (const heading of [
      "HOW TO TELL THAT IT IS READY",
      "GOING: EAT IT NOW",
      "THROW IT AWAY WHEN",
      "TOO MUCH? SAVE IT",
    ])
      expect(out).toContain(heading);
    expect(out).toMatch(/North of the equator: .+ to .+\.\n.*South of the equator: .+ to .+\./);
  });
});
