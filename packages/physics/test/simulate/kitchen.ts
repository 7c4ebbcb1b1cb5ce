import type { Wrap, WrapId } from "@keepwright/catalogue";
import type {
  AirBox,
  RoomAir,
  SimulatedLot,
  SimulatedStay,
  Simulation,
} from "../../src/simulate/simulation.js";
import { type Kind, kinds } from "./kinds.js";

/** An invented kitchen: a refrigerator with two drawers, and two cupboards. */
export const room: RoomAir = { temperature: 20, relativeHumidity: 0.5, ethylene: 0.02 };
export const refrigerator: AirBox = {
  name: "refrigerator",
  volumeLitres: 200,
  temperature: 4,
  exchange: { with: "room", litresPerHour: 80 },
  coil: { temperature: -8, litresPerHour: 400 },
};
const drawer = (name: string, litresPerHour: number): AirBox => ({
  name,
  volumeLitres: 14,
  temperature: 4,
  exchange: { with: 0, litresPerHour },
});
const cupboard = (name: string): AirBox => ({
  name,
  volumeLitres: 40,
  temperature: 16,
  exchange: { with: "room", litresPerHour: 20 },
});
export const boxes: readonly AirBox[] = [
  refrigerator,
  drawer("closed drawer", 6),
  drawer("open drawer", 110),
  cupboard("upper cupboard"),
  cupboard("lower cupboard"),
];
export const temperatures = [4, 4, 4, 16, 16];

const evidence = { source: "invented", place: "test", kind: "inferred", fromMemory: false } as const;
const wrap = (id: WrapId, vapour: number, ethylene: number, wet = false, uptake = 0): Wrap => ({
  id,
  vapourExchange: { value: vapour, unit: "L/h for 1 kg", ...evidence },
  ethyleneExchange: { value: ethylene, unit: "L/h for 1 kg", ...evidence },
  extraRoom: { value: 0, unit: "1", ...evidence },
  wet,
  uptake: { value: uptake, unit: "1", ...evidence },
  plastic: false,
});
/** Invented wraps of each sort, under names the contract knows. */
export const wraps: ReadonlyMap<WrapId, Wrap> = new Map(
  [
    wrap("none", 100_000, 100_000),
    wrap("paper bag", 170, 60),
    wrap("perforated bag", 10, 5),
    wrap("closed film bag", 0.8, 0.25),
    wrap("damp towel", 600, 250, true),
    wrap("glass of water", 100_000, 100_000, false, 0.9),
  ].map((one) => [one.id, one]),
);

export const stay = (box: number | "room", more: Partial<SimulatedStay> = {}): SimulatedStay => ({
  box,
  temperature: box === "room" ? room.temperature : temperatures[box]!,
  wrap: "none",
  lit: false,
  until: "never",
  ...more,
});

export const lot = (
  kind: Kind,
  kilograms: number,
  stays: readonly SimulatedStay[],
  more: Partial<SimulatedLot> = {},
): SimulatedLot => ({
  produce: kinds[kind],
  kilograms,
  form: { cut: false, tops: false, wet: false },
  ripeness: 0,
  spent: 0,
  stays,
  ...more,
});

export const simulation = (lots: readonly SimulatedLot[], more: Partial<Simulation> = {}): Simulation => ({
  room,
  boxes,
  lots,
  horizonDays: 20,
  wraps,
  ...more,
});
