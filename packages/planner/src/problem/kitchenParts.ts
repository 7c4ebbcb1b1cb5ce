import type { Kitchen, Place, Refrigerator } from "./kitchen.js";
import { kitchenFigures as figure, type KitchenFigure } from "./kitchenFigures.js";

/* The parts kitchens are put together from. Litres [L], temperatures [°C]; every other figure is one of kitchenFigures. */

const value = (entry: KitchenFigure): number => entry.value;

/** Room for produce [L] in the places of an ordinary kitchen. Common practice, no source. */
export const ordinaryLitres = {
  shelf: 45,
  door: 8,
  drawer: 14,
  counter: 30,
  cupboardShelf: 20,
  cellar: 120,
} as const;
/** The same in a refrigerator that reaches to the hip. Common practice, no source. */
export const smallLitres = { shelf: 22, door: 5 } as const;

/** A refrigerator of so much air [L] at its mean temperature [°C]. */
export function refrigerator(litres: number, temperature: number): Refrigerator {
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

export const shelf = (litres: number, temperature: number): Place => ({
  id: "shelf",
  name: "Refrigerator shelves",
  kind: "refrigerator shelf",
  litres,
  temperature,
  ...inRefrigerator,
});
export const door = (litres: number, temperature: number): Place => ({
  id: "door",
  name: "Refrigerator door",
  kind: "refrigerator door",
  litres,
  temperature: temperature + figure.doorWarmer.value,
  ...inRefrigerator,
});
export const drawer = (id: string, name: string, litres: number, temperature: number): Place => ({
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
export const counter = (litres: number, temperature: number): Place => ({
  id: "counter",
  name: "Counter",
  kind: "counter",
  litres,
  temperature,
  ...inRoom,
  lit: true,
});
export const cupboardShelf = (id: string, name: string, litres: number, temperature: number): Place => ({
  id,
  name,
  kind: "cool dark cupboard",
  litres,
  temperature,
  ...inRoom,
  airChangesPerHour: figure.cupboardAirChanges.value,
  lit: false,
});

export const room = (temperature: number) => ({
  temperature,
  relativeHumidity: figure.roomHumidity.value,
  ethylene: figure.roomEthylene.value,
});
export const cupboardTemperature = (roomTemperature: number): number =>
  roomTemperature - figure.cupboardCooler.value;
export const ordinaryWraps: Kitchen["wraps"] = [
  "paper bag",
  "perforated bag",
  "closed film bag",
  "damp towel",
  "lidded box",
  "glass of water",
];

export const cellar = (temperature: number): Place => ({
  id: "cellar",
  name: "Cellar",
  kind: "cellar",
  litres: ordinaryLitres.cellar,
  temperature,
  ...inRoom,
  airChangesPerHour: figure.cupboardAirChanges.value,
  lit: false,
});
/** A lidded crate outdoors: dark, near the weather's own temperature, its air taken to change as that of a cupboard does. */
export const balcony = (temperature: number): Place => ({
  id: "balcony",
  name: "Balcony",
  kind: "cellar",
  litres: figure.balconyLitres.value,
  temperature,
  temperatureSpread: figure.balconySpread.value,
  airChangesPerHour: figure.cupboardAirChanges.value,
  lit: false,
});
/** A drawer whose front has no slide to open: only the gap around it lets air through. */
export const plainDrawer = (id: string, name: string, litres: number, temperature: number): Place => ({
  id,
  name,
  kind: "crisper drawer",
  litres,
  temperature,
  ...inRefrigerator,
  airChangesPerHour: figure.drawerClosedAirChanges.value,
});
