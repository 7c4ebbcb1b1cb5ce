import type { Plan } from "@keepwright/planner";
import { letterOf } from "../../drawing/letters.js";

/** How a lot is marked wherever it is drawn or named: its letter and its pattern. */
export interface Mark {
  readonly letter: string;
  readonly index: number;
}
export type Marks = (lot: string) => Mark;

/** Letters by the order of the plan; patterns by the order within a place, so that lots side by side look different. */
export function marksOf({ lots }: Pick<Plan, "lots">): Marks {
  const inPlace = new Map<string, number>();
  const marks = new Map(
    lots.map(({ id, stays: [first] }, order): [string, Mark] => {
      const place = first?.place ?? "";
      const index = inPlace.get(place) ?? 0;
      inPlace.set(place, index + 1);
      return [id, { letter: letterOf(order), index }];
    }),
  );
  return (lot) => marks.get(lot) ?? { letter: "", index: 0 };
}
