import { addDays } from "@keepwright/quantities";
import type { PlannedLot } from "../problem/plan.js";
import { type PlanFault, unless } from "./fault.js";
import { kindOf, type Subject } from "./subject.js";

type Stay = PlannedLot["stays"][number];

function meets(part: PlannedLot, stay: Stay, next: Stay | undefined): PlanFault[] {
  const what = `${part.id} in ${stay.place}`;
  if (next === undefined) {
    return [
      ...unless(stay.toDay === undefined, "stays in order", what, stay.toDay ?? "", "no end", "d"),
      ...unless(
        stay.moveWhen === undefined,
        "move to somewhere",
        what,
        stay.moveWhen ?? "",
        "a place to go to",
      ),
    ];
  }
  return [
    ...unless(stay.toDay === next.fromDay, "stays in order", what, stay.toDay ?? "no end", next.fromDay, "d"),
    ...unless((stay.toDay ?? 0) >= stay.fromDay, "stays in order", what, stay.toDay ?? 0, stay.fromDay, "d"),
    ...unless(stay.moveWhen !== undefined, "stays in order", what, "no reason to move", "ripe or day"),
  ];
}

/** Stays begin on the first day, follow one another without gap or overlap, and only the last has no end. */
export const staysInOrder = ({ plan }: Subject): PlanFault[] =>
  plan.lots.flatMap((part) => [
    ...unless(part.stays[0]!.fromDay === 0, "stays in order", part.id, part.stays[0]!.fromDay, 0, "d"),
    ...part.stays.flatMap((stay, index) => [
      ...meets(part, stay, part.stays[index + 1]),
      // Only what ripens may be moved after the planned days, when it gets there.
      ...unless(
        stay.fromDay <= plan.days || part.stays[index - 1]?.moveWhen === "ripe",
        "stays in order",
        part.id,
        stay.fromDay,
        plan.days,
        "d",
      ),
    ]),
  ]);

/**
 * Dates and day numbers say the same, counted from the plan's first day; a move when ripe is dated on the first whole day it is ripe; the last
 * stay ends after its last meal or with the planned days.
 */
export const dates = ({ plan }: Subject): PlanFault[] => {
  const day = (what: string, date: string | undefined, number: number | undefined): PlanFault[] => {
    const expected = number === undefined ? undefined : addDays(plan.from, number);
    return unless(date === expected, "dates", what, date ?? "none", expected ?? "none");
  };
  const over = ({ leftPortions, eatOn }: PlannedLot): number =>
    leftPortions > 0 ? plan.days : (eatOn.at(-1)?.day ?? -1) + 1;
  const begins = ({ stays }: PlannedLot, index: number): number =>
    stays[index - 1]?.moveWhen === "ripe" ? Math.ceil(stays[index]!.fromDay) : stays[index]!.fromDay;
  const ends = (part: PlannedLot, index: number): number => {
    const { moveWhen, toDay } = part.stays[index]!;
    if (toDay === undefined) return Math.max(begins(part, index), over(part));
    return moveWhen === "ripe" ? Math.ceil(toDay) : toDay;
  };
  return plan.lots.flatMap((part) => [
    ...part.stays.flatMap((stay, index) => [
      ...day(`${part.id} to ${stay.place}`, stay.from, begins(part, index)),
      ...(index === part.stays.length - 1 && stay.to === undefined
        ? []
        : day(`${part.id} from ${stay.place}`, stay.to, ends(part, index))),
    ]),
    ...part.eatOn.flatMap((meal) => day(`${part.id} eaten`, meal.date, meal.day)),
  ]);
};

const covers: readonly Stay["wrap"][] = ["closed film bag", "lidded box", "beeswax cloth", "foil"];
const shuts: readonly Stay["wrap"][] = ["closed film bag", "lidded box", "foil"];

/** Whole fruit that ripens, and what is told to be taken out of any sealed bag. */
function breathes(subject: Subject, part: PlannedLot): boolean {
  const { ripening, preparation } = kindOf(subject, part);
  const unsealed = preparation.some((step) => step.do === "remove from sealed bag");
  return part.form === "whole" && (ripening !== undefined || unsealed);
}

const organsThatTakeDamp = ["leaf", "head", "stem", "flower", "herb", "root"];

/** A damp towel is told for whole leaves, heads, stems, flowers, herbs and roots, unless they are to be kept dry. */
function takesDamp(subject: Subject, part: PlannedLot): boolean {
  const { organ, preparation } = kindOf(subject, part);
  const dry = ["keep dry and unwashed", "remove from sealed bag"];
  return (
    part.form === "whole" &&
    organsThatTakeDamp.includes(organ) &&
    !preparation.some((step) => dry.includes(step.do))
  );
}

/**
 * Wraps are at hand in the kitchen; only what stands in water stands in a glass of water; what must breathe is not shut in; cut produce,
 * and what is sold under the same control, is covered where a cover is at hand.
 */
export const wraps = (subject: Subject): PlanFault[] => {
  const atHand = ["none", ...subject.kitchen.wraps];
  const coverAtHand = atHand.some((wrap) => covers.includes(wrap as Stay["wrap"]));
  return subject.plan.lots.flatMap((part) =>
    part.stays.flatMap(({ wrap }) => {
      const stands = part.form === "whole" && kindOf(subject, part).standsInWater?.value === true;
      const controlled = part.form === "cut" || kindOf(subject, part).controlledAsSold !== undefined;
      const bare = controlled && coverAtHand && !covers.includes(wrap);
      return [
        ...unless(!bare, "wrap suits", part.id, wrap, "a cover for what is cut or sold washed"),
        ...unless(
          !(shuts.includes(wrap) && breathes(subject, part)),
          "wrap suits",
          part.id,
          wrap,
          "a wrap that lets it breathe",
        ),
        ...unless(
          wrap !== "damp towel" || controlled || takesDamp(subject, part),
          "wrap suits",
          part.id,
          wrap,
          "a dry wrap",
        ),
        ...unless(atHand.includes(wrap), "wrap at hand", part.id, wrap, atHand.join(", ")),
        ...unless(
          wrap !== "glass of water" || stands,
          "wrap suits",
          part.id,
          wrap,
          "stems to stand in water",
        ),
      ];
    }),
  );
};

/** Each vent has one setting: a free choice where it can be set, else the one it is fixed at; no other place has any. */
export const vents = ({ plan, kitchen }: Subject): PlanFault[] =>
  kitchen.places.flatMap(({ id, vent }) => {
    const settings = plan.vents.filter(({ place }) => place === id).map(({ setting }) => setting);
    const found = settings.join(", ") || "no setting";
    if (vent === undefined) return unless(settings.length === 0, "vents", id, found, "no vent");
    if (settings.length !== 1) return unless(false, "vents", id, found, "one setting");
    return unless(vent === "choose" || settings[0] === vent, "vents", id, found, vent);
  });
