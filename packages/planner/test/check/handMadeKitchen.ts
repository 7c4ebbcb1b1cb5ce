import type { AirBox } from "@keepwright/physics";
import { type Kitchen, kitchenSchema } from "../../src/problem/kitchen.js";

const airChangesPerHour = { open: 8, half: 2, closed: 0.4 };
const inside = { refrigerator: "fridge", temperature: 4, lit: false };

/** An invented kitchen: a shelf, a drawer whose vent can be set, one whose vent is stuck closed, a counter, a cupboard. */
export const handMadeKitchen: Kitchen = kitchenSchema.parse({
  version: 1,
  name: "Invented kitchen",
  room: { temperature: 20, relativeHumidity: 50 },
  refrigerators: [
    {
      id: "fridge",
      litres: 200,
      temperature: 4,
      airChangesPerHour: 0.4,
      coil: { temperature: -8, airChangesPerHour: 2 },
    },
  ],
  places: [
    { id: "shelf", name: "Shelf", kind: "refrigerator shelf", litres: 20, ...inside },
    {
      id: "free",
      name: "Free drawer",
      kind: "crisper drawer",
      litres: 10,
      ...inside,
      airChangesPerHour,
      vent: "choose",
    },
    {
      id: "stuck",
      name: "Stuck drawer",
      kind: "crisper drawer",
      litres: 10,
      ...inside,
      airChangesPerHour,
      vent: "closed",
    },
    { id: "counter", name: "Counter", kind: "counter", litres: 10, temperature: 20, lit: true },
    {
      id: "cupboard",
      name: "Cupboard",
      kind: "cool dark cupboard",
      litres: 10,
      temperature: 17,
      airChangesPerHour: 0.5,
      lit: false,
    },
  ],
  wraps: ["paper bag", "perforated bag", "lidded box", "glass of water"],
});

/** The same kitchen as boxes of air, worked out by hand: fridge 0.4 and 2 × 200 L, drawers 8 and 0.4 × 10 L, cupboard 0.5 × 10 L. */
export const handMadeBoxes: readonly AirBox[] = [
  {
    name: "fridge",
    volumeLitres: 200,
    temperature: 4,
    exchange: { with: "room", litresPerHour: 80 },
    coil: { temperature: -8, litresPerHour: 400 },
  },
  { name: "free", volumeLitres: 10, temperature: 4, exchange: { with: 0, litresPerHour: 80 } },
  { name: "stuck", volumeLitres: 10, temperature: 4, exchange: { with: 0, litresPerHour: 4 } },
  { name: "cupboard", volumeLitres: 10, temperature: 17, exchange: { with: "room", litresPerHour: 5 } },
];
