import type { Kitchen } from "../../problem/kitchen.js";
import type { ChangesFor } from "../triedChange.js";

/** A kind of wrap where none is at hand. The planner does not count wraps: where there is one it takes as many as it needs. */
const atHand =
  (wrap: Kitchen["wraps"][number], name: "lidded boxes at hand" | "paper bags at hand"): ChangesFor =>
  (request) => {
    const { kitchen } = request;
    if (kitchen.wraps.includes(wrap)) return [];
    return [
      { change: { name }, request: { ...request, kitchen: { ...kitchen, wraps: [...kitchen.wraps, wrap] } } },
    ];
  };

export const lidBoxesAtHand = atHand("lidded box", "lidded boxes at hand");
export const paperBagsAtHand = atHand("paper bag", "paper bags at hand");
