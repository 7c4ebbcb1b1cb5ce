import {
  type AirBox,
  type Neighbour,
  produceFromCommodity,
  type SimulatedLot,
  type SimulatedStay,
  type Simulation,
  stateNames,
} from "@keepwright/physics";
import type { Place } from "../problem/kitchen.js";
import type { PlannedLot } from "../problem/plan.js";
import { kindOf, lotOf, placeOf, type Subject } from "./subject.js";

/** Largest share of its life taken as spent on arrival, whatever was typed: it came home to be eaten. */
const mostSpent = 0.9;

/** Which box of air each refrigerator and each place has. */
interface Airs {
  readonly boxes: readonly AirBox[];
  readonly of: (place: Place) => Neighbour;
}

function changesPerHour({ plan }: Subject, place: Place): number {
  const { airChangesPerHour } = place;
  if (typeof airChangesPerHour !== "object") return airChangesPerHour ?? 0;
  return airChangesPerHour[plan.vents.find((vent) => vent.place === place.id)!.setting];
}

/** The kitchen's boxes with the vents as planned: refrigerators first, then places with air of their own. */
function airs(subject: Subject): Airs {
  const boxes: AirBox[] = [];
  const refrigerators = new Map<string, number>();
  const places = new Map<string, number>();
  for (const { id, litres, temperature, airChangesPerHour, coil } of subject.kitchen.refrigerators) {
    refrigerators.set(id, boxes.length);
    boxes.push({
      name: id,
      volumeLitres: litres,
      temperature,
      exchange: { with: "room", litresPerHour: airChangesPerHour * litres },
      coil: { temperature: coil.temperature, litresPerHour: coil.airChangesPerHour * litres },
    });
  }
  const outside = (place: Place): Neighbour => refrigerators.get(place.refrigerator ?? "") ?? "room";
  for (const place of subject.kitchen.places) {
    if (place.airChangesPerHour === undefined) continue;
    places.set(place.id, boxes.length);
    boxes.push({
      name: place.id,
      volumeLitres: place.litres,
      temperature: place.temperature,
      exchange: { with: outside(place), litresPerHour: changesPerHour(subject, place) * place.litres },
    });
  }
  return { boxes, of: (place) => places.get(place.id) ?? outside(place) };
}

function stayAgain(
  subject: Subject,
  { of }: Airs,
  stay: PlannedLot["stays"][number],
  last: boolean,
): SimulatedStay {
  const place = placeOf(subject, stay.place);
  const move = stay.moveWhen === "ripe" ? "ripe" : { day: stay.toDay ?? Number.POSITIVE_INFINITY };
  return {
    box: of(place),
    temperature: place.temperature,
    wrap: stay.wrap,
    lit: place.lit,
    until: last ? "never" : move,
  };
}

/** Washed and not dried since; the packer has spun leaves dry that are sold under time and temperature control. */
export function comesWet(subject: Subject, part: PlannedLot): boolean {
  const { organ, controlledAsSold } = kindOf(subject, part);
  const { washed, carried } = lotOf(subject, part);
  return washed && !carried?.dry && !(organ === "leaf" && controlledAsSold);
}

function partAgain(subject: Subject, air: Airs, part: PlannedLot): SimulatedLot {
  const produce = produceFromCommodity(kindOf(subject, part));
  const { extraDays, carried } = lotOf(subject, part);
  // Days since it was cut count against the life it has once cut, as the physics reads the share spent.
  const wholeLife = part.form === "cut" ? produce.cutLifeDaysAt5 : produce.storageLifeDays;
  return {
    produce,
    kilograms: part.grams / 1000,
    form: {
      cut: part.form === "cut",
      tops: part.tops,
      wet: comesWet(subject, part) && !part.preparation.includes("dry well"),
    },
    ripeness: part.ripeness,
    spent: Math.min(mostSpent, extraDays / wholeLife),
    state: carried && Float64Array.from(stateNames, (name) => carried.state[name]),
    stays: part.stays.map((stay, index) => stayAgain(subject, air, stay, index === part.stays.length - 1)),
  };
}

/** The simulation a plan stands for, built from the plan and the kitchen alone; lots in the order of the plan's parts. */
export function simulationAgain(subject: Subject): Simulation & { readonly boxOf: Airs["of"] } {
  const { kitchen, plan, catalogue } = subject;
  const air = airs(subject);
  return {
    room: { ...kitchen.room, relativeHumidity: kitchen.room.relativeHumidity / 100 },
    boxes: air.boxes,
    lots: plan.lots.map((part) => partAgain(subject, air, part)),
    horizonDays: plan.days,
    wraps: catalogue.wraps,
    boxOf: air.of,
  };
}
