/**
 * What a part would cost by itself if places at the table were bought at the days' dual prices: each portion goes to its
 * cheapest day, at most `limit` a day, or is left. With the prices of the present plan this is a lower estimate of the
 * part's share of the cost after a change, without solving all eating days anew (Lagrangian relaxation of the table).
 */
export function pricedCost(
  portions: number,
  costs: ArrayLike<number>,
  costLeft: number,
  prices: ArrayLike<number>,
  limit: number,
): number {
  let remaining = portions;
  let total = 0;
  // Most parts fit on one day: then no day need be crossed out.
  let used: Uint8Array | undefined;
  while (remaining > 0) {
    let best = -1;
    let least = costLeft;
    for (let day = 0; day < costs.length; day++) {
      const cost = costs[day]! + prices[day]!;
      if (cost < least && !used?.[day]) {
        least = cost;
        best = day;
      }
    }
    const amount = best < 0 ? remaining : Math.min(limit, remaining);
    total += amount * least;
    remaining -= amount;
    if (best < 0 || remaining === 0) continue;
    used ??= new Uint8Array(costs.length);
    used[best] = 1;
  }
  return total;
}
