import type { Lot } from "@keepwright/planner";

/** How lots lay before the first day of a plan that was carried on, by the lot's id: none in a plan for what came home. */
export type LyingLots = ReadonlyMap<
  string,
  Pick<NonNullable<Lot["carried"]>, "place" | "wrap" | "daysBefore">
>;

/** Those of the lots that lay in the kitchen before. */
export const lyingLots = (lots: readonly Lot[]): LyingLots =>
  new Map(lots.flatMap(({ id, carried }) => (carried ? [[id, carried] as const] : [])));
