import type { Kitchen } from "./kitchen.js";
import { kitchenFigures as figure } from "./kitchenFigures.js";
import {
  cellar,
  counter,
  cupboardShelf,
  cupboardTemperature,
  door,
  drawer,
  ordinaryLitres,
  ordinaryWraps,
  refrigerator,
  room,
  shelf,
  smallLitres,
} from "./kitchenParts.js";

function ordinaryKitchen(): Kitchen {
  const cold = figure.refrigeratorTemperature.value;
  const warm = figure.roomTemperature.value;
  return {
    version: 1,
    name: "An ordinary kitchen",
    room: room(warm),
    refrigerators: [refrigerator(figure.refrigeratorLitres.value, cold)],
    places: [
      shelf(ordinaryLitres.shelf, cold),
      door(ordinaryLitres.door, cold),
      drawer("left-drawer", "Left drawer", ordinaryLitres.drawer, cold),
      drawer("right-drawer", "Right drawer", ordinaryLitres.drawer, cold),
      counter(ordinaryLitres.counter, warm),
      cupboardShelf(
        "cupboard-upper",
        "Cupboard, upper shelf",
        ordinaryLitres.cupboardShelf,
        cupboardTemperature(warm),
      ),
      cupboardShelf(
        "cupboard-lower",
        "Cupboard, lower shelf",
        ordinaryLitres.cupboardShelf,
        cupboardTemperature(warm),
      ),
    ],
    wraps: ordinaryWraps,
  };
}

function smallRefrigeratorKitchen(): Kitchen {
  const cold = 6;
  const warm = figure.roomTemperature.value + 2;
  return {
    version: 1,
    name: "A small refrigerator without drawers",
    room: room(warm),
    refrigerators: [refrigerator(figure.smallRefrigeratorLitres.value, cold)],
    places: [
      shelf(smallLitres.shelf, cold),
      door(smallLitres.door, cold),
      counter(15, warm),
      cupboardShelf("cupboard", "Cupboard", 15, warm - 2),
    ],
    wraps: ["paper bag", "closed film bag", "damp towel", "lidded box", "glass of water"],
  };
}

function cellarKitchen(): Kitchen {
  const base = ordinaryKitchen();
  return {
    ...base,
    name: "A kitchen with a cellar",
    places: [...base.places, cellar(figure.cellarTemperature.value)],
  };
}

function warmKitchen(): Kitchen {
  const base = ordinaryKitchen();
  const warm = figure.hotRoomTemperature.value;
  const places = base.places.map((place) =>
    place.kind === "counter"
      ? { ...place, temperature: warm }
      : place.kind === "cool dark cupboard"
        ? { ...place, temperature: warm - 2 }
        : place,
  );
  return { ...base, name: "A warm kitchen in summer", room: { ...room(warm), relativeHumidity: 60 }, places };
}

/** Kitchens to start from, by a short key. The first is used when none is given. Every figure: see kitchenFigures. */
export const ordinaryKitchens: Readonly<Record<"ordinary" | "small" | "cellar" | "warm", Kitchen>> = {
  ordinary: ordinaryKitchen(),
  small: smallRefrigeratorKitchen(),
  cellar: cellarKitchen(),
  warm: warmKitchen(),
};
export type OrdinaryKitchenKey = keyof typeof ordinaryKitchens;
