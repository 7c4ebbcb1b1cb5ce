// The whole coupled system of a simulation with unwrapped lots that stay where they are, integrated by ODEX: gases are states too.
import {
  endingProgress,
  endings,
  ethyleneEmission,
  initialState,
  produceAtTemperature,
  saturationPressure,
  simulate,
  stateNames,
  stateRates,
  vapourConductance,
  wetnessOf,
} from "@keepwright/physics";
import { Solver } from "odex";

const width = stateNames.length;
const gasConstant = 461.5;
const cubicMetrePerSecond = 1 / 3_600_000;
const rainOut = 600;
const saturated = (celsius) => (1000 * saturationPressure(celsius)) / (gasConstant * (celsius + 273.15));

const offsetOf = ({ boxes }, part) => 2 * boxes.length + part * width;

/** What does not change while a simulation is integrated. */
function systemOf(simulation) {
  const { boxes, room, lots } = simulation;
  return {
    ...simulation,
    roomDensity: room.relativeHumidity * saturated(room.temperature),
    full: boxes.map(({ temperature }) => saturated(temperature)),
    coil: boxes.map((box) => (box.coil ? saturated(box.coil.temperature) : 0)),
    parts: lots.map((lot) => ({
      lot,
      box: lot.stays[0].box,
      at: produceAtTemperature(lot.produce, lot.form, lot.stays[0].temperature),
    })),
    state: new Float64Array(width),
    rates: new Float64Array(width),
  };
}

function boxFlows({ boxes, room, roomDensity, coil, full }, y, out) {
  for (const [index, box] of boxes.entries()) {
    const around = box.exchange.with;
    const [density, ethylene] =
      around === "room" ? [roomDensity, room.ethylene] : [y[2 * around], y[2 * around + 1]];
    const vapour = box.exchange.litresPerHour * cubicMetrePerSecond * (density - y[2 * index]);
    const gas = box.exchange.litresPerHour * (ethylene - y[2 * index + 1]);
    out[2 * index] += vapour;
    out[2 * index + 1] += gas;
    if (around !== "room") {
      out[2 * around] -= vapour;
      out[2 * around + 1] -= gas;
    }
    const passed = (box.coil?.litresPerHour ?? 0) * cubicMetrePerSecond;
    out[2 * index] -= passed * Math.max(0, y[2 * index] - coil[index]);
    out[2 * index] -= (box.volumeLitres / 1000 / rainOut) * Math.max(0, y[2 * index] - full[index]);
  }
}

function lotFlows(system, y, out) {
  const { boxes, parts, state, rates } = system;
  for (const [part, { lot, box, at }] of parts.entries()) {
    const offset = offsetOf(system, part);
    for (let entry = 0; entry < width; entry++) state[entry] = y[offset + entry];
    const vapourPressure = (y[2 * box] / 1000) * gasConstant * (boxes[box].temperature + 273.15);
    const wetness = wetnessOf(vapourPressure / at.saturationVapourPressure);
    const air = {
      temperature: at.temperature,
      vapourPressure,
      ethylene: y[2 * box + 1],
      wetness,
      lit: false,
      uptake: 0,
    };
    stateRates(at, state, air, rates);
    for (let entry = 0; entry < width; entry++) out[offset + entry] = rates[entry];
    out[2 * box] +=
      1000 * vapourConductance(at, state) * lot.kilograms * (at.surfaceVapourPressure - vapourPressure);
    out[2 * box + 1] += ethyleneEmission(at, state) * lot.kilograms;
  }
}

function derivativeOf(system, y) {
  const out = new Array(y.length).fill(0);
  boxFlows(system, y, out);
  lotFlows(system, y, out);
  for (const [index, { volumeLitres }] of system.boxes.entries()) {
    out[2 * index] *= 86_400_000 / volumeLitres;
    out[2 * index + 1] *= 24 / volumeLitres;
  }
  return out;
}

/** The air that was in the boxes before the lots came, that of the empty kitchen; and the lots as they came. */
function startOf({ boxes, room, lots, full }, simulation) {
  const before = simulate({ ...simulation, lots: [], horizonDays: 1, outcome: "whole" }).boxes;
  return [
    ...boxes.flatMap((_, index) => [before[index].relativeHumidity[0] * full[index], room.ethylene]),
    ...lots.flatMap((lot) => [...initialState(lot.produce, lot.form, lot.ripeness, lot.spent)]),
  ];
}

/** Days on which lots end, by ODEX at a tolerance (Infinity beyond the horizon), and how often it asked for derivatives. */
export function coupledEnds(simulation, tolerance) {
  const system = systemOf(simulation);
  const { lots, parts } = system;
  let evaluations = 0;
  const start = startOf(system, simulation);
  const ends = lots.map(() => Number.POSITIVE_INFINITY);
  const progress = lots.map(() => new Float64Array(endings.length));
  const next = new Float64Array(endings.length);
  const solver = new Solver(start.length);
  solver.relativeTolerance = tolerance;
  solver.absoluteTolerance = tolerance;
  solver.maxSteps = 1e8;
  const derivative = (_, y) => {
    evaluations++;
    return derivativeOf(system, y);
  };
  solver.solve(derivative, 0, start, simulation.horizonDays, (_, before, day, y) => {
    for (const [part, { lot }] of parts.entries()) {
      if (ends[part] < Number.POSITIVE_INFINITY) continue;
      const offset = offsetOf(system, part);
      endingProgress(lot.produce, Float64Array.from(y.slice(offset, offset + width)), next);
      for (const [which, value] of next.entries()) {
        if (value < 1) continue;
        const share = (1 - progress[part][which]) / (value - progress[part][which]);
        ends[part] = Math.min(ends[part], before + share * (day - before));
      }
      progress[part].set(next);
    }
  });
  return { ends, evaluations };
}
