import { catalogue, commodityOf } from "@keepwright/catalogue";
import { documentLines, makeKit } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { classRequest, spanish } from "./support.js";

/** Invented: a warm kitchen, in which a plan for all at once has onions in the cold, where their own sheet does not. */
const items = ["potato", "onion", "apple", "cabbage", "banana"];
const household = { kitchen: "warm", people: 3, portions: 5, days: 7 };

describe("the page of one home", () => {
  it.each([
    ["English", {}, /^Their own sheets have these elsewhere: (.+?)\. In a full/m, "onions"],
    ["Spanish", { audience: spanish }, /^Su propia hoja pone en otro lugar: (.+?)\. En una/m, "cebollas"],
  ] as const)("says in %s what lies where its own sheet does not advise it", (_, changes, line, onions) => {
    const kit = makeKit(classRequest({ items, household, ...changes }), catalogue());
    const cold = kit.household.plan.lots.filter(
      ({ commodity, stays }) =>
        commodityOf(catalogue(), commodity).dryOutOfRefrigerator &&
        stays.some(({ placeKind }) => /^refrigerator|^crisper/.test(placeKind)),
    );
    const said = documentLines(kit.documents.find(({ sort }) => sort === "household")!).join("\n");
    const named = line.exec(said)?.[1]?.toLowerCase() ?? "";
    expect(cold.map(({ commodity }) => commodity)).toEqual(["onion"]);
    expect(named).toContain(onions);
    expect(named).not.toMatch(/cabbage|repollo/);
  });
});
