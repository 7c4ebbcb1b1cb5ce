import { LotCompiler, type LotOutcome, type SimulatedLot, simulate } from "@keepwright/physics";
import { bindKitchen } from "../problem/bindKitchen.js";
import type { Problem } from "../problem/problem.js";
import type { Choice, Part } from "../problem/programme.js";
import { roomAir, simulatedPart } from "../problem/simulationOf.js";
import { drawKeys } from "./drawKeys.js";
import { drawnKitchen } from "./drawnKitchen.js";
import { carriedBy, drawnPart } from "./drawnPart.js";
import type { Spreads } from "./spreads.js";

/** A choice to be simulated in many draws: what does not change from one to the next. */
export interface Repeated {
  readonly problem: Problem;
  readonly choice: Choice;
  readonly seed: number;
  readonly spreads: Spreads;
  /** Of each lot of the problem. */
  readonly keys: readonly string[];
  /** Of each part of the choice. */
  readonly carried: readonly number[];
  readonly compiler: LotCompiler;
}

export const repeated = (problem: Problem, choice: Choice, seed: number, spreads: Spreads): Repeated => ({
  problem,
  choice,
  seed,
  spreads,
  keys: drawKeys(problem.lots),
  carried: choice.parts.map(({ lot, programme }) => carriedBy(problem, problem.lots[lot]!, programme)),
  compiler: new LotCompiler(problem.catalogue.wraps),
});

/** The part as the model's middle has it, but for what is drawn; safe time goes by what the household believes. */
function withDraw(
  { problem, keys, carried, seed, spreads }: Repeated,
  part: Part,
  index: number,
  simulated: SimulatedLot,
  draw: number,
): SimulatedLot {
  const lot = problem.lots[part.lot]!;
  const { spent, pace } = drawnPart(lot, carried[index]!, keys[part.lot]!, seed, draw, spreads);
  return {
    ...simulated,
    spent,
    believedSpent: lot.spent,
    pace,
    stays: simulated.stays.map((stay, at) => ({
      ...stay,
      believedTemperature: problem.places[part.programme.stays[at]!.place]!.place.temperature,
    })),
  };
}

/** The whole kitchen simulated together in one draw: what becomes of each part of the choice. */
export function simulateDraw(asked: Repeated, draw: number): readonly LotOutcome[] {
  const { problem, choice, seed, spreads, compiler } = asked;
  const kitchen = drawnKitchen(problem.kitchen, seed, draw, spreads);
  const bound = bindKitchen(kitchen);
  const lots = choice.parts.map((part, index) => {
    const lot = problem.lots[part.lot]!;
    return withDraw(asked, part, index, simulatedPart(bound, lot, part.portions, part.programme), draw);
  });
  const simulation = {
    room: roomAir(kitchen),
    boxes: bound.boxes(choice.vents),
    lots,
    horizonDays: problem.household.days,
    wraps: problem.catalogue.wraps,
    outcome: "ends" as const,
  };
  return simulate(simulation, compiler).lots;
}
