// Carries plans of 12 and of 30 lots out a thousand times. Each line is one JSON object, times in processor seconds, for other processes on the machine
// disturb them less. Needs built packages (npm run build).
import { catalogue } from "@keepwright/catalogue";
import {
  bindProblem,
  carryOut,
  mealsOfPlan,
  ordinaryKitchens,
  planProblem,
  usualSpreads,
} from "@keepwright/planner";
import { processorTime } from "./lib/hauls.mjs";

const draws = 1000;
const kinds = [...catalogue().commodities.keys()].sort();
/** An invented haul: every kind in turn. */
const problemOf = (lots) =>
  bindProblem({
    haul: {
      lots: Array.from({ length: lots }, (_, index) => ({
        id: `lot ${index}`,
        commodity: kinds[(index * 7) % kinds.length],
        grams: 300 + 50 * (index % 5),
      })),
    },
    kitchen: ordinaryKitchens.cellar,
    household: { people: 4 },
    from: "2026-06-13",
    catalogue: catalogue(),
  });

for (const lots of [12, 30]) {
  const problem = problemOf(lots);
  const meals = mealsOfPlan(problem, planProblem(problem));
  carryOut(problem, meals, 50, 2, usualSpreads);
  const start = processorTime();
  carryOut(problem, meals, draws, 1, usualSpreads);
  const seconds = (processorTime() - start) / 1000;
  console.log(JSON.stringify({ bench: "draws", lots, parts: meals.choice.parts.length, draws, seconds }));
}
