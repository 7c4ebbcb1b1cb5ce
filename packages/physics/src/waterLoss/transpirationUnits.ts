const secondsPerDay = 86_400;
const pascalsPerMillibar = 100;

/**
 * Transpiration coefficient [kg/(kg s Pa)] from per cent of mass a day and millibar, the unit of Robinson, Browne & Burton 1975:
 * 1 %/(d mbar) = 1.157e-9 kg/(kg s Pa). Exact.
 */
export const transpirationFromPercentPerDayMillibar = (percent: number): number =>
  percent / 100 / (secondsPerDay * pascalsPerMillibar);

/** Water lost a day [% of mass] at a transpiration coefficient [kg/(kg s Pa)] and a difference of vapour pressure [Pa]. Exact. */
export const percentPerDay = (conductance: number, difference: number): number =>
  conductance * difference * secondsPerDay * 100;
