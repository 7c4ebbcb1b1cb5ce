import type { Kitchen, Refrigerator } from "../../problem/kitchen.js";
import { warmestSafeRefrigerator } from "../../problem/kitchenWarnings.js";
import type { ChangesFor, CheckedRequest, TriedChange } from "../triedChange.js";

/** A turn of the knob [K]. Declared, no source: what a person can set and a household thermometer can tell. */
const turn = 1;
/** No place in a refrigerator is advised to be colder [°C]: produce begins to freeze a little below. */
const coldest = 0;
/** Coldest surface a kitchen may have (`refrigeratorSchema`) [°C]. */
const coldestCoil = -40;

/** Warmest refrigerator ever advised [°C]: the stricter of the catalogue's two limits, for cold holding and for a refrigerator. */
function warmest({ catalogue }: CheckedRequest): number {
  const limits = ["refrigerator-at-most", "controlled-cold-holding-at-most"].map(
    (id) => catalogue.safety.get(id)?.value ?? warmestSafeRefrigerator,
  );
  return Math.min(...limits);
}

/** Two decimals: what is left over by adding is no temperature. */
const tidy = (celsius: number): number => Math.round(100 * celsius) / 100;

/** The kitchen with one refrigerator, its cold surface and every place in it colder or warmer by the same [K]. */
function shifted(kitchen: Kitchen, { id }: Refrigerator, by: number): Kitchen {
  const moved = (celsius: number): number => tidy(celsius + by);
  return {
    ...kitchen,
    refrigerators: kitchen.refrigerators.map((one) =>
      one.id === id
        ? {
            ...one,
            temperature: moved(one.temperature),
            coil: { ...one.coil, temperature: Math.max(coldestCoil, moved(one.coil.temperature)) },
          }
        : one,
    ),
    places: kitchen.places.map((place) =>
      place.refrigerator === id ? { ...place, temperature: moved(place.temperature) } : place,
    ),
  };
}

const placesIn = ({ places }: Kitchen, { id }: Refrigerator) =>
  places.filter(({ refrigerator }) => refrigerator === id);

/** Refrigerators with produce in them. */
const used = ({ kitchen }: CheckedRequest): Refrigerator[] =>
  kitchen.refrigerators.filter((one) => placesIn(kitchen, one).length > 0);

function set(
  request: CheckedRequest,
  one: Refrigerator,
  name: "refrigerator colder" | "refrigerator warmer",
  to: number,
): TriedChange {
  return {
    change: { name, refrigerator: one.id, from: one.temperature, to },
    request: { ...request, kitchen: shifted(request.kitchen, one, to - one.temperature) },
  };
}

/**
 * A refrigerator 1 °C colder; one that would still be above the safe limit is set to that limit instead. Not offered where a place in it would get
 * below 0 °C.
 */
export const refrigeratorColder: ChangesFor = (request) =>
  used(request).flatMap((one) => {
    const to = tidy(Math.min(one.temperature - turn, warmest(request)));
    const by = to - one.temperature;
    const cold = Math.min(...placesIn(request.kitchen, one).map(({ temperature }) => temperature));
    return Math.min(to, tidy(cold + by)) < coldest ? [] : [set(request, one, "refrigerator colder", to)];
  });

/** A refrigerator 1 °C warmer. Not offered where it would be above the safe limit, or no colder than its room. */
export const refrigeratorWarmer: ChangesFor = (request) =>
  used(request).flatMap((one) => {
    const to = tidy(one.temperature + turn);
    const { room } = request.kitchen;
    const hot = Math.max(to, ...placesIn(request.kitchen, one).map(({ temperature }) => temperature + turn));
    return to > warmest(request) || hot >= room.temperature
      ? []
      : [set(request, one, "refrigerator warmer", to)];
  });
