import type { Lot } from "../problem/lot.js";
import { alike, type PlanFault, sum, unless } from "./fault.js";
import { comesWet } from "./replay.js";
import { kindOf, lotOf, partsOf, portionsOf, type Subject } from "./subject.js";

/** Pieces that are portions of their own (or several) are not cut to split a lot: grams of one, or nothing where that does not bind. */
function gramsOfPiece(lot: Lot, portion: number): number | undefined {
  if (lot.carried) return (lot.carried.splitUnit * lot.grams) / lot.carried.portions;
  if (lot.pieces === undefined || lot.form === "cut") return undefined;
  const piece = lot.grams / lot.pieces;
  return piece >= portion ? piece : undefined;
}

/** Portions a whole lot is eaten in: whole portions of the kind's size; whole portions a piece where a piece is at least one. */
function portionsExpected({ pieces, grams, carried }: Lot, portion: number): number {
  if (carried) return carried.portions;
  if (pieces !== undefined && grams / pieces >= portion) return pieces * Math.round(grams / pieces / portion);
  return Math.max(1, Math.round(grams / portion));
}

/** Every gram of every lot is in one of its parts, no more and no less; no part is empty; pieces stay whole. */
export const grams = (subject: Subject): PlanFault[] =>
  subject.haul.lots.flatMap((lot) => {
    const parts = partsOf(subject, lot);
    const total = sum(parts.map((part) => part.grams));
    const piece = gramsOfPiece(lot, kindOf(subject, lot).household.portion.value);
    return [
      ...unless(alike(total, lot.grams), "grams", lot.id, total, lot.grams, "g"),
      ...parts.flatMap((part) => [
        ...unless(part.grams > 0, "grams", part.id, part.grams, "more than 0", "g"),
        ...(piece === undefined
          ? []
          : unless(
              alike(part.grams / piece, Math.round(part.grams / piece)),
              "pieces",
              part.id,
              part.grams / piece,
              "a whole number",
              "pieces",
            )),
      ]),
    ];
  });

/** Portions eaten and left over are whole, are those of the lot, and are all of one size. */
export const portions = (subject: Subject): PlanFault[] =>
  subject.haul.lots.flatMap((lot) => {
    const parts = partsOf(subject, lot);
    const expected = portionsExpected(lot, kindOf(subject, lot).household.portion.value);
    const size = lot.grams / expected;
    const counted = sum(parts.map(portionsOf));
    return [
      ...unless(counted === expected, "portions", lot.id, counted, expected, "portions"),
      ...parts.flatMap((part) => [
        ...unless(
          alike(portionsOf(part) * size, part.grams),
          "portions",
          part.id,
          portionsOf(part),
          part.grams / size,
          "portions",
        ),
        ...unless(
          part.leftPortions >= 0,
          "portions",
          `${part.id} left`,
          part.leftPortions,
          "at least 0",
          "portions",
        ),
        ...part.eatOn.flatMap((meal) => [
          ...unless(
            meal.portions > 0,
            "portions",
            `${part.id} day ${meal.day}`,
            meal.portions,
            "more than 0",
            "portions",
          ),
          ...unless(
            alike(meal.grams, meal.portions * size),
            "portions",
            `${part.id} day ${meal.day}`,
            meal.grams,
            meal.portions * size,
            "g",
          ),
        ]),
      ]),
    ];
  });

/** Ripeness for each word, restated from the meaning of the scale: 0 mature but unripe, 1 ready, 2 over-ripe, and the middles. */
const ripenessFor = { unripe: 0, turning: 0.5, ripe: 1, "very ripe": 1.5 };

function ripenessExpected(lot: Lot, arrives: number | undefined): number {
  if (arrives === undefined) return 1;
  if (lot.carried) return lot.carried.state.ripeness;
  if (typeof lot.ripeness === "number") return lot.ripeness;
  if (lot.ripeness !== undefined) return ripenessFor[lot.ripeness];
  return lot.form === "cut" ? Math.max(1, arrives) : arrives;
}

/** All that may still have to be done to what an earlier plan put away. */
const stillToDo = ["twist off leaves", "dry well"];

/** A part is in the state its lot came home in, or that an earlier plan left it in; leaves may only come off, never on. */
export const stateOnArrival = (subject: Subject): PlanFault[] =>
  subject.plan.lots.flatMap((part) => {
    const lot = lotOf(subject, part);
    const ripeness = ripenessExpected(lot, kindOf(subject, part).ripening?.arrives.value);
    const leavesOff = lot.tops && !part.tops;
    const told = part.preparation.includes("twist off leaves");
    const dried = part.preparation.includes("dry well");
    const again = lot.carried ? part.preparation.filter((name) => !stillToDo.includes(name)) : [];
    return [
      ...unless(again.length === 0, "preparation", part.id, again.join(", "), "nothing done before"),
      ...unless(comesWet(subject, part) || !dried, "preparation", part.id, "dry well", "nothing wet to dry"),
      ...unless(part.form === lot.form, "state on arrival", part.id, part.form, lot.form),
      ...unless(
        part.washed === lot.washed,
        "state on arrival",
        part.id,
        `washed ${part.washed}`,
        `washed ${lot.washed}`,
      ),
      ...unless(
        alike(part.ripeness, ripeness),
        "state on arrival",
        part.id,
        part.ripeness,
        ripeness,
        "ripeness",
      ),
      ...unless(lot.tops || !part.tops, "state on arrival", part.id, "with leaves", "without leaves"),
      ...unless(
        leavesOff === told,
        "preparation",
        part.id,
        told ? "twist off leaves" : "leaves left on",
        leavesOff ? "twist off leaves" : "no leaves to twist off",
      ),
    ];
  });
