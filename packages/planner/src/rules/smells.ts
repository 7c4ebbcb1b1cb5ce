import { dairy } from "@keepwright/catalogue";
import type { LotOutcome } from "@keepwright/physics";
import type { Problem } from "../problem/problem.js";
import type { Part } from "../problem/programme.js";
import { isAirtight } from "./airtight.js";
import { stayOnDay } from "./capacity.js";
import { weights } from "./weights.js";

/** A part taking up another's smell: both by their place in the list of parts. */
export interface TakenSmell {
  readonly giver: number;
  /** A part, or the dairy that is taken to stand in every refrigerator. */
  readonly taker: number | typeof dairy;
}

/** The stretch of air a part shares on a day, by name; nothing when its wrap keeps smells in and out. */
function sharedAir(problem: Problem, part: Part, outcome: LotOutcome, day: number): string | undefined {
  const stay = part.programme.stays[stayOnDay(outcome, day)]!;
  if (isAirtight(stay.wrap)) return undefined;
  const place = problem.places[stay.place]!;
  return place.box === "room" ? `room ${place.place.id}` : `box ${place.box}`;
}

/** Does a part give its smell to the air of a refrigerator on a day? Drawers breathe with it. */
function smellsInRefrigerator(problem: Problem, part: Part, outcome: LotOutcome, day: number): boolean {
  const stay = part.programme.stays[stayOnDay(outcome, day)]!;
  return !isAirtight(stay.wrap) && problem.places[stay.place]!.place.refrigerator !== undefined;
}

/**
 * Soft rule: givers and takers of smell that lie in one air on the first day or the last (Handbook 66's table in the
 * catalogue; no published rate). In the open room only things in the same place count as near.
 */
export function takenSmells(
  problem: Problem,
  parts: readonly Part[],
  outcomes: readonly LotOutcome[],
): TakenSmell[] {
  const kinds = new Map<string, number[]>();
  parts.forEach((part, index) => {
    const id = problem.lots[part.lot]!.produce.id;
    kinds.set(id, [...(kinds.get(id) ?? []), index]);
  });
  const meet = (giver: number, taker: number): boolean =>
    [0, problem.household.days - 1].some((day) => {
      const air = sharedAir(problem, parts[giver]!, outcomes[giver]!, day);
      return air !== undefined && air === sharedAir(problem, parts[taker]!, outcomes[taker]!, day);
    });
  const toDairy = (giver: number): boolean =>
    [0, problem.household.days - 1].some((day) =>
      smellsInRefrigerator(problem, parts[giver]!, outcomes[giver]!, day),
    );
  return problem.catalogue.odours.flatMap(({ giver, taker }) =>
    (kinds.get(giver) ?? []).flatMap((from): TakenSmell[] =>
      taker === dairy
        ? toDairy(from)
          ? [{ giver: from, taker: dairy }]
          : []
        : (kinds.get(taker) ?? [])
            .filter((to) => to !== from && meet(from, to))
            .map((to) => ({ giver: from, taker: to })),
    ),
  );
}

/** Grams of quality lost to smells: each taker counts once, however many givers lie near; dairy once for every lot that smells. */
export function smellCost(problem: Problem, parts: readonly Part[], smells: readonly TakenSmell[]): number {
  const takers = new Set(smells.map(({ taker }) => taker));
  let cost = 0;
  for (const taker of takers) {
    if (taker === dairy) continue;
    const part = parts[taker]!;
    cost += part.portions * problem.lots[part.lot]!.gramsPerPortion * weights.smellTaken;
  }
  const smellingLots = new Set(
    smells.filter(({ taker }) => taker === dairy).map(({ giver }) => problem.lots[parts[giver]!.lot]!.group),
  );
  return cost + smellingLots.size * weights.dairyGrams * weights.smellTaken;
}
