// The plain mixed-integer model of a kitchen: one binary for each lot and option, each lot's cost alone, and for every two lots in one box what they cost
// more together than apart, made linear. Vents are given. Eating days are folded into the costs: each lot, and each two, eat at their own best days as if
// nothing else were at the table, and lie there in full from first to last.
import { bindProblem, evaluate } from "@keepwright/planner";

/** Below this [g] two lots count as doing nothing to each other. */
const hardly = 0.01;
/** Cost of a litre too much in the model [g]: above any cost of a lot. */
const overflowLitre = 1e4;

const withoutOverflow = ({ total, overflow }) => total - overflow;

/** The cheapest options of each lot alone, at most so many a place; each with its cost [g] and its stays' boxes. */
function optionsOf(problem, programmes, costAlone, mostAPlace) {
  return programmes.map((list, lot) => {
    const taken = new Map();
    return list
      .map((programme) => ({ programme, cost: costAlone(lot, programme) }))
      .sort((one, other) => one.cost - other.cost)
      .filter(({ programme }) => {
        const { place } = programme.stays.at(-1);
        taken.set(place, (taken.get(place) ?? 0) + 1);
        return taken.get(place) <= mostAPlace;
      })
      .map((option) => ({
        ...option,
        boxes: new Set(option.programme.stays.map(({ place }) => problem.places[place].box)),
      }));
  });
}

const meet = (one, other) => [...one.boxes].some((box) => box !== "room" && other.boxes.has(box));

/** Costs of the model by simulation. `simulations`: how many that took. */
export function pairwiseCosts(request, programmes, vents, mostAPlace) {
  const problem = bindProblem(request);
  let simulations = 0;
  const judge = (lots, chosen) => {
    const own = lots.length === 1 ? singles[lots[0]] : pairOf(lots);
    simulations++;
    const parts = chosen.map((programme, index) => ({
      lot: index,
      portions: own.lots[index].portions,
      programme,
    }));
    return withoutOverflow(evaluate(own, { parts, vents }).objective);
  };
  const only = (lots) =>
    bindProblem({ ...request, haul: { lots: lots.map((lot) => request.haul.lots[lot]) } });
  const singles = problem.lots.map((_, lot) => only([lot]));
  let pair = { lots: [] };
  const pairOf = (lots) => {
    if (pair.key !== lots.join(" ")) pair = { key: lots.join(" "), problem: only(lots) };
    return pair.problem;
  };
  const options = optionsOf(problem, programmes, (lot, programme) => judge([lot], [programme]), mostAPlace);
  const extras = [];
  for (let first = 0; first < options.length; first++) {
    for (let second = first + 1; second < options.length; second++) {
      for (const [one, mine] of options[first].entries()) {
        for (const [other, yours] of options[second].entries()) {
          if (!meet(mine, yours)) continue;
          const together = judge([first, second], [mine.programme, yours.programme]);
          const extra = together - mine.cost - yours.cost;
          if (Math.abs(extra) > hardly) extras.push({ first, one, second, other, extra });
        }
      }
    }
  }
  return { problem, options, extras, simulations };
}

const term = (value, name) => `${value < 0 ? "-" : "+"} ${Math.abs(value)} ${name}`;

/** The model as LP text, with the names of its binaries. */
export function pairwiseText({ problem, options, extras }) {
  const x = (lot, option) => `x_${lot}_${option}`;
  const objective = [];
  const rows = [];
  const names = [];
  for (const [lot, list] of options.entries()) {
    rows.push(`one_${lot}: ${list.map((_, option) => term(1, x(lot, option))).join(" ")} = 1`);
    for (const [option, { cost }] of list.entries()) {
      objective.push(term(cost, x(lot, option)));
      names.push(x(lot, option));
    }
  }
  for (const [index, { first, one, second, other, extra }] of extras.entries()) {
    const y = `y_${index}`;
    objective.push(term(extra, y));
    if (extra > 0) rows.push(`t_${index}: ${y} - ${x(first, one)} - ${x(second, other)} >= -1`);
    else {
      rows.push(`f_${index}: ${y} - ${x(first, one)} <= 0`);
      rows.push(`s_${index}: ${y} - ${x(second, other)} <= 0`);
    }
  }
  for (const { place, index } of problem.places) {
    const litres = options.flatMap((list, lot) =>
      list.flatMap(({ programme }, option) =>
        programme.stays[0].place === index
          ? [term(problem.lots[lot].litres * room(problem, programme), x(lot, option))]
          : [],
      ),
    );
    if (litres.length === 0) continue;
    objective.push(term(overflowLitre, `o_${index}`));
    rows.push(`room_${index}: ${litres.join(" ")} - o_${index} <= ${place.litres}`);
  }
  const text = `Minimize\n cost: ${objective.join("\n ")}\nSubject To\n ${rows.join("\n ")}\nBinaries\n ${names.join("\n ")}\nEnd\n`;
  return { text, names };
}

const room = ({ catalogue }, { stays }) => 1 + (catalogue.wraps.get(stays[0].wrap)?.extraRoom.value ?? 0);

/** The choice a solution stands for. */
export const chosenBy = ({ problem, options }, shareOf, vents) => ({
  vents,
  parts: options.map((list, lot) => {
    const best = list.reduce(
      (most, _, option) => (shareOf(`x_${lot}_${option}`) > shareOf(`x_${lot}_${most}`) ? option : most),
      0,
    );
    return { lot, portions: problem.lots[lot].portions, programme: list[best].programme };
  }),
});
