import { ventSettings } from "../../problem/kitchen.js";
import type { ChangesFor } from "../triedChange.js";

/** A vent that stands fixed, at each of its other settings. A vent that can be chosen is set by the plan already. */
export const ventTurned: ChangesFor = (request) => {
  const { kitchen } = request;
  return kitchen.places.flatMap((place) => {
    const { vent } = place;
    if (vent === undefined || vent === "choose") return [];
    return ventSettings
      .filter((to) => to !== vent)
      .map((to) => ({
        change: { name: "vent turned" as const, place: place.id, from: vent, to },
        request: {
          ...request,
          kitchen: {
            ...kitchen,
            places: kitchen.places.map((one) => (one === place ? { ...one, vent: to } : one)),
          },
        },
      }));
  });
};
