// The planner against the plain mixed-integer model with pairwise costs made linear (bench/lib/pairwiseModel.mjs) solved by HiGHS, in one run. The model is
// given the plan's vents, and both are judged by the coupled simulation. One JSON line a haul. Needs built packages.
import { allProgrammes, bindProblem, choiceOfPlan, evaluate, planHaul } from "@keepwright/planner";
import loadHighs from "highs";
import { chosenBy, pairwiseCosts, pairwiseText } from "./lib/pairwiseModel.mjs";
import { eightPlaces, requestOf, timed } from "./lib/requests.mjs";

/** Nodes of the branching, and seconds, after which the solver stops with the best it has. */
const mostNodes = 2000;
const mostSeconds = 120;
const mostAPlace = 2;

async function measure(count, step) {
  const request = requestOf(count, eightPlaces, { step });
  for (let warm = 0; warm < 4; warm++) planHaul(request);
  const planned = timed(() => planHaul(request));
  const problem = bindProblem(request);
  const { vents } = choiceOfPlan(problem, planned.value);
  const built = timed(() => {
    const costs = pairwiseCosts(request, allProgrammes(problem), vents, mostAPlace);
    return { costs, ...pairwiseText(costs) };
  });
  const { costs, text, names } = built.value;
  const from = process.cpuUsage();
  const highs = await loadHighs();
  const solution = highs.withModel({ format: "lp", data: text }, (model) => {
    model.options.set({ output_flag: false, mip_max_nodes: mostNodes, time_limit: mostSeconds });
    model.run();
    const { colValue } = model.getSolution();
    return {
      status: model.getModelStatus(),
      bound: model.info.get("mip_dual_bound"),
      gap: model.info.get("mip_gap"),
      nodes: Number(model.info.get("mip_node_count")),
      values: new Map(names.map((name) => [name, colValue[model.getColByName(name)]])),
    };
  });
  const used = process.cpuUsage(from);
  const solving = (used.user + used.system) / 1000;
  const value = evaluate(
    problem,
    chosenBy(costs, (name) => solution.values.get(name), vents),
  ).objective.total;
  const plan = planned.value.objective.total;
  return {
    bench: "planner against the plain mixed-integer model",
    lots: count,
    places: problem.places.length,
    binaries: names.length,
    pairs: costs.extras.length,
    simulations: costs.simulations,
    plannerMilliseconds: planned.cpu,
    modelMilliseconds: built.cpu,
    solverMilliseconds: solving,
    solver: { status: solution.status, nodes: solution.nodes, gap: solution.gap, bound: solution.bound },
    value: { planner: plan, model: value, unit: "g" },
    plannerNoWorse: plan <= value,
    ratioSolverAlone: solving / planned.cpu,
    ratioWithModel: (solving + built.cpu) / planned.cpu,
  };
}

for (const [count, step] of [
  [12, 7],
  [20, 5],
  [30, 7],
]) {
  console.log(JSON.stringify(await measure(count, step)));
}
