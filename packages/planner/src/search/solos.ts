import { followLot, type LotOutcome, type Trajectory, trajectory } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import { untouchedVent } from "../problem/bindKitchen.js";
import type { VentSetting } from "../problem/kitchen.js";
import type { Problem } from "../problem/problem.js";
import type { Programme } from "../problem/programme.js";
import { simulatedPart, simulationOf } from "../problem/simulationOf.js";

/** A kitchen with nothing in it, at one setting of its vents. */
export interface SoloAir {
  readonly name: string;
  readonly empty: Trajectory;
}

/** Step [d] of a lone lot's simulation: half a day serves to put programmes in order; plans are judged at the usual step. */
const soloStep = 0.5;

/** Two lots of which the same would become, as a text. */
export const alikeLots = ({ commodity, grams, form, ripeness, spent, carried }: BoundLot): string =>
  `${commodity.id} ${grams} ${form.cut}${form.tops}${form.wet} ${ripeness} ${spent} ${carried?.key ?? ""}`;

/** Places in which the same would become of a lone lot have the same number. */
function alikePlaces({ kitchen }: Problem): number[] {
  const known: string[] = [];
  return kitchen.places.map(({ id, name, litres, airChangesPerHour, ...rest }) => {
    const air = airChangesPerHour === undefined ? "shared" : `${litres} ${JSON.stringify(airChangesPerHour)}`;
    const text = `${JSON.stringify(rest)} ${air}`;
    if (!known.includes(text)) known.push(text);
    return known.indexOf(text);
  });
}

/** Lots alone in the kitchen, remembered: what a programme would do if there were no neighbours. */
export class Solos {
  readonly problem: Problem;
  readonly ownAir: SoloAir;
  readonly #closedAir: SoloAir;
  readonly #alikePlaces: readonly number[];
  readonly #outcomes = new Map<string, LotOutcome>();

  constructor(problem: Problem) {
    this.problem = problem;
    this.#alikePlaces = alikePlaces(problem);
    const air = (name: string, setting: VentSetting): SoloAir => {
      const vents = problem.vents.map(() => setting);
      const empty = simulationOf(problem, { parts: [], vents });
      return { name, empty: trajectory({ ...empty, stepDays: soloStep }, this.ownAir?.empty.inner.compiler) };
    };
    this.ownAir = air("own", untouchedVent);
    this.#closedAir = air("closed", "closed");
  }

  /**
   * Airs worth trying wraps in at a place: as it is, and damp behind a closed vent. Ethylene needs no air of its own: it
   * passes in through every wrap as it does without, so it puts no wrap before another.
   */
  airsFor(place: number): readonly SoloAir[] {
    return this.problem.places[place]!.vent === undefined ? [this.ownAir] : [this.ownAir, this.#closedAir];
  }

  /** What becomes of a whole lot alone with a programme; every stay `warmer` times its place's spread warmer than usual, safe time still by the usual. */
  outcome(lot: BoundLot, programme: Programme, air: SoloAir = this.ownAir, warmer = 0): LotOutcome {
    const places = programme.stays.map(
      ({ place, wrap, until }) => `${this.#alikePlaces[place]}/${wrap}/${JSON.stringify(until)}`,
    );
    const prepared = `${programme.leavesOff} ${programme.dried}`;
    const key = `${alikeLots(lot)} | ${prepared} ${places.join(" > ")} | ${air.name} | ${warmer}`;
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
      const temperature = stay.temperature + warmer * place.temperatureSpread;
      return { ...stay, temperature, believedTemperature: place.temperature };
    });
    return followLot(air.empty, { ...part, stays });
  }
}
