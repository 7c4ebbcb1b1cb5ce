import type { Kitchen, Place, Refrigerator } from "./kitchen.js";
import { kitchenFigures as figure, type KitchenFigure } from "./kitchenFigures.js";

const value = (entry: KitchenFigure): number => entry.value;

function refrigerator(litres: number, temperature: number): Refrigerator {
  return {
    id: "refrigerator",
    litres,
    temperature,
    airChangesPerHour: value(figure.refrigeratorAirChanges),
    coil: { temperature: value(figure.coilTemperature), airChangesPerHour: value(figure.coilAirChanges) },
  };
}

const inRefrigerator = {
  refrigerator: "refrigerator",
  temperatureSpread: figure.refrigeratorSpread.value,
  lit: false,
};
const inRoom = { temperatureSpread: figure.roomSpread.value };

const shelf = (litres: number, temperature: number): Place => ({
  id: "shelf",
  name: "Refrigerator shelves",
  kind: "refrigerator shelf",
  litres,
  temperature,
  ...inRefrigerator,
});
const door = (litres: number, temperature: number): Place => ({
  id: "door",
  name: "Refrigerator door",
  kind: "refrigerator door",
  litres,
  temperature: temperature + figure.doorWarmer.value,
  ...inRefrigerator,
});
const drawer = (id: string, name: string, litres: number, temperature: number): Place => ({
  id,
  name,
  kind: "crisper drawer",
  litres,
  temperature,
  ...inRefrigerator,
  airChangesPerHour: {
    open: figure.drawerOpenAirChanges.value,
    half: figure.drawerHalfAirChanges.value,
    closed: figure.drawerClosedAirChanges.value,
  },
  vent: "choose",
});
const counter = (litres: number, temperature: number): Place => ({
  id: "counter",
  name: "Counter",
  kind: "counter",
  litres,
  temperature,
  ...inRoom,
  lit: true,
});
const cupboardShelf = (id: string, name: string, litres: number, temperature: number): Place => ({
  id,
  name,
  kind: "cool dark cupboard",
  litres,
  temperature,
  ...inRoom,
  airChangesPerHour: figure.cupboardAirChanges.value,
  lit: false,
});

const room = (temperature: number) => ({
  temperature,
  relativeHumidity: figure.roomHumidity.value,
  ethylene: figure.roomEthylene.value,
});
const cupboardTemperature = (roomTemperature: number): number =>
  roomTemperature - figure.cupboardCooler.value;
const ordinaryWraps: Kitchen["wraps"] = [
  "paper bag",
  "perforated bag",
  "closed film bag",
  "damp towel",
  "lidded box",
  "glass of water",
];

function ordinaryKitchen(): Kitchen {
  const cold = figure.refrigeratorTemperature.value;
  const warm = figure.roomTemperature.value;
  return {
    version: 1,
    name: "An ordinary kitchen",
    room: room(warm),
    refrigerators: [refrigerator(figure.refrigeratorLitres.value, cold)],
    places: [
      shelf(45, cold),
      door(8, cold),
      drawer("left-drawer", "Left drawer", 14, cold),
      drawer("right-drawer", "Right drawer", 14, cold),
      counter(30, warm),
      cupboardShelf("cupboard-upper", "Cupboard, upper shelf", 20, cupboardTemperature(warm)),
      cupboardShelf("cupboard-lower", "Cupboard, lower shelf", 20, cupboardTemperature(warm)),
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
    refrigerators: [refrigerator(90, cold)],
    places: [
      shelf(22, cold),
      door(5, cold),
      counter(15, warm),
      cupboardShelf("cupboard", "Cupboard", 15, warm - 2),
    ],
    wraps: ["paper bag", "closed film bag", "damp towel", "lidded box", "glass of water"],
  };
}

function cellarKitchen(): Kitchen {
  const base = ordinaryKitchen();
  const cellar: Place = {
    id: "cellar",
    name: "Cellar",
    kind: "cellar",
    litres: 120,
    temperature: figure.cellarTemperature.value,
    temperatureSpread: 2,
    airChangesPerHour: figure.cupboardAirChanges.value,
    lit: false,
  };
  return { ...base, name: "A kitchen with a cellar", places: [...base.places, cellar] };
}

function warmKitchen(): Kitchen {
  const base = ordinaryKitchen();
  const warm = 27;
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
