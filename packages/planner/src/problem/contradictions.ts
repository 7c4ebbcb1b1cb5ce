import type { Contradiction } from "./contradiction.js";
import { named, names, repeatedIds } from "./contradictoryNames.js";
import type { Kitchen, Place, PlaceKind, Refrigerator } from "./kitchen.js";
import { shownValue } from "./schemaFindings.js";

/**
 * Coldest place [°C] accepted for fresh produce. Freezing points of fruit and vegetables lie between about −0.3 and
 * −2.5 °C (the catalogue's freezingPoint), and cold rooms for some fruit run at −1 °C: below that a place is a freezer.
 */
export const coldestPlace = -1;

export const refrigeratorKinds: readonly PlaceKind[] = [
  "refrigerator shelf",
  "refrigerator door",
  "crisper drawer",
];

function whereItStands(place: Place, refrigerators: ReadonlyMap<string, Refrigerator>): Contradiction[] {
  const belongsInside = refrigeratorKinds.includes(place.kind);
  if (belongsInside && place.refrigerator === undefined) {
    return [
      {
        because: "in no refrigerator",
        values: { id: place.id },
        thing: named(place),
        value: `a ${place.kind} without a refrigerator`,
        remedy: 'Name its refrigerator: "refrigerator": "…".',
      },
    ];
  }
  if (!belongsInside && place.refrigerator !== undefined) {
    return [
      {
        because: "not for a refrigerator",
        values: { id: place.id, refrigerator: place.refrigerator },
        thing: named(place),
        value: `a ${place.kind} inside refrigerator ${shownValue(place.refrigerator)}`,
        remedy: `Leave "refrigerator" out, or make it one of: ${refrigeratorKinds.join(", ")}.`,
      },
    ];
  }
  if (place.refrigerator !== undefined && !refrigerators.has(place.refrigerator)) {
    return [
      {
        because: "unknown refrigerator",
        values: { id: place.id, refrigerator: place.refrigerator },
        thing: named(place),
        value: `refrigerator ${shownValue(place.refrigerator)} does not exist`,
        remedy: `Add it under "refrigerators", or use one of: ${[...refrigerators.keys()].map(shownValue).join(", ") || "(there is none)"}.`,
      },
    ];
  }
  return [];
}

function vents(place: Place): Contradiction[] {
  const rates = place.airChangesPerHour;
  const three = typeof rates === "object";
  if (place.vent !== undefined && !three) {
    return [
      {
        because: "vent without rates",
        values: { id: place.id },
        thing: named(place),
        value: `a vent (${place.vent}) with ${rates === undefined ? "no air exchange" : "one air exchange"} given`,
        remedy: 'Give "airChangesPerHour" for open, half and closed, or leave "vent" out.',
      },
    ];
  }
  if (!three) return [];
  if (place.vent === undefined) {
    return [
      {
        because: "rates without vent",
        values: { id: place.id },
        thing: named(place),
        value: "three air exchanges but no vent",
        remedy: 'Write "vent": "choose", or one of open, half, closed.',
      },
    ];
  }
  if (rates.open < rates.half || rates.half < rates.closed) {
    return [
      {
        because: "rates out of order",
        values: { id: place.id, ...rates },
        thing: named(place),
        value: `air exchange open ${rates.open}, half ${rates.half}, closed ${rates.closed} volumes an hour`,
        remedy: "An open vent exchanges most and a closed one least: put them in that order.",
      },
    ];
  }
  return [];
}

function placeTemperature(place: Place, kitchen: Kitchen): Contradiction[] {
  if (place.temperature < coldestPlace) {
    return [
      {
        because: "place freezes",
        values: { id: place.id, celsius: place.temperature, least: coldestPlace },
        thing: named(place),
        value: `${place.temperature} °C`,
        remedy: `Fresh produce freezes there. Give a place of at least ${coldestPlace} °C, or leave it out.`,
      },
    ];
  }
  if (place.refrigerator !== undefined && place.temperature >= kitchen.room.temperature) {
    return [
      {
        because: "as warm as the room",
        values: { id: place.id, celsius: place.temperature, room: kitchen.room.temperature },
        thing: named(place),
        value: `${place.temperature} °C inside a refrigerator, in a room of ${kitchen.room.temperature} °C`,
        remedy: "Measure it again: it must be colder than the room.",
      },
    ];
  }
  return [];
}

/**
 * Most a place outside a refrigerator may be warmer than its room [K], and a counter colder. Inferred: nothing heats a cupboard or a cellar but
 * the room, the sun and the ground. A sunny or stove-side place is asked about from 5 K on (`kitchenWarnings`); and a cellar in the ground,
 * at 8 to 14 °C all year (`kitchenFigures.cellarTemperature`), is that much warmer than a room only where the room is about to freeze. Colder
 * than its room a cellar or a cupboard on an outside wall may be by any amount; a counter stands in the room's own air.
 */
export const farthestFromRoom = 10;

function besideItsRoom(place: Place, { room }: Kitchen): Contradiction[] {
  if (place.refrigerator !== undefined) return [];
  const warmer = place.temperature - room.temperature;
  const value = `${place.temperature} °C in a room of ${room.temperature} °C`;
  if (warmer > farthestFromRoom) {
    return [
      {
        because: "warmer than the room",
        values: { id: place.id, celsius: place.temperature, room: room.temperature, most: farthestFromRoom },
        thing: named(place),
        value,
        remedy: `A ${place.kind} is at most ${farthestFromRoom} K warmer than its room: measure both again.`,
      },
    ];
  }
  if (place.kind === "counter" && warmer < -farthestFromRoom) {
    return [
      {
        because: "colder than the room",
        values: { id: place.id, celsius: place.temperature, room: room.temperature },
        thing: named(place),
        value,
        remedy: 'A counter has the air of its room: measure both again, or make it a "cellar".',
      },
    ];
  }
  return [];
}

const light = (place: Place): Contradiction[] =>
  place.kind === "cool dark cupboard" && place.lit
    ? [
        {
          because: "lit",
          values: { id: place.id },
          thing: named(place),
          value: `a ${place.kind} with "lit": true`,
          remedy: 'Write "lit": false, or make it a "counter".',
        },
      ]
    : [];

/**
 * More room for produce than the refrigerator has air. Room on shelves and in the door is part of its main air, so together they cannot be more;
 * a drawer with air of its own may have been left out of that figure, but is not larger than all the rest.
 */
function roomInside(refrigerator: Refrigerator, { places }: Kitchen): Contradiction[] {
  const thing = `refrigerator ${shownValue(refrigerator.id)}`;
  const remedy =
    'Correct "litres" of the refrigerator (its air) or of the places in it (their room for produce).';
  const inside = places.filter((place) => place.refrigerator === refrigerator.id);
  const sharing = inside.filter((place) => place.airChangesPerHour === undefined);
  const together = sharing.reduce((sum, { litres }) => sum + litres, 0);
  const larger = inside.filter((place) => !sharing.includes(place) && place.litres > refrigerator.litres);
  return [
    ...(together > refrigerator.litres
      ? [
          {
            because: "more room than air" as const,
            values: { id: refrigerator.id, room: together, litres: refrigerator.litres },
            thing,
            value: `${together} L of room in ${sharing.map(({ id }) => shownValue(id)).join(", ")}, but only ${refrigerator.litres} L of air`,
            remedy,
          },
        ]
      : []),
    ...larger.map(
      (place): Contradiction => ({
        because: "larger than the refrigerator",
        values: { id: place.id, room: place.litres, litres: refrigerator.litres },
        thing: named(place),
        value: `${place.litres} L inside refrigerator ${shownValue(refrigerator.id)} of ${refrigerator.litres} L`,
        remedy,
      }),
    ),
  ];
}

function refrigeratorTemperatures(refrigerator: Refrigerator, kitchen: Kitchen): Contradiction[] {
  const thing = `refrigerator ${shownValue(refrigerator.id)}`;
  const { temperature, coil } = refrigerator;
  const findings: Contradiction[] = [];
  if (temperature >= kitchen.room.temperature) {
    findings.push({
      because: "refrigerator as warm as the room",
      values: { id: refrigerator.id, celsius: temperature, room: kitchen.room.temperature },
      thing,
      value: `${temperature} °C in a room of ${kitchen.room.temperature} °C`,
      remedy: "A refrigerator is colder than its room: correct one of the two.",
    });
  }
  if (temperature < coldestPlace) {
    findings.push({
      because: "refrigerator freezes",
      values: { id: refrigerator.id, celsius: temperature },
      thing,
      value: `${temperature} °C`,
      remedy: "That is a freezer; only fresh produce is planned for.",
    });
  }
  if (coil.temperature >= temperature) {
    findings.push({
      because: "coil warmer than the air",
      values: { id: refrigerator.id, coil: coil.temperature, celsius: temperature },
      thing,
      value: `cold surface at ${coil.temperature} °C, air at ${temperature} °C`,
      remedy: "The cold surface is colder than the air it cools: correct one of the two.",
    });
  }
  return findings;
}

/** Everything in which a kitchen of the right shape contradicts itself. */
export function contradictions(kitchen: Kitchen): Contradiction[] {
  const refrigerators = new Map(kitchen.refrigerators.map((one) => [one.id, one]));
  return [
    ...repeatedIds(
      kitchen.places.map((place) => place.id),
      "place",
    ),
    ...repeatedIds(
      kitchen.refrigerators.map((one) => one.id),
      "refrigerator",
    ),
    ...names(kitchen),
    ...kitchen.refrigerators.flatMap((one) => [
      ...refrigeratorTemperatures(one, kitchen),
      ...roomInside(one, kitchen),
    ]),
    ...kitchen.places.flatMap((place) => [
      ...whereItStands(place, refrigerators),
      ...vents(place),
      ...placeTemperature(place, kitchen),
      ...besideItsRoom(place, kitchen),
      ...light(place),
    ]),
  ];
}
