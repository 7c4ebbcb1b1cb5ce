const dayMilliseconds = 86_400_000;

/** Whether a text is a day of the calendar, YYYY-MM-DD: only a day that comes back the same from a date is one; "2026-11-31" is not. */
export function civilDayFits(text: string): boolean {
  const time = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : Number.NaN;
  return !Number.isNaN(time) && new Date(time).toISOString().slice(0, 10) === text;
}

/** Whole days from one civil day to another, both YYYY-MM-DD; negative when the other is earlier. */
export const daysFrom = (from: string, day: string): number =>
  Math.round((Date.parse(`${day}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / dayMilliseconds);

/** The days of a plan that begins on a civil day, each as YYYY-MM-DD. */
export const daysOfPlan = (from: string, days: number): readonly string[] =>
  Array.from({ length: days }, (_, index) =>
    new Date(Date.parse(`${from}T00:00:00Z`) + index * dayMilliseconds).toISOString().slice(0, 10),
  );
