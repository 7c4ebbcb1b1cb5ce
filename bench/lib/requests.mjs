// Invented hauls in invented kitchens for the benches of the planner. Kinds are those of the catalogue, every few in turn.
import { catalogue } from "@keepwright/catalogue";
import { ordinaryKitchens } from "@keepwright/planner";

const kinds = [...catalogue().commodities.keys()].sort();

/** The kitchen with eight places, and one with two more out of the cold. */
export const eightPlaces = ordinaryKitchens.cellar;
export const tenPlaces = {
  ...eightPlaces,
  places: [
    ...eightPlaces.places,
    ...eightPlaces.places
      .filter(({ refrigerator }) => refrigerator === undefined)
      .slice(0, 2)
      .map((place) => ({ ...place, id: `${place.id} again`, name: `${place.name} again` })),
  ],
};

/** A request for a haul of so many lots; another `step` through the kinds gives another haul. */
export function requestOf(
  count,
  kitchen,
  { step = 7, start = 0, people = Math.max(2, Math.round(count / 8)) } = {},
) {
  const lots = Array.from({ length: count }, (_, index) => ({
    id: `lot ${index}`,
    commodity: kinds[(start + index * step) % kinds.length],
    grams: 300 + 50 * (index % 5),
  }));
  return {
    haul: { lots },
    kitchen,
    household: { people },
    from: "2026-06-13",
    seed: 1,
    catalogue: catalogue(),
  };
}

/** Processor time of this process [ms], helpers of the engine included: less disturbed by other processes than the clock on the wall. */
export function processorTime() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

export const quantile = (values, share) =>
  values.toSorted((one, other) => one - other)[Math.floor(share * (values.length - 1))];

/** Processor and wall time [ms] of some work, and what it gave. */
export function timed(work) {
  const [cpu, wall] = [processorTime(), performance.now()];
  const value = work();
  return { value, cpu: processorTime() - cpu, wall: performance.now() - wall };
}
