import type { Contradiction } from "./contradiction.js";
import type { Kitchen, Place } from "./kitchen.js";
import { shownValue } from "./schemaFindings.js";

/** A place as it is named in an error. */
export const named = (place: Place): string => `place ${shownValue(place.id)}`;

/** Ids that stand for more than one thing. */
export function repeatedIds(ids: readonly string[], what: string): Contradiction[] {
  const repeated = ids.filter((id, index) => ids.indexOf(id) !== index);
  return [...new Set(repeated)].map(
    (id): Contradiction => ({
      because: "same id",
      values: { id },
      thing: `${what} ${shownValue(id)}`,
      value: "this id is used more than once",
      remedy: "Give each its own id.",
    }),
  );
}

const blank = (name: string): boolean => name.replace(/[\p{C}\p{Z}]/gu, "") === "";

/** Names nobody could tell apart or read: places are called by them in every plan. */
export function names({ name, places }: Kitchen): Contradiction[] {
  const asRead = (place: Place): string =>
    place.name
      .replace(/[\p{C}\p{Z}]+/gu, " ")
      .trim()
      .toLowerCase();
  const unnamed = places.filter((place) => blank(place.name));
  const alike = places.filter(
    (place, index) =>
      !blank(place.name) && places.findIndex((other) => asRead(other) === asRead(place)) < index,
  );
  return [
    ...(blank(name)
      ? [
          {
            because: "kitchen without a name" as const,
            values: {},
            thing: "kitchen",
            value: `name ${shownValue(name)}`,
            remedy: "Give it a name that can be read.",
          },
        ]
      : []),
    ...unnamed.map(
      (place): Contradiction => ({
        because: "place without a name",
        values: { id: place.id },
        thing: named(place),
        value: `name ${shownValue(place.name)}`,
        remedy: "Give it a name that can be read: plans call it by its name.",
      }),
    ),
    ...alike.map(
      (place): Contradiction => ({
        because: "same name",
        values: { id: place.id, name: place.name },
        thing: named(place),
        value: `name ${shownValue(place.name)}, which another place has too`,
        remedy: 'Give each its own name, such as "Left drawer" and "Right drawer".',
      }),
    ),
  ];
}
