// Speed of the time-stepper, alone and against ODEX at the error the stepper makes. One JSON line each.
// Run after `npx tsc -b packages/physics`: node bench/stepper.mjs
import { simulate } from "@keepwright/physics";
import { boxes, hauls, openAir, processorTime, room } from "./lib/hauls.mjs";
import { coupledEnds } from "./lib/odexSystem.mjs";

const median = (values) => values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)];
const { haul } = hauls(2);

function speed(outcome) {
  const simulation = { room, boxes, lots: haul(30), horizonDays: 12, outcome };
  const once = () => {
    const from = processorTime();
    for (let time = 0; time < 50; time++) simulate(simulation);
    return (processorTime() - from) / 50;
  };
  const milliseconds = median(Array.from({ length: 15 }, once).slice(3));
  return {
    bench: "time-stepper",
    outcome,
    lots: 30,
    boxes: boxes.length,
    days: 12,
    milliseconds,
    lotDaysPerSecond: (30 * 12 * 1000) / milliseconds,
    lotStepsPerSecond: (30 * 48 * 1000) / milliseconds,
  };
}
for (const outcome of ["ends", "whole"]) console.log(JSON.stringify(speed(outcome)));

/** Largest relative error of the ends that fall within the horizon, against a tight reference. */
const errorOf = (ends, reference) =>
  Math.max(...reference.map((end, lot) => (Number.isFinite(end) ? Math.abs(ends[lot] / end - 1) : 0)));

function againstOdex() {
  const place = { box: 1, temperature: 4, wrap: "none", until: "never" };
  const lots = haul(6).map((lot) => ({ ...lot, stays: [{ ...lot.stays[0], ...place }] }));
  const simulation = { room, boxes, lots, horizonDays: 20, outcome: "ends", wraps: openAir };
  const reference = coupledEnds(simulation, 1e-9).ends;
  const stepperError = errorOf(
    simulate(simulation).lots.map(({ endDay }) => endDay),
    reference,
  );
  // The loosest tolerance at which ODEX is no worse than the stepper, whose error is mostly that of taking the gases as settled.
  const tolerance = [1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8].find(
    (one) => errorOf(coupledEnds(simulation, one).ends, reference) <= stepperError,
  );
  const time = (work, times) => {
    const from = processorTime();
    for (let round = 0; round < times; round++) work();
    return (processorTime() - from) / times;
  };
  const rounds = Array.from({ length: 5 }, () => ({
    stepper: time(() => simulate(simulation), 100),
    odex: time(() => coupledEnds(simulation, tolerance), 1),
  })).slice(1);
  const odexError = errorOf(coupledEnds(simulation, tolerance).ends, reference);
  return { stepperError, odexError, tolerance, rounds };
}
const { stepperError, odexError, tolerance, rounds } = againstOdex();
console.log(
  JSON.stringify({
    bench: "time-stepper against ODEX on the whole coupled system at equal error",
    lots: 6,
    days: 20,
    stepperError,
    odexError,
    odexTolerance: tolerance,
    stepperMilliseconds: median(rounds.map(({ stepper }) => stepper)),
    odexMilliseconds: median(rounds.map(({ odex }) => odex)),
    ratio: median(rounds.map(({ stepper, odex }) => odex / stepper)),
  }),
);
