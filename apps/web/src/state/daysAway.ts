const dayMilliseconds = 86_400_000;

/** Whole days from one civil day to another, both YYYY-MM-DD; negative when the other is earlier. */
export const daysFrom = (from: string, day: string): number =>
  Math.round((Date.parse(`${day}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / dayMilliseconds);

/** The days of a plan that begins on a civil day, each as YYYY-MM-DD. */
export const daysOfPlan = (from: string, days: number): readonly string[] =>
  Array.from({ length: days }, (_, index) =>
    new Date(Date.parse(`${from}T00:00:00Z`) + index * dayMilliseconds).toISOString().slice(0, 10),
  );
