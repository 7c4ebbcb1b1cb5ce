import { type AirBox, type LotOutcome, type RoomAir, simulate } from "@keepwright/physics";
import { untouchedVent } from "../problem/bindKitchen.js";
import type { BoundLot } from "../problem/bindHaul.js";
import type { VentSetting } from "../problem/kitchen.js";
import type { Problem } from "../problem/problem.js";
import { type Programme, programmeKey } from "../problem/programme.js";
import { roomAir, simulatedPart } from "../problem/simulationOf.js";

/** A kitchen with nothing else in it, in one state of its vents and its air. */
export interface SoloAir {
  readonly name: string;
  readonly room: RoomAir;
  readonly boxes: readonly AirBox[];
}

/** Ethylene [µL/L] added to try how a wrap does beside fruit: the middle of what Wills, Warton & Ku (2000) found in home refrigerators with apples (0.2). */
const besideFruit = 0.2;

/** Step [d] of a lone lot's simulation: half a day serves to put programmes in order; plans are judged at the usual step. */
const soloStep = 0.5;

/** Lots alone in the kitchen, remembered: what a programme would do if there were no neighbours. */
export class Solos {
  readonly problem: Problem;
  readonly ownAir: SoloAir;
  readonly #fruitAir: SoloAir;
  readonly #ventAirs: readonly (readonly SoloAir[])[];
  readonly #outcomes = new Map<string, LotOutcome>();

  constructor(problem: Problem) {
    this.problem = problem;
    const untouched = problem.vents.map((): VentSetting => untouchedVent);
    const room = roomAir(problem.kitchen);
    const air = (name: string, vents: readonly VentSetting[], ethylene = 0): SoloAir => ({
      name,
      room: { ...room, ethylene: room.ethylene + ethylene },
      boxes: problem.boxes(vents),
    });
    this.ownAir = air("own", untouched);
    this.#fruitAir = air("fruit", untouched, besideFruit);
    this.#ventAirs = problem.vents.map((_, vent) =>
      (["open", "closed"] as const).map((setting) => air(`${vent} ${setting}`, untouched.with(vent, setting))),
    );
  }

  /** Airs worth trying a place in: as it is, beside fruit, and at the other settings of its vent. */
  airsFor(place: number): readonly SoloAir[] {
    const { vent } = this.problem.places[place]!;
    return [this.ownAir, this.#fruitAir, ...(vent === undefined ? [] : this.#ventAirs[vent]!)];
  }

  /** What becomes of a whole lot alone with a programme; every stay `warmer` times its place's spread warmer than usual. */
  outcome(lot: BoundLot, programme: Programme, air: SoloAir = this.ownAir, warmer = 0): LotOutcome {
    const { commodity, grams, form, ripeness, spent } = lot;
    const alike = `${commodity.id} ${grams} ${form.cut}${form.tops}${form.wet} ${ripeness} ${spent}`;
    const key = `${alike} | ${programmeKey(programme)} | ${air.name} | ${warmer}`;
    const known = this.#outcomes.get(key);
    if (known) return known;
    const outcome = this.#simulate(lot, programme, air, warmer);
    this.#outcomes.set(key, outcome);
    return outcome;
  }

  #simulate(lot: BoundLot, programme: Programme, air: SoloAir, warmer: number): LotOutcome {
    const { problem } = this;
    const part = simulatedPart(problem, lot, lot.portions, programme);
    const stays = part.stays.map((stay, index) => {
      const { place } = problem.places[programme.stays[index]!.place]!;
      return { ...stay, temperature: stay.temperature + warmer * place.temperatureSpread };
    });
    const outcome = simulate({
      room: air.room,
      boxes: air.boxes,
      lots: [{ ...part, stays }],
      horizonDays: problem.household.days,
      stepDays: soloStep,
      wraps: problem.catalogue.wraps,
    });
    return outcome.lots[0]!;
  }
}
