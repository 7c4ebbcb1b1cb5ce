import type { ChangesFor } from "../triedChange.js";

/** Each lot left unbought, the others as they are. A haul of one lot leaves nothing to plan. */
export const lotFewer: ChangesFor = (request) => {
  const { lots } = request.haul;
  if (lots.length < 2) return [];
  return lots.map(({ id, commodity, grams, pieces, form, tops }, left) => ({
    change: {
      name: "lot fewer" as const,
      lot: { id, commodity, grams, ...(pieces !== undefined && { pieces }), form, tops },
    },
    request: { ...request, haul: { lots: lots.filter((_, index) => index !== left) } },
  }));
};
