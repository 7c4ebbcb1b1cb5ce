import { readFileSync } from "node:fs";
import { type Catalogue, catalogue, figureCatalogue } from "@keepwright/catalogue";
import { handoutContext, lotReasonLines, planView } from "@keepwright/handout";
import { explainPlan, ordinaryKitchens, planHaul, readHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";

const example = new URL("../../../examples/market-saturday/haul.txt", import.meta.url);

function everything(from: Catalogue) {
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

describe("the catalogue without the provenance of its figures, as the page has it", () => {
  it("reads, plans and explains the worked example word for word the same", () => {
    expect(everything(figureCatalogue())).toEqual(everything(catalogue()));
  });
});
