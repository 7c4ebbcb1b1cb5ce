// Judging a moved lot against simulating the whole changed haul: 30 lots in 8 boxes, 12 days. One JSON line for each kind of outcome.
// Run after `npx tsc -b packages/physics`: node bench/judge.mjs
import { judgeChange, simulate, trajectory } from "@keepwright/physics";
import { boxes, hauls, processorTime, room } from "./lib/hauls.mjs";

const { haul, move } = hauls(1);
const cases = Array.from({ length: 8 }, () => {
  const simulation = { room, boxes, lots: haul(30), horizonDays: 12 };
  return { simulation, changes: Array.from({ length: 25 }, () => move(simulation.lots)) };
});
const changed = ({ lots }, { lot, to }) => lots.map((was, index) => (index === lot ? to : was));
const median = (values) => values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)];

function measure(outcome) {
  const bases = cases.map(({ simulation }) => trajectory({ ...simulation, outcome }));
  const judge = (base, change) => judgeChange(base, [change], { daily: outcome === "whole" });
  const whole = (base, change) =>
    simulate({ ...base.simulation, lots: changed(base.simulation, change) }).lots;
  const time = (work) => {
    const from = processorTime();
    for (const [index, { changes }] of cases.entries()) {
      for (const change of changes) work(bases[index], change);
    }
    return (processorTime() - from) / (cases.length * 25);
  };
  const rounds = Array.from({ length: 15 }, () => ({ judged: time(judge), simulated: time(whole) })).slice(3);
  const errors = cases.flatMap(({ changes }, index) =>
    changes.flatMap((change) => {
      const judged = new Map(judge(bases[index], change).map((one) => [one.lot, one.outcome]));
      return whole(bases[index], change).map(({ endDay }, lot) => {
        const found = (judged.get(lot) ?? bases[index].lots[lot]).endDay;
        return Math.abs(found - endDay) / Math.max(1, endDay);
      });
    }),
  );
  errors.sort((one, other) => one - other);
  return {
    bench: "judging a moved lot",
    outcome,
    lots: 30,
    boxes: boxes.length,
    judgedMilliseconds: median(rounds.map(({ judged }) => judged)),
    simulatedMilliseconds: median(rounds.map(({ simulated }) => simulated)),
    ratio: median(rounds.map(({ judged, simulated }) => simulated / judged)),
    error99: errors[Math.floor(0.99 * errors.length)],
    errorMost: errors.at(-1),
  };
}

for (const outcome of ["ends", "whole"]) console.log(JSON.stringify(measure(outcome)));
