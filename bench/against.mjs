// Plans the examples and invented hauls of 12 to 40 lots by two trees of the house in turn, and compares value and processor time: a ratio from one run holds on a
// busy machine too. Both trees built; the other's folder is named: node bench/against.mjs ../before. Another SEED gives other hauls. One JSON line a plan, then the summary.
import { existsSync, readFileSync } from "node:fs";
import { loadavg } from "node:os";
import { resolve } from "node:path";
import { boxes } from "./lib/boxes.mjs";
import { eightPlaces, quantile, requestOf, tenPlaces, timed } from "./lib/requests.mjs";

const [other] = process.argv.slice(2);
if (!other) {
  console.log(JSON.stringify({ bench: "two trees", skipped: "Name the folder of another built tree." }));
  process.exit(0);
}
const seed = Number(process.env.SEED ?? 1);
const ours = resolve(new URL(".", import.meta.url).pathname, "..");

async function treeIn(folder) {
  const dist = (room, file = "index.js") => import(`${resolve(folder)}/packages/${room}/dist/${file}`);
  const { catalogue } = await dist("catalogue");
  const planner = await dist("planner");
  const { prepare } = await dist("planner", "search/prepare.js");
  const { searchPlan } = await dist("planner", "search/searchPlan.js");
  return {
    ...planner,
    catalogue,
    plan: (request) => {
      const problem = planner.bindProblem({ ...request, catalogue: catalogue() });
      return timed(() => searchPlan(prepare(problem)));
    },
  };
}
const [before, after] = [await treeIn(other), await treeIn(ours)];

const { kitchenFrom, ordinaryKitchens, readHaul } = after;
const lotsOf = (text) =>
  readHaul(text, after.catalogue()).items.flatMap((item, index) =>
    item.kind === "lot" ? [{ ...item.lot, id: `lot-${index + 1}` }] : [],
  );
const asked = { from: "2026-06-13", seed: 1 };

function example(name) {
  const read = (file) => readFileSync(`${ours}/examples/${name}/${file}`, "utf8");
  const { people, daysAway, days, from } = JSON.parse(read("scenario.json"));
  const own = existsSync(`${ours}/examples/${name}/kitchen.json`);
  return {
    kind: "examples",
    name,
    request: {
      ...asked,
      from,
      haul: { lots: lotsOf(read("haul.txt")) },
      kitchen: own ? kitchenFrom(JSON.parse(read("kitchen.json"))) : ordinaryKitchens.ordinary,
      household: { people, portionsPerPersonPerDay: 5, daysAway, days },
    },
  };
}

const examples = [
  "family-week",
  "fruit-for-the-week",
  "half-already-cut",
  "market-saturday",
  "small-refrigerator",
  "summer-fruit-glut",
  "winter-root-box",
].map(example);
const kitchens = ["ordinary", "cellar", "warm", "small"].map((key) => [key, ordinaryKitchens[key]]);
const boxesOfTwelve = boxes(28, 12, seed).map(({ haul, people }, index) => {
  const [key, kitchen] = kitchens[index % kitchens.length];
  const household = { people, portionsPerPersonPerDay: 5, daysAway: [], days: 7 };
  return {
    kind: "12 lots",
    name: `${index + 1} ${key}`,
    request: { ...asked, haul: { lots: lotsOf(haul) }, kitchen, household },
  };
});
const hauls = [
  [16, eightPlaces],
  [20, ordinaryKitchens.ordinary],
  [24, eightPlaces],
  [30, eightPlaces],
  [40, tenPlaces],
].flatMap(([lots, kitchen]) =>
  [2 * seed + 1, 2 * seed + 11].map((step) => ({
    kind: `${lots} lots`,
    name: `step ${step}`,
    request: requestOf(lots, kitchen, { step }),
  })),
);

const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
for (const tree of [before, after]) tree.plan(examples[0].request);
const rows = [...examples, ...boxesOfTwelve, ...hauls].map(({ kind, name, request }) => {
  const [was, is] = [before.plan(request), after.plan(request)];
  const total = ({ value }) => value.objective.total;
  const row = { kind, name, worse: total(is) / total(was) - 1, before: was.cpu, after: is.cpu };
  console.log(JSON.stringify(row));
  return row;
});
function summary(some, kind) {
  const values = some.map(({ worse }) => worse);
  return {
    bench: "two trees",
    kind,
    plans: some.length,
    value: {
      mean: mean(values),
      median: quantile(values, 0.5),
      least: Math.min(...values),
      most: Math.max(...values),
    },
    better: values.filter((worse) => worse < -1e-5).length,
    worse: values.filter((worse) => worse > 1e-5).length,
    timesProcessor: Math.exp(mean(some.map((row) => Math.log(row.after / row.before)))),
    load: loadavg()[0],
  };
}
for (const kind of new Set(rows.map((row) => row.kind))) {
  console.log(
    JSON.stringify(
      summary(
        rows.filter((row) => row.kind === kind),
        kind,
      ),
    ),
  );
}
console.log(JSON.stringify(summary(rows, "all")));
