import { folded } from "@keepwright/catalogue";
import type { BoundLot } from "../problem/bindHaul.js";
import type { BoundPlace } from "../problem/bindKitchen.js";
import { type FindingValues, told } from "../problem/findingCode.js";
import type { Finding } from "../problem/inputError.js";
import type { Problem } from "../problem/problem.js";
import type { Programme, ProgrammeStay } from "../problem/programme.js";
import { shownValue } from "../problem/schemaFindings.js";
import { stillRipens } from "../search/candidates.js";
import type { PlacedLot } from "./arrangement.js";
import { lotToName } from "./namedLots.js";

/** A place by its id, else by its name, whatever its case and accents; undefined when there is none. */
export const placeNamed = ({ places }: Problem, name: string): BoundPlace | undefined =>
  places.find(({ place }) => place.id === name) ??
  places.find(({ place }) => folded(place.name) === folded(name));

/** What to say of a place that is not there. */
export const unknownPlace = ({ places }: Problem, thing: string, name: string, lot = name): Finding => ({
  ...told("no such place", {
    lot: shownValue(lot),
    place: shownValue(name),
    places: places.map(({ place }) => ({ id: place.id, name: place.name })),
  }),
  thing,
  value: `place ${shownValue(name)} is not in the kitchen`,
  remedy: `Name one of: ${places.map(({ place }) => `${shownValue(place.id)} (${place.name})`).join(", ")}.`,
});

const dayFinding = (
  thing: string,
  value: string,
  days: number,
  code: "day of move not given" | "day of move too late",
  values: FindingValues,
): Finding => ({
  ...told(days > 1 ? code : "no day to move on", { ...values, last: days - 1 }),
  thing,
  value,
  remedy:
    days > 1
      ? `Give "day", a whole number from 1 to ${days - 1}: days after the first.`
      : `Leave out "later": only one day is looked at.`,
});

/** What is wrong with a later stay, apart from its place. */
function laterProblems(problem: Problem, lot: BoundLot, placed: PlacedLot, thing: string): Finding[] {
  const { later } = placed;
  const { days } = problem.household;
  const lotNamed = lotToName(lot);
  if (later === undefined) return [];
  if (later.moveWhen === "ripe") {
    const ripens = lot.produce.ripening !== undefined && !lot.form.cut;
    const vain = {
      thing,
      value: `it is to move when ripe, but it does not ripen once ${lot.form.cut ? "cut" : "picked"}`,
      remedy: `Give a day ("moveWhen": "day", "day": 2), or leave out "later".`,
      ...told("moves when ripe in vain", { lotNamed }),
    };
    const both = {
      thing,
      value: `"day" stands beside "moveWhen": "ripe"`,
      remedy: `Take out "day".`,
      ...told("day beside when ripe", { lotNamed }),
    };
    return [...(ripens ? [] : [vain]), ...(later.day === undefined ? [] : [both])];
  }
  if (later.day === undefined)
    return [dayFinding(thing, "the day it moves is not given", days, "day of move not given", { lotNamed })];
  if (later.day < days) return [];
  const value = `day ${later.day} is not before day ${days}, the end of what is looked at`;
  return [dayFinding(thing, value, days, "day of move too late", { lotNamed, asked: later.day, days })];
}

/** What is said to have been done to a lot that cannot have been. */
function doneProblems(lot: BoundLot, { done }: PlacedLot, thing: string): Finding[] {
  const { form } = lot;
  const vain = done.filter((name) => (name === "twist off leaves" ? !form.tops : !form.wet));
  return vain.map((name) => ({
    thing,
    value: `${shownValue(name)} is said to be done, but it came ${name === "dry well" ? "dry" : "without leaves to twist off"}`,
    remedy: `Take it out of "done".`,
    ...told("done but not needed", { lotNamed: lotToName(lot), done: shownValue(name) }),
  }));
}

/** Everything that is wrong with how one lot is said to lie. */
export function stayProblems(problem: Problem, lot: BoundLot, placed: PlacedLot, thing: string): Finding[] {
  const names = [placed.place, ...(placed.later ? [placed.later.place] : [])];
  return [
    ...names
      .filter((name) => !placeNamed(problem, name))
      .map((name) => unknownPlace(problem, thing, name, placed.lot)),
    ...laterProblems(problem, lot, placed, thing),
    ...doneProblems(lot, placed, thing),
  ];
}

/** How one lot lies, once nothing is wrong with it. What is ripe already lies at once where it was to go when ripe. */
export function programmeOf(problem: Problem, lot: BoundLot, placed: PlacedLot): Programme {
  const { place, wrap, later, done } = placed;
  const stay = (name: string, how: PlacedLot["wrap"], until: ProgrammeStay["until"]): ProgrammeStay => ({
    place: placeNamed(problem, name)!.index,
    wrap: how,
    until,
  });
  const first = (until: ProgrammeStay["until"]) => stay(place, wrap, until);
  const last = later && stay(later.place, later.wrap, "never");
  const stays = !last
    ? [first("never")]
    : later.moveWhen === "day"
      ? [first({ day: later.day! }), last]
      : stillRipens(lot)
        ? [first("ripe"), last]
        : [last];
  return { leavesOff: done.includes("twist off leaves"), dried: done.includes("dry well"), stays };
}
