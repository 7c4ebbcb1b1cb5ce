/**
 * Rate of harm once below its freezing point [1/d]: over within an hour.
 *
 * Common practice: fresh produce that has frozen is limp and leaks when it thaws, and is no longer fresh produce. Freezing really takes an hour
 * to a night by size and temperature; counting it as at once errs on the side of never planning it. Counted with chilling.
 */
export const freezingRate = 24;

/** Rate of harm by freezing [1/d] at a temperature [°C]; 0 at and above the freezing point [°C]. */
export const freezingRateAt = (celsius: number, freezingPoint: number): number =>
  celsius < freezingPoint ? freezingRate : 0;
