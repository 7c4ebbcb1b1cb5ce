import { decayRipenessFactor } from "../decay/decayRate.js";
import { within } from "../within.js";
import { at as index, type LotForm, type LotState, stateNames } from "./lotState.js";
import type { Produce } from "./produce.js";

/**
 * State of a lot on arrival.
 *
 * The share of its storage life already spent is its senescence dose, and brings the decay dose that the same share of that life at recommended
 * conditions would have brought; cut produce was cut just now and brings no decay. Ripeness is held to 0…2, the share to 0…1.
 */
export function initialState(produce: Produce, form: LotForm, ripeness: number, spent: number): LotState {
  const state = new Float64Array(stateNames.length);
  const share = within(spent, 0, 1);
  state[index.ripeness] = within(ripeness, 0, 2);
  state[index.senescence] = share;
  const ripenessFactor = decayRipenessFactor(produce.ripening ? state[index.ripeness]! : 1);
  state[index.decay] = form.cut ? 0 : share * produce.decayFactor * ripenessFactor;
  return state;
}
