// Plans 30 lots in 8 places, and compares judging a tried move by increments with simulating everything again.
// Each line is one JSON object; figures that are compared come from the same run. Needs built packages (npm run build).
import { catalogue } from "@keepwright/catalogue";
import { judgeChange, simulate, trajectory } from "@keepwright/physics";
import {
  allProgrammes,
  bindProblem,
  choiceOfPlan,
  evaluate,
  ordinaryKitchens,
  planHaul,
  simulatedPart,
  simulationOf,
} from "@keepwright/planner";

const repeats = 20;
// An invented haul: every kind in turn, in amounts that 45 litres of shelf and two drawers nearly hold.
const kinds = [...catalogue().commodities.keys()].sort();
const lots = Array.from({ length: 30 }, (_, index) => ({
  id: `lot ${index}`,
  commodity: kinds[(index * 7) % kinds.length],
  grams: 300 + 50 * (index % 5),
}));
const request = {
  haul: { lots },
  kitchen: ordinaryKitchens.cellar,
  household: { people: 4 },
  from: "2026-06-13",
  catalogue: catalogue(),
};

const milliseconds = (work) => {
  const start = performance.now();
  work();
  return performance.now() - start;
};
const quantile = (values, share) =>
  [...values].sort((a, b) => a - b)[Math.floor(share * (values.length - 1))];

let plan;
const times = Array.from({ length: repeats }, (_, index) =>
  milliseconds(() => (plan = planHaul({ ...request, seed: index }))),
);
console.log(
  JSON.stringify({
    bench: "plan",
    lots: lots.length,
    places: plan.places.length,
    repeats,
    first: times[0],
    median: quantile(times, 0.5),
    slowest: Math.max(...times),
    unit: "ms",
  }),
);

const problem = bindProblem(request);
const choice = choiceOfPlan(problem, plan);
const moves = allProgrammes(problem).flatMap((programmes, lot) =>
  choice.parts.findIndex((part) => part.lot === lot) < 0
    ? []
    : programmes.map((programme) => ({
        part: choice.parts.findIndex((part) => part.lot === lot),
        programme,
      })),
);
const base = trajectory(simulationOf(problem, choice));
const changed = ({ part, programme }) => ({
  ...choice,
  parts: choice.parts.with(part, { ...choice.parts[part], programme }),
});
const incremental = () => {
  for (const { part, programme } of moves) {
    const { lot, portions } = choice.parts[part];
    judgeChange(base, [{ lot: part, to: simulatedPart(problem, problem.lots[lot], portions, programme) }], {
      daily: true,
    });
  }
};
const anew = () => {
  for (const move of moves) simulate(simulationOf(problem, changed(move)));
};
incremental();
anew();
const turns = Array.from({ length: 5 }, () => ({
  incremental: milliseconds(incremental),
  anew: milliseconds(anew),
}));
console.log(
  JSON.stringify({
    bench: "judging a tried move",
    moves: moves.length,
    incremental: quantile(
      turns.map((turn) => turn.incremental / moves.length),
      0.5,
    ),
    simulatingAnew: quantile(
      turns.map((turn) => turn.anew / moves.length),
      0.5,
    ),
    unit: "ms",
    ratio: quantile(
      turns.map((turn) => turn.anew / turn.incremental),
      0.5,
    ),
  }),
);
console.log(
  JSON.stringify({
    bench: "judging in full, eating days included",
    value: quantile(
      Array.from({ length: repeats }, () => milliseconds(() => evaluate(problem, choice))),
      0.5,
    ),
    unit: "ms",
  }),
);
