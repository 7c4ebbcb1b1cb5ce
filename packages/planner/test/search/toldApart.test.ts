import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { planHaul } from "../../src/search/planHaul.js";
import { ownWord } from "../../src/search/toldApart.js";
import { lot, request } from "../support.js";

const known = catalogue();
const wordOf = (kind: string, typed: string) =>
  ownWord({ lot: { ...lot(kind, 300), typed }, commodity: known.commodities.get(kind)! });

describe("the person's own word for a lot", () => {
  it.each([
    ["chilli", "300 g poblanos", "poblanos"],
    ["chilli", "2 Chiles Poblanos", "Chiles Poblanos"],
    ["chilli", "5 chiles", undefined],
    ["chilli", "ajíes", undefined],
    ["carrot", "carrots with tops", undefined],
    ["carrot", "1 kg of something", undefined],
  ])("of %s in “%s” is %s", (kind, typed, word) => {
    expect(wordOf(kind, typed)).toBe(word);
  });
});

describe("what a lot is told apart by", () => {
  it("is in the plan only where another lot of its kind is", () => {
    const chillies = ["poblanos", "serranos"].map((typed, at) => ({
      ...lot("chilli", 200, { typed }),
      id: `lot-${at + 1}`,
    }));
    const plan = planHaul(request([...chillies, { ...lot("carrot", 300), id: "lot-3" }]));
    const apart = (id: string) => plan.lots.find((part) => part.lot === id)!.apart;
    expect(apart("lot-1")).toEqual({ word: "poblanos", since: plan.from, origin: "lot-1" });
    expect(apart("lot-2")).toEqual({ word: "serranos", since: plan.from, origin: "lot-2" });
    expect(apart("lot-3")).toBeUndefined();
  });
});
