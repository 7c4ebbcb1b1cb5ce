import { type Catalogue, exactLimit } from "@keepwright/catalogue";
import { told } from "./findingCode.js";
import type { Finding } from "./inputError.js";
import type { Kitchen, Refrigerator } from "./kitchen.js";
import { shownValue } from "./schemaFindings.js";

/** Warmest refrigerator not warned about: 40 °F (FDA consumer advice, from memory), told as 4.4 °C. Local codes may ask for less. */
const limit = { value: 4.4, fahrenheit: 40 };
/** The same [°C], not rounded. */
export const warmestSafeRefrigerator = exactLimit(limit);

/** Whether a refrigerator is too warm for food that can spoil dangerously, by the catalogue's limit where it has one. */
export function isTooWarm(
  { temperature }: Pick<Refrigerator, "temperature">,
  catalogue?: Pick<Catalogue, "safety">,
): boolean {
  return temperature > exactLimit(catalogue?.safety.get("refrigerator-at-most") ?? limit);
}

/** Largest difference [°C] between a counter and its room that is not asked about. Inferred: sun or a stove nearby. */
const counterOffset = 5;

/** What can be planned with but deserves a second look. */
export function kitchenWarnings(kitchen: Kitchen): Finding[] {
  const warm = kitchen.refrigerators
    .filter((one) => isTooWarm(one))
    .map((one) => ({
      thing: `refrigerator ${shownValue(one.id)}`,
      value: `${one.temperature} °C`,
      remedy: `Set it to ${limit.value} °C (${limit.fahrenheit} °F) or less: above that, food that can spoil dangerously is not safe for long.`,
      ...told("warm refrigerator", { id: one.id, celsius: one.temperature, ...limit }),
    }));
  const places = kitchen.places.flatMap((place) => {
    const thing = `place ${shownValue(place.id)}`;
    if (place.temperature < 0) {
      return [
        {
          thing,
          value: `${place.temperature} °C`,
          remedy: "Some produce freezes there; check the thermometer.",
          ...told("place below freezing", { id: place.id, celsius: place.temperature }),
        },
      ];
    }
    if (place.kind === "counter" && Math.abs(place.temperature - kitchen.room.temperature) > counterOffset) {
      return [
        {
          thing,
          value: `${place.temperature} °C in a room of ${kitchen.room.temperature} °C`,
          remedy: "A counter is usually as warm as its room; check both.",
          ...told("counter unlike its room", {
            id: place.id,
            celsius: place.temperature,
            room: kitchen.room.temperature,
          }),
        },
      ];
    }
    return [];
  });
  const none = kitchen.places.some((place) => place.refrigerator !== undefined)
    ? []
    : [
        {
          thing: "kitchen",
          value: "no place in a refrigerator",
          remedy: "Cut produce cannot be kept safely without one; eat it at once.",
          ...told("no refrigerator"),
        },
      ];
  return [...warm, ...places, ...none];
}
