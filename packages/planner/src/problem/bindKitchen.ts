import type { AirBox, Neighbour } from "@keepwright/physics";
import type { Kitchen, Place, VentSetting } from "./kitchen.js";

/** A place of the kitchen as the simulation sees it. */
export interface BoundPlace {
  readonly index: number;
  readonly place: Place;
  /** The box of air it has or shares, or the open room. */
  readonly box: Neighbour;
  /** It lies in a refrigerator. */
  readonly cold: boolean;
  /** Which of the vents that can be set is its own; absent when it has none. */
  readonly vent: number | undefined;
}

/** The kitchen as boxes of air, with the vents that can be set. */
export interface BoundKitchen {
  readonly places: readonly BoundPlace[];
  /** Places (by index) whose vent can be set, in order. */
  readonly vents: readonly number[];
  /** Boxes of air for one setting of those vents; a neighbour always comes before the box that names it. */
  readonly boxes: (vents: readonly VentSetting[]) => AirBox[];
}

/** Setting of a vent nobody has touched. Common practice, no source: drawers are sold with the slide in the middle. */
export const untouchedVent: VentSetting = "half";

function refrigeratorBoxes(kitchen: Kitchen): AirBox[] {
  return kitchen.refrigerators.map((one) => ({
    name: one.id,
    volumeLitres: one.litres,
    temperature: one.temperature,
    exchange: { with: "room", litresPerHour: one.airChangesPerHour * one.litres },
    coil: { temperature: one.coil.temperature, litresPerHour: one.coil.airChangesPerHour * one.litres },
  }));
}

const ownAir = (place: Place): boolean => place.airChangesPerHour !== undefined;

function exchangeRate(place: Place, setting: VentSetting | undefined): number {
  const rates = place.airChangesPerHour;
  if (rates === undefined) return 0;
  if (typeof rates === "number") return rates;
  return rates[setting ?? untouchedVent];
}

/** Turns a checked kitchen into boxes: each refrigerator's main air first, then every place that has air of its own. */
export function bindKitchen(kitchen: Kitchen): BoundKitchen {
  const mainAir = new Map(kitchen.refrigerators.map((one, index) => [one.id, index]));
  const around = (place: Place): Neighbour =>
    place.refrigerator === undefined ? "room" : (mainAir.get(place.refrigerator) ?? "room");
  const vents: number[] = [];
  let nextBox = kitchen.refrigerators.length;
  const places = kitchen.places.map((place, index): BoundPlace => {
    const vent = place.vent === "choose" ? vents.push(index) - 1 : undefined;
    const box = ownAir(place) ? nextBox++ : around(place);
    return { index, place, box, cold: place.refrigerator !== undefined, vent };
  });
  const boxes = (settings: readonly VentSetting[]): AirBox[] => [
    ...refrigeratorBoxes(kitchen),
    ...places
      .filter(({ place }) => ownAir(place))
      .map(({ place, vent }): AirBox => {
        const fixed = place.vent === "choose" ? undefined : place.vent;
        const setting = vent === undefined ? fixed : settings[vent];
        return {
          name: place.id,
          volumeLitres: place.litres,
          temperature: place.temperature,
          exchange: { with: around(place), litresPerHour: exchangeRate(place, setting) * place.litres },
        };
      }),
  ];
  return { places, vents, boxes };
}
