import { carriedFrom, lifeSpread, usualSpentSpread } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Programme } from "../problem/programme.js";
import { middleOfReady } from "../rules/wishes.js";
import type { Solos } from "./solos.js";

/**
 * Standard deviation of ln(time to ripen) of a lot alone with a programme [1]; 0 where nothing is wanted of it or it does not ripen any more.
 *
 * Inferred: nobody publishes how far apart lots of a kind ripen, so they are taken to differ as their lives do (`lifeSpread`), with the same causes. Carried from
 * the published days to ripen at 20 °C, where a life is carried from the published storage life: in a warm kitchen that is much nearer.
 */
export function ripeningSpreadOf(solos: Solos, lot: BoundLot, programme: Programme): number {
  const { ripening, lifeSpread: biology } = lot.produce;
  if (!lot.wish || !ripening || lot.ripeness >= 1) return 0;
  const days = (warmer: number): number =>
    middleOfReady(solos.outcome(lot, programme, solos.ownAir, warmer), lot.ripeness).median;
  return lifeSpread({
    biology,
    temperatureSpread: 1,
    temperatureSlope: carriedFrom(days(1), days(-1)) / 2,
    spent: 0,
    spentSpread: usualSpentSpread,
    carried: carriedFrom(days(0), ripening.daysAt20 * (1 - lot.ripeness)),
  });
}
