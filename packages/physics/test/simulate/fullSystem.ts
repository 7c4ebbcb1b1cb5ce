import type { Wrap, WrapId } from "@keepwright/catalogue";
import { Solver } from "odex";
import { saturationPressure } from "../../src/air/saturationPressure.js";
import { wetnessOf } from "../../src/climate/wetness.js";
import { type ProduceAtTemperature, produceAtTemperature } from "../../src/produce/atTemperature.js";
import { ethyleneEmission, vapourConductance } from "../../src/produce/emission.js";
import { endingProgress } from "../../src/produce/ending.js";
import { initialState } from "../../src/produce/initialState.js";
import { endings, at as position, stateNames } from "../../src/produce/lotState.js";
import { stateRates } from "../../src/produce/stateRates.js";
import { simulate } from "../../src/simulate/simulate.js";
import type { AirBox, SimulatedLot, SimulatedStay, Simulation } from "../../src/simulate/simulation.js";

/**
 * The whole coupled system as one set of differential equations, for comparison: gases of boxes and wraps are states with their real
 * volumes, nothing is taken as settled, and Hairer's ODEX integrates it. It shares the relations of produce with the stepper, but
 * neither its air, its wraps, its steps, its moves nor its location of ends.
 */
const gasConstant = 461.5;
const kelvin = 273.15;
const cubicMetrePerSecond = 1 / 3_600_000;
const secondsPerDay = 86_400;
const gramsPerKilogram = 1000;
/** Water above saturation rains out with this time constant [s]: short beside hours, long beside the steps of an explicit method. */
const rainOut = 600;
/** Air inside a wrap [m³ per kg]: loose produce takes about two litres a kilogram, a good half of it air. */
const wrapAirVolume = 1.2e-3;
const width = stateNames.length;

export interface FullEnd {
  endDay: number;
  endedBy: string;
  ripeDay: number;
  readonly stayStarts: number[];
}

interface Part {
  readonly lot: SimulatedLot;
  readonly ats: readonly ProduceAtTemperature[];
  stay: number;
}

const saturated = (celsius: number): number =>
  (gramsPerKilogram * saturationPressure(celsius)) / (gasConstant * (celsius + kelvin));
const pressure = (grams: number, celsius: number): number =>
  (grams / gramsPerKilogram) * gasConstant * (celsius + kelvin);

export class FullSystem {
  readonly #simulation: Simulation;
  readonly #parts: Part[];
  readonly #wraps: ReadonlyMap<WrapId, Wrap>;
  readonly ends: FullEnd[];
  evaluations = 0;
  #day = 0;

  constructor(simulation: Simulation) {
    this.#simulation = simulation;
    this.#wraps = simulation.wraps!;
    this.#parts = simulation.lots.map((lot) => ({
      lot,
      ats: lot.stays.map((stay) => produceAtTemperature(lot.produce, lot.form, stay.temperature)),
      stay: 0,
    }));
    this.ends = simulation.lots.map((lot) => ({
      endDay: Number.POSITIVE_INFINITY,
      endedBy: "",
      ripeDay: lot.produce.ripening && lot.ripeness < 1 ? Number.POSITIVE_INFINITY : 0,
      stayStarts: lot.stays.map((_, stay) => (stay === 0 ? 0 : Number.POSITIVE_INFINITY)),
    }));
  }

  /** Integrates to the horizon at a relative tolerance; moves cut the integration into pieces. */
  solve(tolerance: number): FullEnd[] {
    let day = 0;
    let state = this.#initial();
    while (day < this.#simulation.horizonDays - 1e-9) {
      this.#move(day, state);
      [day, state] = this.#piece(day, state, this.#nextDayMove(day), tolerance);
    }
    return this.ends;
  }

  /** Boxes start with the air they hold when empty (what was there before the lots came), wraps with that of their place. */
  #initial(): number[] {
    const { room, boxes } = this.#simulation;
    const empty = simulate({ ...this.#simulation, lots: [], horizonDays: 1 }).boxes;
    const gases = boxes.flatMap((box, index) => [
      empty[index]!.relativeHumidity[0]! * saturated(box.temperature),
      room.ethylene,
    ]);
    const lots = this.#parts.flatMap(({ lot }) => [
      ...initialState(lot.produce, lot.form, lot.ripeness, lot.spent),
      ...this.#airOf(lot.stays[0]!.box, gases),
    ]);
    return [...gases, ...lots];
  }

  #offset = (part: number): number => 2 * this.#simulation.boxes.length + part * (width + 2);

  #nextDayMove(day: number): number {
    const days = this.#parts
      .filter(({ lot, stay }) => stay + 1 < lot.stays.length)
      .map(({ lot, stay }) => lot.stays[stay]!.until)
      .map((until) => (typeof until === "object" && until.day > day ? until.day : Number.POSITIVE_INFINITY));
    return Math.min(this.#simulation.horizonDays, ...days);
  }

  #move(day: number, state: number[]): void {
    for (const [index, part] of this.#parts.entries()) {
      while (
        part.stay + 1 < part.lot.stays.length &&
        this.#isDue(part, day, state[this.#offset(index) + position.ripeness]!)
      ) {
        part.stay++;
        this.ends[index]!.stayStarts[part.stay] = day;
        const { box } = part.lot.stays[part.stay]!;
        const [density, ethylene] = this.#airOf(box, state);
        state[this.#offset(index) + width] = density;
        state[this.#offset(index) + width + 1] = ethylene;
      }
    }
  }

  #isDue({ lot, stay }: Part, day: number, ripeness: number): boolean {
    const { until } = lot.stays[stay]!;
    if (until === "ripe") return !lot.produce.ripening || ripeness >= 1;
    return until !== "never" && until.day <= day + 1e-9;
  }

  #piece(from: number, start: number[], to: number, tolerance: number): [number, number[]] {
    const solver = new Solver(start.length);
    solver.relativeTolerance = tolerance;
    solver.absoluteTolerance = tolerance;
    solver.maxSteps = 1e8;
    let last = start.slice();
    this.#day = from;
    solver.solve(
      (_, y) => this.#derivative(y),
      from,
      start,
      to,
      (_, before, day, y) => {
        this.#look(before, last, day, y);
        last = y.slice();
        return !this.#parts.some((part, index) =>
          this.#ripeMoveDue(part, y[this.#offset(index) + position.ripeness]!),
        );
      },
    );
    return [this.#day, last];
  }

  #ripeMoveDue(part: Part, ripeness: number): boolean {
    const { lot, stay } = part;
    return stay + 1 < lot.stays.length && lot.stays[stay]!.until === "ripe" && ripeness >= 1;
  }

  /** Notes ends and ripeness reached between two steps. Steps are minutes long here, so a straight line between them will do. */
  #look(before: number, last: readonly number[], day: number, y: readonly number[]): void {
    this.#day = day;
    for (const [index, { lot }] of this.#parts.entries()) {
      const end = this.ends[index]!;
      const [was, is] = [last, y].map((all) =>
        Float64Array.from(all.slice(this.#offset(index), this.#offset(index) + width)),
      );
      if (end.ripeDay === Number.POSITIVE_INFINITY && is![position.ripeness]! >= 1) end.ripeDay = day;
      if (end.endDay < Number.POSITIVE_INFINITY) continue;
      const [progressWas, progressIs] = [was!, is!].map((state) => {
        const out = new Float64Array(endings.length);
        endingProgress(lot.produce, state, out);
        return out;
      });
      for (const [which, name] of endings.entries()) {
        if (progressIs![which]! < 1) continue;
        const share = (1 - progressWas![which]!) / (progressIs![which]! - progressWas![which]!);
        const reached = before + share * (day - before);
        if (reached < end.endDay) Object.assign(end, { endDay: reached, endedBy: name });
      }
    }
  }

  #airOf(box: number | "room", state: readonly number[]): [number, number] {
    const { room } = this.#simulation;
    if (box === "room") return [room.relativeHumidity * saturated(room.temperature), room.ethylene];
    return [state[2 * box]!, state[2 * box + 1]!];
  }

  #derivative(y: readonly number[]): number[] {
    this.evaluations++;
    const out = new Array<number>(y.length).fill(0);
    for (const [index, box] of this.#simulation.boxes.entries()) this.#boxDerivative(index, box, y, out);
    for (const [index, part] of this.#parts.entries()) this.#lotDerivative(index, part, y, out);
    for (const [index, box] of this.#simulation.boxes.entries()) {
      out[2 * index]! *= secondsPerDay / (box.volumeLitres / 1000);
      out[2 * index + 1]! *= 24 / box.volumeLitres;
    }
    return out;
  }

  /** Flows into a box's air: vapour [g/s] and ethylene [µL/h]. */
  #boxDerivative(index: number, box: AirBox, y: readonly number[], out: number[]): void {
    const [density, ethylene] = [y[2 * index]!, y[2 * index + 1]!];
    const litres = box.exchange.litresPerHour;
    const [around, ethyleneAround] = this.#airOf(box.exchange.with, y);
    const flow = litres * cubicMetrePerSecond * (around - density);
    out[2 * index]! += flow;
    out[2 * index + 1]! += litres * (ethyleneAround - ethylene);
    if (typeof box.exchange.with === "number") {
      out[2 * box.exchange.with]! -= flow;
      out[2 * box.exchange.with + 1]! -= litres * (ethyleneAround - ethylene);
    }
    if (box.coil) {
      const over = Math.max(0, density - saturated(box.coil.temperature));
      out[2 * index]! -= box.coil.litresPerHour * cubicMetrePerSecond * over;
    }
    out[2 * index]! -=
      (box.volumeLitres / 1000 / rainOut) * Math.max(0, density - saturated(box.temperature));
  }

  #lotDerivative(index: number, part: Part, y: readonly number[], out: number[]): void {
    const stay = part.lot.stays[part.stay]!;
    const at = part.ats[part.stay]!;
    const offset = this.#offset(index);
    const state = Float64Array.from(y.slice(offset, offset + width));
    const wrap = this.#wraps.get(stay.wrap)!;
    const closed = wrap.vapourExchange.value < 100_000;
    const [boxDensity, boxEthylene] = this.#airOf(stay.box, y);
    const density = closed ? (wrap.wet ? saturated(stay.temperature) : y[offset + width]!) : boxDensity;
    const ethylene = closed ? y[offset + width + 1]! : boxEthylene;
    const vapourPressure = pressure(density, closed ? stay.temperature : this.#temperatureOf(stay));
    const conditions = {
      temperature: stay.temperature,
      vapourPressure,
      ethylene,
      wetness: wetnessOf(vapourPressure / saturationPressure(stay.temperature)),
      lit: stay.lit,
      uptake: wrap.uptake.value,
    };
    const rates = new Float64Array(width);
    stateRates(at, state, conditions, rates);
    for (let entry = 0; entry < width; entry++) out[offset + entry] = rates[entry]!;
    const { kilograms } = part.lot;
    const given =
      gramsPerKilogram *
      vapourConductance(at, state) *
      kilograms *
      (at.surfaceVapourPressure - vapourPressure);
    const emitted = ethyleneEmission(at, state) * kilograms;
    if (!closed) {
      this.#toBox(stay.box, given, emitted, out);
      return;
    }
    const area = kilograms ** (2 / 3);
    const leaves = wrap.vapourExchange.value * area * cubicMetrePerSecond * (density - boxDensity);
    const ethyleneLeaves = wrap.ethyleneExchange.value * area * (ethylene - boxEthylene);
    const volume = wrapAirVolume * kilograms;
    const rain = (volume / rainOut) * Math.max(0, density - saturated(stay.temperature));
    out[offset + width] = wrap.wet ? 0 : ((given - leaves - rain) * secondsPerDay) / volume;
    out[offset + width + 1] = ((emitted - ethyleneLeaves) * 24) / (1000 * volume);
    this.#toBox(stay.box, leaves, ethyleneLeaves, out);
  }

  #temperatureOf(stay: SimulatedStay): number {
    return stay.box === "room"
      ? this.#simulation.room.temperature
      : this.#simulation.boxes[stay.box]!.temperature;
  }

  #toBox(box: number | "room", vapour: number, ethylene: number, out: number[]): void {
    if (box === "room") return;
    out[2 * box]! += vapour;
    out[2 * box + 1]! += ethylene;
  }
}
