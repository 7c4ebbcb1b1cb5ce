import type { ChangesFor } from "../triedChange.js";

/** Most portions a person may eat a day (`householdSchema`). */
const mostPortions = 20;

/** Everybody eats one portion more a day. */
export const portionMore: ChangesFor = (request) => {
  const from = request.household.portionsPerPersonPerDay;
  const to = from + 1;
  if (to > mostPortions) return [];
  const household = { ...request.household, portionsPerPersonPerDay: to };
  return [{ change: { name: "portion more a day", from, to }, request: { ...request, household } }];
};
