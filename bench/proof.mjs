// How far plans are from the bound: the worked examples, and invented hauls of 20 to 40 lots in 6 to 10 places. One line a haul, and the distribution so far after each group and every
// fifth invented haul, so that a run that is cut short has told what it found. `node bench/proof.mjs 10 8` takes 10 invented hauls and 8 relaxations a proof; `node bench/proof.mjs 10 8 20`
// those from the 20th on, without the examples, so that two can be run side by side.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { catalogue } from "@keepwright/catalogue";
import {
  bindProblem,
  kitchenFrom,
  loadSolver,
  ordinaryKitchens,
  planProblem,
  provePlan,
  readHaul,
} from "@keepwright/planner";
import { seededRandom } from "@keepwright/quantities";
import { quantile, timed } from "./lib/requests.mjs";

const [hauls = 50, relaxations = 8, first = 0] = process.argv.slice(2).map(Number);
const folder = new URL("../examples/", import.meta.url);

function example(name) {
  const file = (path) => new URL(`${name}/${path}`, folder);
  const { people, days, daysAway, from } = JSON.parse(readFileSync(file("scenario.json"), "utf8"));
  const kitchen = existsSync(file("kitchen.json"))
    ? kitchenFrom(JSON.parse(readFileSync(file("kitchen.json"), "utf8")))
    : ordinaryKitchens.ordinary;
  const { items } = readHaul(readFileSync(file("haul.txt"), "utf8"), catalogue());
  const lots = items.flatMap((item, index) =>
    item.kind === "lot" ? [{ ...item.lot, id: `lot-${index + 1}` }] : [],
  );
  return { haul: { lots }, kitchen, household: { people, days, daysAway }, from, catalogue: catalogue() };
}

/** An invented haul for two to six people, in an ordinary kitchen or one with a cellar, with places added. */
function invented(seed) {
  const next = seededRandom(seed);
  const one = (items) => items[Math.floor(next() * items.length)];
  const people = 2 + Math.floor(next() * 5);
  const kinds = [...catalogue().commodities.values()];
  const used = new Set();
  const lots = [];
  const count = 20 + Math.floor(next() * 21);
  while (lots.length < count) {
    const { id, household } = one(kinds);
    if (used.has(id) || (household.seasoning && next() < 0.5)) continue;
    used.add(id);
    const grams = Math.round(household.portion.value * (1 + Math.floor(next() * 2 * people))) + 1;
    lots.push({ id: `lot-${lots.length}`, commodity: id, grams, form: next() < 0.06 ? "cut" : "whole" });
  }
  const base = one([ordinaryKitchens.ordinary, ordinaryKitchens.cellar]);
  const colder = next() * 3 - 1.5;
  const cooled = (place) => ({
    ...place,
    temperature: place.temperature + (place.refrigerator === undefined ? 0 : colder),
  });
  const places = base.places.map(cooled);
  const wanted = 6 + Math.floor(next() * 5);
  for (let index = places.length; index < wanted; index++) {
    const like = one(base.places);
    places.push({
      ...like,
      id: `${like.id}-${index}`,
      name: `${like.name} ${index}`,
      litres: like.litres * (0.5 + next()),
    });
  }
  const refrigerators = base.refrigerators.map((refrigerator) => ({
    ...refrigerator,
    temperature: refrigerator.temperature + colder,
  }));
  return {
    haul: { lots },
    kitchen: kitchenFrom({ ...base, refrigerators, places }),
    household: { people, days: 5 + Math.floor(next() * 6), daysAway: next() < 0.3 ? [1] : [] },
    from: "2026-06-13",
    catalogue: catalogue(),
  };
}

const solver = await loadSolver();

function measured(name, request) {
  const problem = bindProblem(request);
  let plan;
  const planned = timed(() => (plan = planProblem(problem))).cpu;
  let proof;
  const proved = timed(
    () => (proof = provePlan(problem, plan.objective.total, solver, { mostRelaxations: relaxations })),
  ).cpu;
  const { length } = problem.lots;
  console.log(
    JSON.stringify({
      bench: "proof",
      name,
      lots: length,
      ...proof,
      planned,
      proved,
      unit: "ms of processor",
    }),
  );
  return proof.gap;
}

function distribution(what, gaps) {
  const at = (share) => quantile(gaps, share);
  console.log(
    JSON.stringify({
      bench: "gaps",
      what,
      count: gaps.length,
      least: at(0),
      quarter: at(0.25),
      median: at(0.5),
      threeQuarters: at(0.75),
      most: at(1),
    }),
  );
}

const examples = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
if (first === 0) {
  distribution(
    "worked examples",
    examples.map(({ name }) => measured(name, example(name))),
  );
}
const gaps = [];
for (let seed = first; seed < first + hauls; seed++) {
  gaps.push(measured(`seed ${seed}`, invented(seed)));
  if (gaps.length % 5 === 0 || gaps.length === hauls)
    distribution("invented hauls of 20 to 40 lots in 6 to 10 places", gaps);
}
