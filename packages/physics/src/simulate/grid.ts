/** Days cut into equal steps so that every whole day is the end of one. */
export interface Grid {
  readonly stepDays: number;
  readonly stepsPerDay: number;
  readonly steps: number;
  readonly horizonDays: number;
}

/** Length of a step [d] unless told. */
export const usualStepDays = 0.25;

/**
 * The time grid of a simulation: steps of at most `stepDays`, shortened so that a whole number of them makes a day.
 * Throws RangeError when the horizon is not above 0 or the step is not above 0 and at most 1 day.
 */
export function timeGrid(horizonDays: number, stepDays = usualStepDays): Grid {
  if (!(horizonDays > 0 && horizonDays <= 3660)) {
    throw new RangeError(
      `A horizon of ${horizonDays} days cannot be simulated. Give more than 0 and at most 3660.`,
    );
  }
  if (!(stepDays > 0 && stepDays <= 1)) {
    throw new RangeError(
      `A step of ${stepDays} days cannot be used. Give more than 0 and at most 1; 0.25 is usual.`,
    );
  }
  const stepsPerDay = Math.ceil(1 / stepDays - 1e-9);
  return {
    stepDays: 1 / stepsPerDay,
    stepsPerDay,
    steps: Math.ceil(horizonDays * stepsPerDay - 1e-9),
    horizonDays,
  };
}
