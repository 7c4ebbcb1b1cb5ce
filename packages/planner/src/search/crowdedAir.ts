import { type Trajectory, trajectory } from "@keepwright/physics";
import { type Choice, type Part, partDoing, programmeWith } from "../problem/programme.js";
import { simulationOf } from "../problem/simulationOf.js";
import type { PartCosts } from "../schedule/partCosts.js";
import { costsOfPart } from "./evaluate.js";
import type { Option } from "./options.js";
import type { Prepared } from "./prepare.js";
import { soloStep } from "./solos.js";

const unwrapped = (part: Part): Part =>
  partDoing(
    part,
    programmeWith(
      part.programme,
      part.programme.stays.map(({ place, until }) => ({ place, wrap: "none", until })),
    ),
  );

/**
 * The air of a kitchen in which everything lies unwrapped: as damp as it gets where no vent can be closed. What lies bare on a full shelf keeps the others from drying
 * out, which nothing shows that is followed alone in the dry air of an empty one; so each would stay wrapped, in more room, as long as the others are.
 */
export class CrowdedAir {
  readonly #prepared: Prepared;
  readonly #air: Trajectory;
  readonly #costs = new Map<Option, PartCosts>();

  constructor(prepared: Prepared, { parts, vents }: Choice) {
    this.#prepared = prepared;
    const simulation = simulationOf(prepared.problem, { parts: parts.map(unwrapped), vents });
    this.#air = trajectory({ ...simulation, stepDays: soloStep }, prepared.kept.compiler);
  }

  /** Costs of a lot with an option in that air; only for what ends in a cold place without a vent: behind a vent the damp of a closed one is known. */
  costs(lot: number, option: Option): PartCosts | undefined {
    const { problem, solos } = this.#prepared;
    const { cold, vent } = problem.places[option.programme.stays.at(-1)!.place]!;
    if (!cold || vent !== undefined) return undefined;
    const known = this.#costs.get(option);
    if (known) return known;
    const { portions } = problem.lots[lot]!;
    const outcome = solos.followed(problem.lots[lot]!, option.programme, this.#air);
    const costs = costsOfPart(this.#prepared, { lot, portions, programme: option.programme }, outcome);
    this.#costs.set(option, costs);
    return costs;
  }
}
