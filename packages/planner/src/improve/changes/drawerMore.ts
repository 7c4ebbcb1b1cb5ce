import type { Kitchen, Place, Refrigerator } from "../../problem/kitchen.js";
import { kitchenFigures } from "../../problem/kitchenFigures.js";
import { ordinaryKitchens } from "../../problem/ordinaryKitchens.js";
import type { ChangesFor } from "../triedChange.js";

/** Most places a kitchen may have (`kitchenSchema`). */
const mostPlaces = 15;

/** A name nothing else in the kitchen has. */
function freeName(taken: readonly string[], wanted: string): string {
  let name = wanted;
  for (let number = 2; taken.includes(name); number++) name = `${wanted} ${number}`;
  return name;
}

const usualDrawer = ordinaryKitchens.ordinary.places.find(({ kind }) => kind === "crisper drawer")!;

/** A drawer like the refrigerator's own, or a usual one as cold as the shelf it stands on; its vent can be set. */
function drawerLike(kitchen: Kitchen, shelf: Place): Place {
  const own = kitchen.places.find(
    ({ kind, refrigerator }) => kind === "crisper drawer" && refrigerator === shelf.refrigerator,
  );
  const rates = own?.airChangesPerHour;
  const { drawerOpenAirChanges, drawerHalfAirChanges, drawerClosedAirChanges } = kitchenFigures;
  return {
    ...(own ?? { ...shelf, kind: "crisper drawer", litres: usualDrawer.litres }),
    id: freeName(
      kitchen.places.map(({ id }) => id),
      "drawer-more",
    ),
    name: freeName(
      kitchen.places.map(({ name }) => name),
      "Added drawer",
    ),
    airChangesPerHour:
      typeof rates === "object"
        ? rates
        : {
            open: drawerOpenAirChanges.value,
            half: drawerHalfAirChanges.value,
            closed: drawerClosedAirChanges.value,
          },
    vent: "choose",
  };
}

/** The refrigerator's roomiest shelf. */
const shelfOf = ({ places }: Kitchen, { id }: Refrigerator): Place | undefined =>
  places
    .filter((place) => place.kind === "refrigerator shelf" && place.refrigerator === id)
    .sort((one, other) => other.litres - one.litres)[0];

/**
 * One vented drawer more, put on a shelf that gives up as much room. Offered where at least as much of the shelf stays free as the drawer takes:
 * a drawer on the last free shelf is no choice anybody has. Common practice, no source.
 */
export const drawerMore: ChangesFor = (request) => {
  const { kitchen } = request;
  if (kitchen.places.length >= mostPlaces) return [];
  return kitchen.refrigerators.flatMap((one) => {
    const shelf = shelfOf(kitchen, one);
    if (!shelf) return [];
    const drawer = drawerLike(kitchen, shelf);
    if (shelf.litres < 2 * drawer.litres) return [];
    const places = kitchen.places.map((place) =>
      place === shelf ? { ...shelf, litres: shelf.litres - drawer.litres } : place,
    );
    return [
      {
        change: { name: "vented drawer more" as const, refrigerator: one.id, litres: drawer.litres },
        request: { ...request, kitchen: { ...kitchen, places: [...places, drawer] } },
      },
    ];
  });
};
