// Waste that the plans of the examples claim beside what a thousand draws make of it, with parts of what is drawn left out: the table of docs/decisions/0108-draws.md. Names of
// examples as arguments; all where none is given. Each line is one JSON object, grams. Needs built packages (npm run build).
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { catalogue } from "@keepwright/catalogue";
import {
  bindProblem,
  carryOut,
  mealsOfPlan,
  noSpreads,
  ordinaryKitchens,
  planProblem,
  readHaul,
  usualSpreads,
} from "@keepwright/planner";

const draws = 1000;
const examples = new URL("../examples/", import.meta.url);
const json = (path) => JSON.parse(readFileSync(new URL(path, examples), "utf8"));
const hasScenario = (name) => existsSync(new URL(`${name}/scenario.json`, examples));

function problemOf(name) {
  const { from, people, days, daysAway } = json(`${name}/scenario.json`);
  const text = readFileSync(new URL(`${name}/haul.txt`, examples), "utf8");
  const found = readHaul(text, catalogue(), from).items.filter(({ kind }) => kind === "lot");
  const own = existsSync(new URL(`${name}/kitchen.json`, examples));
  return bindProblem({
    haul: { lots: found.map(({ lot }, index) => ({ ...lot, id: `lot-${index + 1}` })) },
    kitchen: own ? json(`${name}/kitchen.json`) : ordinaryKitchens.ordinary,
    household: { people, days, daysAway },
    from,
    seed: 1,
    catalogue: catalogue(),
  });
}

const variants = {
  drawn: usualSpreads,
  "every place by itself": { ...usualSpreads, sharedAir: 0 },
  "temperature not drawn": { ...usualSpreads, temperature: 0 },
  "reports not drawn": { ...usualSpreads, reports: 0 },
  "only late meals": { ...noSpreads, lateShare: usualSpreads.lateShare },
};

function drawn(problem, meals, spreads) {
  const wasted = [...carryOut(problem, meals, draws, 1, spreads).wasted].sort((one, other) => one - other);
  const mean = wasted.reduce((sum, grams) => sum + grams, 0) / draws;
  const spread = Math.sqrt(wasted.reduce((sum, grams) => sum + (grams - mean) ** 2, 0) / (draws - 1));
  const at = (share) => Math.round(wasted[Math.floor(share * draws)]);
  return { mean: Math.round(mean), error: Math.round(spread / Math.sqrt(draws)), of10: [at(0.1), at(0.9)] };
}

const asked = process.argv.slice(2);
for (const name of asked.length > 0 ? asked : readdirSync(examples).filter(hasScenario)) {
  const problem = problemOf(name);
  const plan = planProblem(problem);
  const meals = mealsOfPlan(problem, plan);
  const told = Object.fromEntries(
    Object.entries(variants).map(([variant, spreads]) => [variant, drawn(problem, meals, spreads)]),
  );
  console.log(
    JSON.stringify({ bench: "claims", name, claimed: Math.round(plan.expectedWaste.value), ...told }),
  );
}
