import { addDays } from "@keepwright/quantities";
import type { PlannedLot } from "../problem/plan.js";
import { eatingHabits } from "../rules/weights.js";
import { type PlanFault, unless } from "./fault.js";
import { daysAllowed } from "./safety.js";
import { kindOf, lotOf, portionsOf, type Subject } from "./subject.js";

/** Portions in one whole piece; 1 where pieces are small, unknown, cut already or broken off rather than cut. */
function portionsInPiece(subject: Subject, part: PlannedLot): number {
  const { grams, pieces, form, carried } = lotOf(subject, part);
  const { portion, units } = kindOf(subject, part).household;
  if (form === "cut" || units.some(({ name }) => name === "clove" || name === "stalk")) return 1;
  if (carried) return carried.splitUnit;
  return pieces === undefined ? 1 : Math.max(1, Math.round(grams / pieces / portion.value));
}

/** Days after that of cutting on which the kitchen still keeps it, in whichever place keeps it longest; Infinity where no limit binds. */
const daysKept = (subject: Subject, part: PlannedLot): number =>
  subject.kitchen.places.reduce(
    (most, { id }) => Math.max(most, Math.floor(daysAllowed(subject, part, id) + 1e-9)),
    0,
  );

/** A piece whose eating has begun: the day of each of its portions so far, and those still to eat. */
interface Opened {
  readonly days: number[];
  rest: number;
}

/** Walks through the meals portion by portion: what each piece was eaten on, and the days on which no piece was left that could be eaten. */
function walked(subject: Subject, part: PlannedLot) {
  const size = portionsInPiece(subject, part);
  const kept = daysKept(subject, part);
  const opened: Opened[] = [];
  const tooLate: number[] = [];
  let unopened = portionsOf(part);
  for (const { day, portions } of part.eatOn) {
    for (let portion = 0; portion < portions; portion++) {
      const last = opened.at(-1);
      if (last && last.rest > 0 && day - last.days[0]! <= kept) {
        last.days.push(day);
        last.rest--;
      } else if (unopened > 0) {
        opened.push({ days: [day], rest: Math.min(size, unopened) - 1 });
        unopened -= Math.min(size, unopened);
      } else tooLate.push(day);
    }
  }
  return { size, kept, opened, tooLate };
}

/** Portions of a piece that are left when it is no longer safe, by the day on which what is left over is eaten. */
const thrownOf = (subject: Subject, { days, rest }: Opened, kept: number): number =>
  days[0]! + kept < subject.plan.days - 1 + eatingHabits.leftOverDays ? rest : 0;

/** Portions left over of a part that have to be thrown away, since the piece they are of was begun too long before. */
function thrownOnceCut(subject: Subject, part: PlannedLot): number {
  const { size, kept, opened } = walked(subject, part);
  if (size === 1) return 0;
  return opened.reduce((total, piece) => total + thrownOf(subject, piece, kept), 0);
}

/** Chance of having to throw away a portion left over: for those of a piece begun too long before it is 1, for the others as given. */
export function chanceLeft(subject: Subject, part: PlannedLot, others: number): number {
  if (part.leftPortions === 0) return others;
  const gone = thrownOnceCut(subject, part) / part.leftPortions;
  return gone + (1 - gone) * others;
}

/** What a part should tell of the pieces it has begun. */
function expected(subject: Subject, part: PlannedLot): string[] {
  const { plan } = subject;
  const { size, kept, opened } = walked(subject, part);
  if (size === 1) return [];
  return opened
    .filter(({ days, rest }) => rest > 0 || days.some((day) => day !== days[0]))
    .map((piece) => {
      const day = piece.days[0]!;
      const until = Number.isFinite(kept) ? ` until ${addDays(plan.from, day + kept)}` : "";
      return `${addDays(plan.from, day)}${until}, ${thrownOf(subject, piece, kept)} after`;
    });
}

/** Nothing is eaten of a piece after the last day on which it is safe, counted from that of its first portion. */
export const eatenWhileSafe = (subject: Subject): PlanFault[] =>
  subject.plan.lots.flatMap((part) => {
    const { size, tooLate } = walked(subject, part);
    if (size === 1) return [];
    return [...new Set(tooLate)].flatMap((day) =>
      unless(false, "safety limit", `${part.id} day ${day}`, day, "the last safe day of what is begun", "d"),
    );
  });

/** Cautions that go with a piece eaten over several days. */
const cautionsFor = ({ kitchen }: Subject): string[] =>
  kitchen.places.some((place) => place.refrigerator !== undefined)
    ? ["cut-produce"]
    : ["no-refrigerator-for-cut-produce"];

/** Whole pieces that are eaten over several days are told, with the last day each is safe, and with the cautions for what is cut. */
export const cutOpen = (subject: Subject): PlanFault[] =>
  subject.plan.lots.flatMap((part) => {
    const wanted = expected(subject, part).join("; ") || "none";
    const told =
      (part.cutOpen ?? [])
        .map(({ date, safeUntil, portionsAfter }) =>
          safeUntil === undefined
            ? `${date}, ${portionsAfter} after`
            : `${date} until ${safeUntil}, ${portionsAfter} after`,
        )
        .join("; ") || "none";
    const missing =
      wanted === "none" ? [] : cautionsFor(subject).filter((name) => !subject.plan.cautions.includes(name));
    return [
      ...unless(told === wanted, "safety limit", `${part.id} cut open`, told, wanted),
      ...missing.flatMap((name) => unless(false, "cautions", part.id, "not given", name)),
    ];
  });
