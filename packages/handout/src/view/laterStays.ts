import type { PlannedLot } from "@keepwright/planner";

type Stay = PlannedLot["stays"][number];

/** A stay after the first, as it is told. */
export interface LaterStay {
  readonly before: Stay;
  readonly stay: Stay;
  /**
   * When it is moved there: on its day; when it is ripe, about that day; or, of what is to be eaten up by that day, only if it is ripe before, since its life is
   * counted with the move.
   */
  readonly when: "day" | "ripe" | "if ripe before";
}

/** The stays of a part after the first, in order; without moves on a day, ripe or not, by which all of it is eaten. */
export function laterStays({ stays, eatOn, leftPortions }: PlannedLot): LaterStay[] {
  const lastMeal = eatOn.findLast(({ portions }) => portions > 0)?.date;
  return stays.slice(1).flatMap((stay, index): LaterStay[] => {
    const before = stays[index]!;
    const ripe = before.moveWhen === "ripe";
    const eatenUp = leftPortions === 0 && lastMeal !== undefined && stay.from >= lastMeal;
    if (!eatenUp) return [{ before, stay, when: ripe ? "ripe" : "day" }];
    return ripe ? [{ before, stay, when: "if ripe before" }] : [];
  });
}
