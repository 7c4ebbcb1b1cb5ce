import { catalogue, namesOf } from "@keepwright/catalogue";
import { readHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";

const refused = (name: string): boolean =>
  readHaul(name, catalogue()).items.some((item) =>
    item.questions.some((question) => question.ask === "unsafe or other"),
  );

describe("what a look-up refuses", () => {
  it("is no name of a kind in the catalogue", () => {
    const names = [...catalogue().commodities.values()].flatMap((commodity) => namesOf(commodity));
    expect(names.length).toBeGreaterThan(500);
    expect(names.filter(refused)).toEqual([]);
  });
  it.each(["bean sprouts", "rotten tomatoes", "wild mushrooms", "garlic in oil", "mouldy bread fruit"])(
    "is “%s”",
    (name) => expect(refused(name)).toBe(true),
  );
});
