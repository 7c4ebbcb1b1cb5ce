import type { CommodityFile } from "../fileSchema.js";
import { inferAmong } from "./fromRelatives.js";
import { offScale, onScale, type Quantity } from "./quantity.js";

/** How well the rule of relatives does for one quantity, by leaving each kind out in turn at its own nearest degree. */
export interface Performance {
  readonly quantity: string;
  readonly scale: Quantity["scale"];
  readonly tried: number;
  /** Share of kinds whose own figure lies inside the range that the rule gives. */
  readonly inside: number;
  /** Half of the kinds are missed by less: a factor, or a difference. */
  readonly medianError: number;
}

/**
 * Leaves out in turn each kind with a measured or recommended figure of its own, and sees what the rule of relatives,
 * knowing the others only, says of it.
 */
export function performanceOf(kinds: readonly CommodityFile[], quantity: Quantity): Performance {
  const tries = kinds.flatMap((kind) => {
    const own = quantity.read(kind);
    if (!own || (own.evidence.kind !== "measured" && own.evidence.kind !== "recommended")) return [];
    const guess = inferAmong(kinds.filter((each) => each !== kind))(kind, quantity);
    if (!guess) return [];
    const inside = own.value >= guess.low && own.value <= guess.high;
    return [{ inside, error: Math.abs(onScale(quantity, guess.value) - onScale(quantity, own.value)) }];
  });
  const errors = tries.map(({ error }) => error).sort((one, other) => one - other);
  const middle = errors[Math.floor(errors.length / 2)] ?? 0;
  return {
    quantity: quantity.name,
    scale: quantity.scale,
    tried: tries.length,
    inside: tries.filter(({ inside }) => inside).length / tries.length,
    medianError: offScale(quantity, middle),
  };
}
