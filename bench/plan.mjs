// Plans 30 lots in 8 places and 40 in 10, and compares judging a tried move by increments with simulating everything again.
// Each line is one JSON object; figures that are compared come from the same run. Needs built packages (npm run build).
import { judgeChange, simulate, trajectory } from "@keepwright/physics";
import {
  allProgrammes,
  bindProblem,
  choiceOfPlan,
  evaluate,
  planHaul,
  simulatedPart,
  simulationOf,
} from "@keepwright/planner";
import { eightPlaces, quantile, requestOf, tenPlaces, timed } from "./lib/requests.mjs";

const repeats = 20;
const request = requestOf(30, eightPlaces, { people: 4 });
const milliseconds = (work) => timed(work).wall;

/** Plans with one seed after another. */
function planning(asked) {
  const runs = Array.from({ length: repeats }, (_, index) =>
    timed(() => planHaul({ ...asked, seed: index })),
  );
  const figures = (name) => {
    const times = runs.map((run) => run[name]);
    return {
      first: times[0],
      least: Math.min(...times),
      median: quantile(times, 0.5),
      slowest: Math.max(...times),
    };
  };
  return {
    bench: "plan",
    lots: asked.haul.lots.length,
    places: asked.kitchen.places.length,
    repeats,
    wall: figures("wall"),
    processor: figures("cpu"),
    unit: "ms",
  };
}
console.log(JSON.stringify(planning(request)));
console.log(JSON.stringify(planning(requestOf(40, tenPlaces, { people: 5 }))));

const plan = planHaul(request);
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
