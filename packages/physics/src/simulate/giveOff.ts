import { ethyleneEmission, vapourConductance } from "../produce/emission.js";
import type { CompiledStay } from "./compiledStay.js";
import type { RunningLot } from "./runningLot.js";
import type { StageAir } from "./stageAir.js";

/** Share of a density by which the air in a wrap must pass saturation for the choice "condenses in the wrap" to change. */
const margin = 1e-12;

/** Sets what a lot gives off where it is, at a state. */
export function giveOff(lot: RunningLot, state: Float64Array): void {
  const { given, kilograms } = lot;
  const stay = lot.stays[lot.stay]!;
  given.surface = vapourConductance(stay.at, state) * kilograms * stay.pressurePerDensity;
  // Only ripening changes what is given off within a stay: the exponential of all others is taken once for each.
  if (lot.ripens || lot.emissionOf !== lot.stay) {
    given.emission = ethyleneEmission(stay.at, state) * kilograms;
    lot.emissionOf = lot.stay;
  }
  if (stay.wet) given.saturated = true;
  else if (!stay.closed) given.saturated = false;
  throughWrap(lot, stay);
}

/** The lot as its box sees it, through the wrap: a conductance in series, or saturated air behind the wrap's own. */
function throughWrap({ given, vapourWithheld }: RunningLot, stay: CompiledStay): void {
  const surface = given.surface;
  const seen = given.saturated
    ? stay.exchange
    : stay.closed
      ? (stay.exchange * surface) / (stay.exchange + surface)
      : surface;
  given.conductance = vapourWithheld ? 0 : seen;
  given.supply = given.conductance * (given.saturated ? stay.saturationDensity : stay.surfaceDensity);
}

/** Adds what a lot gives off to its box. The open room takes it up without change. */
export function addGivenOff(lot: RunningLot, air: StageAir): void {
  const { given } = lot;
  const { box } = lot.stays[lot.stay]!;
  if (box >= air.emission.length) return;
  air.conductance[box]! += given.conductance;
  air.supply[box]! += given.supply;
  if (!lot.ethyleneWithheld) air.emission[box]! += given.emission;
}

/** Looks again whether water condenses inside the lot's wrap. Says whether that changed. */
export function chooseWrapAgain(lot: RunningLot, air: StageAir): boolean {
  const { given } = lot;
  const stay = lot.stays[lot.stay]!;
  if (!stay.closed || stay.wet) return false;
  const gained = stay.exchange * air.density[stay.box]! + given.surface * stay.surfaceDensity;
  const over = gained / ((stay.exchange + given.surface) * stay.saturationDensity) - 1;
  if (given.saturated ? over >= -margin : over <= margin) return false;
  given.saturated = !given.saturated;
  throughWrap(lot, stay);
  return true;
}
