import { addDays } from "@keepwright/quantities";
import type { PlannedLot } from "../problem/plan.js";
import { type PlanFault, unless } from "./fault.js";
import { kindOf, lotOf, portionsOf, type Subject } from "./subject.js";

/** Portions in one whole piece; 1 where pieces are small, unknown, cut already or broken off rather than cut. */
function portionsInPiece(subject: Subject, part: PlannedLot): number {
  const { grams, pieces, form, carried } = lotOf(subject, part);
  const { portion, units } = kindOf(subject, part).household;
  if (form === "cut" || units.some(({ name }) => name === "clove" || name === "stalk")) return 1;
  if (carried) return carried.splitUnit;
  return pieces === undefined ? 1 : Math.max(1, Math.round(grams / pieces / portion.value));
}

/** What a part should tell of the pieces it has begun, portion by portion. */
function expected(subject: Subject, part: PlannedLot): string[] {
  const size = portionsInPiece(subject, part);
  if (size === 1) return [];
  const { plan, catalogue } = subject;
  const limited = kindOf(subject, part).cut.timeTemperatureControl.value;
  const kept = catalogue.safety.get("cut-ready-to-eat-days")!.value;
  const days = [
    ...part.eatOn.flatMap(({ day, portions }) => new Array<number>(portions).fill(day)),
    ...new Array<number>(part.leftPortions).fill(plan.days),
  ];
  const told: string[] = [];
  for (let first = 0; first < portionsOf(part); first += size) {
    const [opened, ...others] = days.slice(first, first + size);
    if (opened === undefined || opened >= plan.days || others.every((day) => day === opened)) continue;
    const last = addDays(plan.from, opened + kept - 1);
    const late = others.filter((day) => day >= opened + kept).length;
    told.push(
      limited
        ? `${addDays(plan.from, opened)} until ${last}, ${late} after`
        : `${addDays(plan.from, opened)}, 0 after`,
    );
  }
  return told;
}

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
    const named = wanted === "none" || subject.plan.cautions.includes("cut-produce");
    return [
      ...unless(told === wanted, "safety limit", `${part.id} cut open`, told, wanted),
      ...unless(named, "cautions", part.id, "not given", "cut-produce"),
    ];
  });
