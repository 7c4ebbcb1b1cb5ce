import type { Finding } from "./inputError.js";
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

const named = (place: Place): string => `place ${shownValue(place.id)}`;

function repeatedIds(ids: readonly string[], what: string): Finding[] {
  const repeated = ids.filter((id, index) => ids.indexOf(id) !== index);
  return [...new Set(repeated)].map((id) => ({
    thing: `${what} ${shownValue(id)}`,
    value: "this id is used more than once",
    remedy: "Give each its own id.",
  }));
}

function whereItStands(place: Place, refrigerators: ReadonlyMap<string, Refrigerator>): Finding[] {
  const belongsInside = refrigeratorKinds.includes(place.kind);
  if (belongsInside && place.refrigerator === undefined) {
    return [
      {
        thing: named(place),
        value: `a ${place.kind} without a refrigerator`,
        remedy: 'Name its refrigerator: "refrigerator": "…".',
      },
    ];
  }
  if (!belongsInside && place.refrigerator !== undefined) {
    return [
      {
        thing: named(place),
        value: `a ${place.kind} inside refrigerator ${shownValue(place.refrigerator)}`,
        remedy: `Leave "refrigerator" out, or make it one of: ${refrigeratorKinds.join(", ")}.`,
      },
    ];
  }
  if (place.refrigerator !== undefined && !refrigerators.has(place.refrigerator)) {
    return [
      {
        thing: named(place),
        value: `refrigerator ${shownValue(place.refrigerator)} does not exist`,
        remedy: `Add it under "refrigerators", or use one of: ${[...refrigerators.keys()].map(shownValue).join(", ") || "(there is none)"}.`,
      },
    ];
  }
  return [];
}

function vents(place: Place): Finding[] {
  const rates = place.airChangesPerHour;
  const three = typeof rates === "object";
  if (place.vent !== undefined && !three) {
    return [
      {
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
        thing: named(place),
        value: "three air exchanges but no vent",
        remedy: 'Write "vent": "choose", or one of open, half, closed.',
      },
    ];
  }
  if (rates.open < rates.half || rates.half < rates.closed) {
    return [
      {
        thing: named(place),
        value: `air exchange open ${rates.open}, half ${rates.half}, closed ${rates.closed} volumes an hour`,
        remedy: "An open vent exchanges most and a closed one least: put them in that order.",
      },
    ];
  }
  return [];
}

function placeTemperature(place: Place, kitchen: Kitchen): Finding[] {
  if (place.temperature < coldestPlace) {
    return [
      {
        thing: named(place),
        value: `${place.temperature} °C`,
        remedy: `Fresh produce freezes there. Give a place of at least ${coldestPlace} °C, or leave it out.`,
      },
    ];
  }
  if (place.refrigerator !== undefined && place.temperature >= kitchen.room.temperature) {
    return [
      {
        thing: named(place),
        value: `${place.temperature} °C inside a refrigerator, in a room of ${kitchen.room.temperature} °C`,
        remedy: "Measure it again: it must be colder than the room.",
      },
    ];
  }
  return [];
}

function refrigeratorTemperatures(refrigerator: Refrigerator, kitchen: Kitchen): Finding[] {
  const thing = `refrigerator ${shownValue(refrigerator.id)}`;
  const { temperature, coil } = refrigerator;
  const findings: Finding[] = [];
  if (temperature >= kitchen.room.temperature) {
    findings.push({
      thing,
      value: `${temperature} °C in a room of ${kitchen.room.temperature} °C`,
      remedy: "A refrigerator is colder than its room: correct one of the two.",
    });
  }
  if (temperature < coldestPlace) {
    findings.push({
      thing,
      value: `${temperature} °C`,
      remedy: "That is a freezer; only fresh produce is planned for.",
    });
  }
  if (coil.temperature >= temperature) {
    findings.push({
      thing,
      value: `cold surface at ${coil.temperature} °C, air at ${temperature} °C`,
      remedy: "The cold surface is colder than the air it cools: correct one of the two.",
    });
  }
  return findings;
}

/** Everything in which a kitchen of the right shape contradicts itself. */
export function contradictions(kitchen: Kitchen): Finding[] {
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
    ...kitchen.refrigerators.flatMap((one) => refrigeratorTemperatures(one, kitchen)),
    ...kitchen.places.flatMap((place) => [
      ...whereItStands(place, refrigerators),
      ...vents(place),
      ...placeTemperature(place, kitchen),
    ]),
  ];
}
