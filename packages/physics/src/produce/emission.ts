import { productionAtRipeness } from "../ethylene/production.js";
import type { ProduceAtTemperature } from "./atTemperature.js";
import { at as index, type LotState } from "./lotState.js";

const { ripeness } = index;

/** Ethylene given off [µL/h] per kilogram on arrival. Range and source: see `ethyleneProduction` and `productionAtRipeness`. */
export const ethyleneEmission = (lot: ProduceAtTemperature, state: LotState): number =>
  productionAtRipeness(lot.logEthyleneUnripe, lot.logEthyleneRipe, state[ripeness]!);

/**
 * Conductance for water vapour from its surface to the air around [kg/(s Pa)] per kilogram on arrival, before any uptake through the stem.
 *
 * Does not change as it dries: wilting closes some paths and opens none, but no published coefficient says by how much (`_state` keeps the place).
 * Source: transpiration coefficients, Sastry, Baird & Buffington 1978; Robinson, Browne & Burton 1975.
 */
export const vapourConductance = (lot: ProduceAtTemperature, _state: LotState): number => lot.conductance;
