import { readFileSync } from "node:fs";
import { catalogue } from "@keepwright/catalogue";
import { handoutContext, lotReasonLines, planView } from "@keepwright/handout";
import { explainPlan, ordinaryKitchens, planHaul, readHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { dropProvenance, withoutProvenance } from "../vite.config.js";

const example = new URL("../../../examples/market-saturday/haul.txt", import.meta.url);
const generated = new URL("../../../packages/catalogue/src/data.generated.ts", import.meta.url);
const whole = catalogue();

/** Every record thinned as the page's build thins the bundle. */
const lean = {
  ...whole,
  commodities: new Map(JSON.parse(JSON.stringify([...whole.commodities], dropProvenance))),
} as typeof whole;

function everything(from: typeof whole) {
  const { items } = readHaul(readFileSync(example, "utf8"), from);
  const lots = items.flatMap((item, index) =>
    item.kind === "lot" ? [{ ...item.lot, id: `lot-${index}` }] : [],
  );
  const kitchen = ordinaryKitchens.ordinary;
  const household = { people: 4, portionsPerPersonPerDay: 5, daysAway: [], days: 10 };
  const problem = { haul: { lots }, kitchen, household, catalogue: from };
  const plan = planHaul({ ...problem, from: "2026-06-13", seed: 1 });
  const context = handoutContext(from);
  const reasons = explainPlan({ ...problem, plan });
  return {
    items,
    plan,
    view: planView(context, plan),
    why: reasons.map((each) => lotReasonLines(context, plan, each)),
  };
}

describe("the catalogue without the provenance of its figures", () => {
  it("is less than half as long", () => {
    const text = readFileSync(generated, "utf8");
    expect(withoutProvenance(text).length).toBeLessThan(text.length / 2);
    expect(withoutProvenance(text)).not.toMatch(/\\"(source|note|rivals|place)\\":/);
  });
  it("reads, plans and explains the worked example word for word the same", () => {
    expect(everything(lean)).toEqual(everything(whole));
  });
});
