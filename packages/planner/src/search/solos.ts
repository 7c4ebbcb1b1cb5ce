import {
  followLot,
  type LotOutcome,
  type SimulatedLot,
  type SimulatedStay,
  type Trajectory,
  trajectory,
} from "@keepwright/physics";
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
export const soloStep = 0.5;

/** A lot as it is simulated, in other stays. Written out: see `partDoing`. */
const withStays = (
  { produce, kilograms, form, ripeness, spent, state }: SimulatedLot,
  stays: readonly SimulatedStay[],
): SimulatedLot => ({ produce, kilograms, form, ripeness, spent, state, stays });

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
  readonly #outcomes = new Map<string, Map<string, LotOutcome>>();
  readonly #ofLot = new WeakMap<BoundLot, Map<string, LotOutcome>>();
  readonly #names = new WeakMap<Programme, string>();

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
    const outcomes = this.#outcomesOf(lot);
    const key = `${this.#nameOf(programme)}|${air.name}${warmer}`;
    const known = outcomes.get(key);
    if (known) return known;
    const outcome = this.#simulate(lot, programme, air, warmer);
    outcomes.set(key, outcome);
    return outcome;
  }

  /** Of all lots like this one. By the lot itself first, which saves spelling it out. */
  #outcomesOf(lot: BoundLot): Map<string, LotOutcome> {
    const found = this.#ofLot.get(lot);
    if (found) return found;
    const name = alikeLots(lot);
    const outcomes = this.#outcomes.get(name) ?? new Map<string, LotOutcome>();
    this.#outcomes.set(name, outcomes);
    this.#ofLot.set(lot, outcomes);
    return outcomes;
  }

  /** A text that is equal for programmes with which the same becomes of a lone lot. */
  #nameOf(programme: Programme): string {
    const known = this.#names.get(programme);
    if (known) return known;
    let name = `${programme.leavesOff ? "off " : ""}${programme.dried ? "dry " : ""}`;
    for (const { place, wrap, until } of programme.stays) {
      name += `${this.#alikePlaces[place]}/${wrap}/${typeof until === "object" ? until.day : until}>`;
    }
    this.#names.set(programme, name);
    return name;
  }

  /** The same in the air of any run, not remembered. */
  followed(lot: BoundLot, programme: Programme, empty: Trajectory): LotOutcome {
    return this.#simulate(lot, programme, { name: "", empty }, 0);
  }

  #simulate(lot: BoundLot, programme: Programme, air: SoloAir, warmer: number): LotOutcome {
    const { problem } = this;
    const part = simulatedPart(problem, lot, lot.portions, programme);
    const stays = part.stays.map((stay, index) => {
      const { place } = problem.places[programme.stays[index]!.place]!;
      const temperature = stay.temperature + warmer * place.temperatureSpread;
      const { box, wrap, lit, until } = stay;
      return { box, temperature, believedTemperature: place.temperature, wrap, lit, until };
    });
    return followLot(air.empty, withStays(part, stays));
  }
}
