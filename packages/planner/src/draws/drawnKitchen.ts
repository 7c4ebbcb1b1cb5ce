import { keyedNormal } from "@keepwright/quantities";
import type { Kitchen, Place, Refrigerator } from "../problem/kitchen.js";
import type { Spreads } from "./spreads.js";

/** Temperatures a kitchen may have, and its coldest coil [°C] (`kitchenSchema`). */
const coldest = -5;
const hottest = 45;
const coldestCoil = -40;

/**
 * Steps of a drawn offset [K]. Draws then meet the same temperatures again, and what is worked out for one serves others; it adds a standard deviation of
 * 0.009 K.
 */
const step = 1 / 32;

const toStep = (kelvins: number): number => Math.round(kelvins / step) * step;
const within = (celsius: number): number => Math.min(hottest, Math.max(coldest, celsius));
const meanSpread = (places: readonly Place[]): number =>
  places.length === 0
    ? 0
    : places.reduce((sum, { temperatureSpread }) => sum + temperatureSpread, 0) / places.length;

/** The name of what warms and cools a place: its refrigerator, or the room. */
const surroundings = ({ refrigerator }: Place): string => `refrigerator ${refrigerator ?? ""}`;

/**
 * The kitchen as it is in one draw: every place warmer or colder by its own spread times a normal number, which places of one refrigerator share, and so do
 * those in the room. The main air of a refrigerator, its cold surface and the air of the room go with them, by the mean spread of their places; the room's
 * relative humidity stays.
 */
export function drawnKitchen(kitchen: Kitchen, seed: number, draw: number, spreads: Spreads): Kitchen {
  const normal = (key: string): number => keyedNormal(seed, `temperature ${key}`, draw);
  const placeOffset = (place: Place): number => {
    const { temperature, sharedAir } = spreads;
    const own = sharedAir < 1 ? Math.sqrt(1 - sharedAir) * normal(`place ${place.id}`) : 0;
    const shared = Math.sqrt(sharedAir) * normal(surroundings(place));
    return toStep(temperature * place.temperatureSpread * (shared + own));
  };
  const airOffset = (refrigerator: string | undefined): number => {
    const places = kitchen.places.filter((place) => place.refrigerator === refrigerator);
    if (places.length === 0) return 0;
    const shared = Math.sqrt(spreads.sharedAir) * normal(surroundings(places[0]!));
    return toStep(spreads.temperature * meanSpread(places) * shared);
  };
  const drawnRefrigerator = (one: Refrigerator): Refrigerator => {
    const by = airOffset(one.id);
    const coil = { ...one.coil, temperature: Math.max(coldestCoil, one.coil.temperature + by) };
    return { ...one, temperature: within(one.temperature + by), coil };
  };
  return {
    ...kitchen,
    room: { ...kitchen.room, temperature: within(kitchen.room.temperature + airOffset(undefined)) },
    refrigerators: kitchen.refrigerators.map(drawnRefrigerator),
    places: kitchen.places.map((place) => ({
      ...place,
      temperature: within(place.temperature + placeOffset(place)),
    })),
  };
}
