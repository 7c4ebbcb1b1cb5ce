import type { Finding } from "./inputError.js";
import type { Kitchen } from "./kitchen.js";
import { shownValue } from "./schemaFindings.js";

/** Warmest refrigerator [°C] not warned about: 40 °F (FDA consumer advice, from memory). Local codes may ask for less. */
export const warmestSafeRefrigerator = 4.4;

/** Largest difference [°C] between a counter and its room that is not asked about. Inferred: sun or a stove nearby. */
const counterOffset = 5;

/** What can be planned with but deserves a second look. */
export function kitchenWarnings(kitchen: Kitchen): Finding[] {
  const warm = kitchen.refrigerators
    .filter((one) => one.temperature > warmestSafeRefrigerator)
    .map((one) => ({
      thing: `refrigerator ${shownValue(one.id)}`,
      value: `${one.temperature} °C`,
      remedy: `Set it to ${warmestSafeRefrigerator} °C or less: above that, food that can spoil dangerously is not safe for long.`,
    }));
  const places = kitchen.places.flatMap((place) => {
    const thing = `place ${shownValue(place.id)}`;
    if (place.temperature < 0) {
      return [
        {
          thing,
          value: `${place.temperature} °C`,
          remedy: "Some produce freezes there; check the thermometer.",
        },
      ];
    }
    if (place.kind === "counter" && Math.abs(place.temperature - kitchen.room.temperature) > counterOffset) {
      return [
        {
          thing,
          value: `${place.temperature} °C in a room of ${kitchen.room.temperature} °C`,
          remedy: "A counter is usually as warm as its room; check both.",
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
        },
      ];
  return [...warm, ...places, ...none];
}
