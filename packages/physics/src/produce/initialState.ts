import { decayRipenessFactor } from "../decay/decayRate.js";
import { cutSafetyRate } from "../safety/cutSafetyRate.js";
import { within } from "../within.js";
import { cutLifeTemperature } from "./atTemperature.js";
import { at as index, type LotForm, type LotState, stateNames } from "./lotState.js";
import type { Produce } from "./produce.js";

/** Share of the safe time that cut produce used up while it spent a share of its cut life at 5 °C [1]. */
const safetySpent = (produce: Produce, share: number): number =>
  share * produce.cutLifeDaysAt5 * cutSafetyRate(cutLifeTemperature, produce.timeTemperatureControl);

/**
 * State of a lot on arrival.
 *
 * The share of its life already spent (its cut life, once cut) is its senescence dose, and brings the decay dose and the share of safe time that the same share of
 * that life at recommended conditions would have brought. Ripeness is held to 0…2, the share to −1…1; below 0 it arrives fresher than is usual.
 *
 * @param believedSpent the share that safe time is counted by, where another is believed than is true
 * @param state written into and given back; made anew unless given
 */
export function initialState(
  produce: Produce,
  form: LotForm,
  ripeness: number,
  spent: number,
  believedSpent = spent,
  state: LotState = new Float64Array(stateNames.length),
): LotState {
  state.fill(0);
  const share = within(spent, -1, 1);
  state[index.ripeness] = within(ripeness, 0, 2);
  state[index.senescence] = share;
  const ripenessFactor = decayRipenessFactor(produce.ripening ? state[index.ripeness]! : 1);
  state[index.decay] = share * produce.decayFactor * ripenessFactor;
  state[index.safety] = form.cut ? within(safetySpent(produce, believedSpent), 0, 1) : 0;
  return state;
}

/**
 * State of a lot carried over from another simulation: the one given, once it is seen to be a state. Throws RangeError naming the kind, the state and what it may be
 * where an entry is missing, no number, or below −1 (what arrived fresher than is usual has a share of life below 0).
 */
export function carriedState(produce: Produce, state: Readonly<LotState>): Readonly<LotState> {
  const wrong = stateNames.find((name) => !(state[index[name]]! >= -1 && state[index[name]]! < Infinity));
  if (wrong === undefined && state.length === stateNames.length) return state;
  const name = wrong ?? "length";
  const value = wrong === undefined ? state.length : state[index[wrong]];
  throw new RangeError(
    `The state carried over for “${produce.id}” has ${name} ${value}. Give all ${stateNames.length} states as numbers of at least -1.`,
  );
}
