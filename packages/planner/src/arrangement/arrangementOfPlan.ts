import type { Plan, PlannedLot } from "../problem/plan.js";
import { type Arrangement, doneFirst } from "./arrangement.js";

const portionsIn = ({ eatOn, leftPortions }: PlannedLot): number =>
  eatOn.reduce((sum, { portions }) => sum + portions, leftPortions);

/** What a plan decides, written as an arrangement: to begin from, and to set the person's own beside. */
export function arrangementOfPlan(plan: Plan): Arrangement {
  const all = new Map<string, number>();
  for (const part of plan.lots) all.set(part.lot, (all.get(part.lot) ?? 0) + portionsIn(part));
  const lots = plan.lots.map((part): Arrangement["lots"][number] => {
    const [first, second] = part.stays;
    const share = portionsIn(part) / all.get(part.lot)!;
    // Leaves that stay on are told by `tops`; the catalogue's own advice is no part of an arrangement.
    const done = doneFirst.filter((name) => part.preparation.includes(name));
    return {
      lot: part.lot,
      place: first!.place,
      wrap: first!.wrap,
      done,
      ...(share < 1 && { share }),
      ...(second && {
        later: {
          moveWhen: first!.moveWhen!,
          ...(first!.moveWhen === "day" && { day: Math.round(first!.toDay!) }),
          place: second.place,
          wrap: second.wrap,
        },
      }),
    };
  });
  return { version: 1, lots, vents: plan.vents.map(({ place, setting }) => ({ place, setting })) };
}
