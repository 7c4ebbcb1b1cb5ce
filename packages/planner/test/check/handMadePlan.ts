import { catalogue } from "@keepwright/catalogue";
import {
  chancePastBest,
  type LotOutcome,
  lifeRange,
  lifeSpread,
  produceFromCommodity,
  type SimulatedLot,
  simulate,
  usualSpentSpread,
} from "@keepwright/physics";
import { addDays } from "@keepwright/quantities";
import { type Plan, type PlannedLot, planUnits } from "../../src/problem/plan.js";
import { eatingHabits, weights } from "../../src/rules/weights.js";
import { handMadeBoxes, handMadeKitchen } from "./handMadeKitchen.js";
import { type HandPart, handMadeHaul, handMadeHousehold, handMadeParts } from "./handMadeParts.js";

/** Written out here so that the test needs neither the planner nor the checker: what is known of each lot by hand. */
const from = "2026-06-13";
const boxOf = { shelf: 0, free: 1, stuck: 2, cupboard: 3, counter: "room" } as const;
const kindOfPlace = {
  shelf: "refrigerator shelf",
  free: "crisper drawer",
  stuck: "crisper drawer",
  counter: "counter",
  cupboard: "cool dark cupboard",
} as const;
const ripenessOnArrival: Record<string, number> = { avocado: 0, cantaloupe: 1, tomato: 1 };
const preparations: Record<string, string[]> = { carrots: ["twist off leaves"], spinach: ["dry well"] };

const lotOf = (part: HandPart) => handMadeHaul.lots.find(({ id }) => id === part.lot)!;
const kindOf = (part: HandPart) => catalogue().commodities.get(lotOf(part).commodity)!;
const temperatureOf = (place: string): number => (place === "counter" ? 20 : place === "cupboard" ? 17 : 4);

const room = { temperature: 20, relativeHumidity: 0.5, ethylene: 0.02 };

const simulated = (part: HandPart, kilograms: number, warmer = 0): SimulatedLot => ({
  produce: produceFromCommodity(kindOf(part)),
  kilograms,
  form: { cut: lotOf(part).form === "cut", tops: false, wet: false },
  ripeness: ripenessOnArrival[lotOf(part).commodity] ?? 1,
  spent: 0,
  stays: part.stays.map(({ place, wrap, untilRipe }) => ({
    box: boxOf[place],
    temperature: temperatureOf(place) + warmer,
    wrap,
    lit: place === "counter",
    until: untilRipe ? ("ripe" as const) : ("never" as const),
  })),
});

const outcomes = () =>
  simulate({
    room,
    boxes: handMadeBoxes,
    horizonDays: handMadeHousehold.days,
    lots: handMadeParts.map((part) => simulated(part, part.grams / 1000)),
  });

/** The whole lot alone, the free drawer's vent half open (2 × 10 L/h), one degree warmer and one colder: the spread of every place is 1 °C. */
function spreadOf(part: HandPart): number {
  const boxes = handMadeBoxes.map((box) =>
    box.name === "free" ? { ...box, exchange: { ...box.exchange, litresPerHour: 20 } } : box,
  );
  const alone = (warmer: number) => {
    const lots = [simulated(part, lotOf(part).grams / 1000, warmer)];
    return simulate({ room, boxes, horizonDays: handMadeHousehold.days, lots }).lots[0]!;
  };
  const life = (warmer: number): number => alone(warmer).endDay;
  const produce = produceFromCommodity(kindOf(part));
  const { ripening } = produce;
  // Fruit that gets over-ripe rests on its days to ripen and stay ripe; nothing here is ended by cold, sprouts or light.
  const ripeTime =
    alone(0).endedBy === "over-ripeness" && ripening
      ? ripening.daysAt20 * (1 - ripening.arrives) + ripening.ripeLifeDays
      : produce.storageLifeDays;
  const published = lotOf(part).form === "cut" ? produce.cutLifeDaysAt5 : ripeTime;
  return lifeSpread({
    biology: produce.lifeSpread,
    temperatureSpread: 1,
    temperatureSlope: Math.log(life(1) / life(-1)) / 2,
    spent: 0,
    spentSpread: usualSpentSpread,
    carried: Math.abs(Math.log(life(0) / published)),
  });
}

const portionsOf = ({ eaten, left = 0 }: HandPart): number =>
  Object.values(eaten).reduce((total, portions) => total + portions, left);

function stays(part: HandPart, starts: readonly number[]): PlannedLot["stays"] {
  // A move when ripe is dated on the first whole day it is ripe.
  const begins = (index: number): number =>
    part.stays[index - 1]?.untilRipe ? Math.ceil(starts[index]!) : starts[index]!;
  return part.stays.map(({ place, wrap, untilRipe }, index) => ({
    place,
    placeKind: kindOfPlace[place],
    wrap,
    from: addDays(from, begins(index)),
    fromDay: starts[index]!,
    ...(untilRipe && {
      to: addDays(from, begins(index + 1)),
      toDay: starts[index + 1]!,
      moveWhen: "ripe" as const,
    }),
  }));
}

/** Cut melon and tomato held cold may be eaten for six days after the first, and no life is told past that. */
function lifeOf(part: HandPart, { early, middle, late }: Record<"early" | "middle" | "late", number>) {
  const byQuality = { early, middle, late, unit: "d" as const };
  if (lotOf(part).form !== "cut") return { life: byQuality };
  const life = {
    early: Math.min(early, 6),
    middle: Math.min(middle, 6),
    late: Math.min(late, 6),
    unit: "d" as const,
  };
  return { life, ...(late > 6 && { lifeBeforeSafety: byQuality }), safeUntil: addDays(from, 6) };
}

function plannedLot(part: HandPart, outcome: LotOutcome): PlannedLot {
  const size = part.grams / portionsOf(part);
  const spread = spreadOf(part);
  const { lateShare, lateDays } = eatingHabits;
  const chance = (day: number): number => chancePastBest({ median: outcome.endDay, spread }, day);
  const quality = (day: number): number => outcome.quality[Math.min(day, 9)]!;
  const whenEaten = (day: number) => {
    const late = day + lateDays;
    const pastBest = (1 - lateShare) * chance(day) + lateShare * chance(late);
    const enjoyed =
      (1 - lateShare) * (1 - chance(day)) * quality(day) + lateShare * (1 - chance(late)) * quality(late);
    return { chancePastBest: pastBest, quality: pastBest < 1 ? enjoyed / (1 - pastBest) : 0 };
  };
  const eatOn = Object.entries(part.eaten).map(([key, portions]) => {
    const day = Number(key);
    const grams = portions * size;
    return { date: addDays(from, day), day, portions, grams, ...whenEaten(day) };
  });
  // Cut melon and tomato held cold may be eaten for six days; anything left of them on day 11 is thrown away.
  const left = { chancePastBest: lotOf(part).form === "cut" ? 1 : chance(11), quality: outcome.quality[9]! };
  const leftPortions = part.left ?? 0;
  const waste = eatOn.reduce(
    (total, meal) => total + meal.grams * meal.chancePastBest,
    leftPortions * size * left.chancePastBest,
  );
  const extraRoom = {
    none: 0,
    "paper bag": 0.3,
    "perforated bag": 0.15,
    "lidded box": 0.4,
    "glass of water": 1,
  };
  const { wrap } = part.stays[0]!;
  return {
    id: part.id,
    lot: part.lot,
    commodity: lotOf(part).commodity,
    grams: part.grams,
    litres:
      (part.grams / kindOf(part).household.bulkDensity.value) *
      (1 + extraRoom[wrap as keyof typeof extraRoom]),
    ripeness: ripenessOnArrival[lotOf(part).commodity] ?? 1,
    form: lotOf(part).form === "cut" ? "cut" : "whole",
    tops: false,
    washed: part.lot === "spinach",
    preparation: preparations[part.lot] ?? [],
    stays: stays(part, outcome.stayStarts),
    ...lifeOf(part, lifeRange({ median: outcome.endDay, spread })),
    endedBy: outcome.endedBy,
    readyOnDay: Math.ceil(outcome.ripeDay),
    eatOn,
    leftPortions,
    expectedWaste: { value: waste, unit: "g" },
    conditions: { temperature: 4, relativeHumidity: 80, ethylene: 0.1 },
    bestLife: { value: outcome.endDay * 1.25, unit: "d" },
    ifLeft: left,
  };
}

/** Counted by hand: spinach and two avocados bagged, melon and tomato boxed, a herb in water; one move, one split, two preparations. */
const effort =
  weights.wrap["perforated bag"] +
  weights.wrap["paper bag"] +
  2 * weights.wrap["lidded box"] +
  weights.wrap["glass of water"] +
  weights.move +
  weights.split +
  weights.leavesOff +
  weights.drying;
/** Carrots (640 g) lie with apples, which give them their smell, and give it to the dairy of the refrigerator too. */
const smell = (640 + weights.dairyGrams) * weights.smellTaken;

function objectiveOf(lots: readonly PlannedLot[]): Plan["objective"] {
  let waste = 0;
  let quality = smell;
  let lifeLost = 0;
  for (const lot of lots) {
    waste += lot.expectedWaste.value;
    const size =
      lot.grams / (lot.leftPortions + lot.eatOn.reduce((total, { portions }) => total + portions, 0));
    for (const meal of lot.eatOn) {
      quality += weights.qualityLost * meal.grams * (1 - meal.chancePastBest!) * (1 - meal.quality!);
      // Every middle life is 1 / 1.25 of the best, so a fifth is lost.
      lifeLost += meal.grams * weights.lifeLostEaten * 0.2;
    }
    const left = lot.leftPortions * size;
    quality += weights.qualityLost * left * (1 - lot.ifLeft!.chancePastBest) * (1 - lot.ifLeft!.quality);
    lifeLost += left * (weights.lifeLostLeft * 0.2 + weights.uneatenLeft);
  }
  return {
    waste,
    qualityLost: quality,
    lifeLost,
    effort,
    overflow: 0,
    wishesMissed: 0,
    total: waste + quality + lifeLost + effort,
  };
}

/** Most litres by place, by hand: on the shelf the first day (cut fruit and herb); two avocados later are less. */
function litresTaken(place: string, lots: readonly PlannedLot[]): number {
  const there = lots.filter((lot) => lot.stays[0]!.place === place);
  return there.reduce((total, lot) => total + lot.litres, 0);
}

/** A valid plan made by hand: arrangement and meals are written down, lives and chances come from the simulation. */
export function handMadePlan(): Plan {
  const outcome = outcomes();
  const lots = handMadeParts.map((part, index) => plannedLot(part, outcome.lots[index]!));
  const mean = (values: readonly number[]): number =>
    values.reduce((total, value) => total + value, 0) / values.length;
  const objective = objectiveOf(lots);
  return {
    version: 1,
    units: planUnits,
    seed: 1,
    from,
    days: 9,
    kitchen: handMadeKitchen.name,
    household: { people: 2, portionsPerPersonPerDay: 3, daysAway: [3] },
    vents: [
      { place: "free", setting: "open" },
      { place: "stuck", setting: "closed" },
    ],
    places: handMadeKitchen.places.map(({ id, name, kind, litres, temperature }) => {
      const box = boxOf[id as keyof typeof boxOf];
      return {
        place: id,
        name,
        placeKind: kind,
        litres,
        litresTaken: litresTaken(id, lots),
        temperature,
        relativeHumidity: 80,
        ethylene: box === "room" ? 0.02 : mean(outcome.boxes[box]!.ethylene),
      };
    }),
    lots,
    expectedWaste: { value: objective.waste, unit: "g" },
    unsorted: { expectedWaste: { value: objective.waste, unit: "g" }, objective },
    objective,
    overflow: [],
    cautions: ["cut-produce", "local"],
  };
}
