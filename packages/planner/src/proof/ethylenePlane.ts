import { heldEthylene } from "@keepwright/physics";
import type { Column, ColumnCosts, Columns } from "./columns.js";
import type { LotAir } from "./lotAir.js";

/** Steps between the least and the most ethylene, equal in the logarithm. The more, the less is lost by knowing costs only at their ends. */
const levelSteps = 14;

/** Lowest ethylene [µL/L] that rates tell apart (physics' `heldEthylene`). */
export const leastToldApart = heldEthylene(0);

/** Costs of one column at rising levels of ethylene in its stretch of air: by level (all but the last), then by day with what is left over last. */
export interface CostsByLevel {
  readonly levels: readonly number[];
  /** Undefined where the column cannot be. */
  readonly costs: readonly (Float64Array | undefined)[];
}

/** Costs by day, with what is left over last. */
export const flatCosts = ({ onDay, left }: ColumnCosts): Float64Array => {
  const out = new Float64Array(onDay.length + 1);
  out.set(onDay);
  out[onDay.length] = left;
  return out;
};

function levelsBetween(least: number, most: number): number[] {
  if (!(most > least * (1 + 1e-6))) return [least, least];
  // Below the lowest level that rates tell apart nothing changes: the first step may begin in clean air.
  const low = Math.min(most, Math.max(least, leastToldApart));
  return Array.from({ length: levelSteps + 1 }, (_, step) =>
    step === 0 ? least : low * (most / low) ** (step / levelSteps),
  );
}

/** @param boxes of the stretch; its ethylene is at least the level from the second window on */
export function costsByLevel(
  columns: Columns,
  column: Column,
  air: LotAir,
  boxes: ReadonlySet<number>,
  least: number,
  most: number,
): CostsByLevel {
  const levels = levelsBetween(least, most);
  const costs = levels.slice(0, -1).map((level) => {
    const leastEthylene = air.leastEthylene.map((levelsNow, window) =>
      window === 0 ? levelsNow : levelsNow.map((now, box) => (boxes.has(box) ? Math.max(now, level) : now)),
    );
    const found = columns.costs(column, { ...air, leastEthylene });
    return found && flatCosts(found);
  });
  return { levels, costs };
}

/** How steeply the costs of a day rise from the least level to the highest known [g per µL/L]; 0 where the column cannot be at one of them. */
export function slopeOn({ levels, costs }: CostsByLevel, day: number): number {
  const low = costs[0]?.[day] ?? Number.POSITIVE_INFINITY;
  const high = costs.at(-1)?.[day] ?? Number.POSITIVE_INFINITY;
  const span = levels.at(-1)! - levels[0]!;
  return span > 0 && Number.isFinite(high) ? Math.max(0, high - low) / span : 0;
}

/**
 * Highest costs by day with which costs + slope · (level − least) hold at every level. Between two levels the cost is at least that at the lower one and the rise at most that at the
 * upper one, so nothing is asked of the costs but that they do not fall with ethylene. Undefined where the column can be at no level.
 */
export function baseCosts({ levels, costs }: CostsByLevel, slopes: Float64Array): Float64Array | undefined {
  let base: Float64Array | undefined;
  costs.forEach((at, step) => {
    if (!at) return;
    const above = levels[step + 1]! - levels[0]!;
    base ??= new Float64Array(at.length).fill(Number.POSITIVE_INFINITY);
    for (let day = 0; day < at.length; day++)
      base[day] = Math.min(base[day]!, at[day]! - slopes[day]! * above);
  });
  return base;
}
