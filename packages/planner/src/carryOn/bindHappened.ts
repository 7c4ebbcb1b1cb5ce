import { calendarDate, daysBetween } from "@keepwright/quantities";
import { placeNamed, unknownPlace } from "../arrangement/bindStays.js";
import { namedLots } from "../arrangement/namedLots.js";
import { told } from "../problem/findingCode.js";
import { type Finding, HappenedError } from "../problem/inputError.js";
import type { VentSetting } from "../problem/kitchen.js";
import { shownValue } from "../problem/schemaFindings.js";
import { hasSafeTime } from "../rules/underControl.js";
import { cutUndated, type Happened, type HappenedLot } from "./happened.js";
import type { Previous } from "./previous.js";

/** Something that happened, with the parts of the plan it happened to and its days counted from the plan's first. */
export interface BoundHappening {
  readonly said: HappenedLot;
  /** How it is named in an error. */
  readonly thing: string;
  /** Parts of the plan, by their index, in the order the plan eats them. */
  readonly parts: readonly number[];
  /** Index of the place it lies in now. */
  readonly place?: number;
  readonly sinceDay?: number;
  readonly cutDay?: number;
  /** Nobody says on which day it was cut: taken for the plan's first, the earliest it can have been. */
  readonly cutUndated?: true;
}

export interface BoundHappened {
  readonly happenings: readonly BoundHappening[];
  readonly vents: ReadonlyMap<number, VentSetting>;
  readonly followed: boolean;
}

const thingOf = (name: string): string => `happened lot ${shownValue(name)}`;

/** Parts in the order their plan begins to eat them. */
function inOrder({ plan }: Previous, parts: readonly number[]): number[] {
  const begins = (part: number): number => plan.lots[part]!.eatOn[0]?.day ?? Number.POSITIVE_INFINITY;
  return [...parts].sort((a, b) => (begins(a) === begins(b) ? a - b : begins(a) - begins(b)));
}

/** Parts a name stands for: one part by its id, or all parts of the lots named. */
function partsNamed(previous: Previous, name: string): number[] | Finding {
  const { plan, problem } = previous;
  const exact = plan.lots.findIndex(({ id }) => id === name.trim());
  if (exact >= 0 && plan.lots.filter(({ lot }) => lot === name.trim()).length <= 1) return [exact];
  const named = namedLots(problem, name, "happened lot");
  if (!named.ok) return named.problem;
  const ids = new Set(named.lots.map(({ lot }) => lot.id));
  return inOrder(
    previous,
    plan.lots.flatMap((part, index) => (ids.has(part.lot) ? [index] : [])),
  );
}

/** A day counted from the plan's first, or why it cannot be. */
function dayOf({ plan }: Previous, on: string, date: string, lot: string, field: string): number | Finding {
  const thing = thingOf(lot);
  const values = { lot: shownValue(lot), field: shownValue(field), date, from: plan.from, on };
  const remedy = `Write a day from ${plan.from} to ${on}, as year-month-day.`;
  try {
    const day = daysBetween(plan.from, calendarDate(date));
    return day < 0 || day > daysBetween(plan.from, on)
      ? {
          thing,
          value: `${shownValue(field)} ${date} is not between the plan's first day and now`,
          remedy,
          ...told("day not between", values),
        }
      : day;
  } catch {
    const value = `${shownValue(field)} ${shownValue(date)} is no day of the calendar`;
    return {
      thing,
      value,
      remedy,
      ...told("day not of the calendar", { ...values, date: shownValue(date) }),
    };
  }
}

/** Cut produce that is said to lie out of the refrigerator today: its safe time is counted in hours there, which nobody should guess. */
function isLyingWarm(
  problem: Previous["problem"],
  { place, since, hoursOut }: HappenedLot,
  on: string,
  lots: readonly Previous["problem"]["lots"][number][],
  cutSince: boolean,
): boolean {
  const told = place === undefined ? undefined : placeNamed(problem, place);
  if (!told || told.cold || hoursOut !== undefined || (since !== undefined && since < on)) return false;
  return cutSince || lots.some(hasSafeTime);
}

function stateFindings(
  { problem, plan }: Previous,
  on: string,
  said: HappenedLot,
  parts: readonly number[],
  thing: string,
  cutSince: boolean,
): Finding[] {
  const lots = parts.map((part) => problem.lots.find(({ lot }) => lot.id === plan.lots[part]!.lot)!);
  const lot = shownValue(said.lot);
  const findings: Finding[] = [];
  if (said.ripeness !== undefined && lots.some(({ produce }) => !produce.ripening)) {
    const remedy = `Take "ripeness" out; say "seenGood": true where it was looked at.`;
    findings.push({
      thing,
      value: "it does not ripen once picked",
      remedy,
      ...told("does not ripen", { lot }),
    });
  }
  if (said.cut !== undefined && lots.some(({ form }) => form.cut)) {
    const remedy = `Take "cut" out: its safe time runs already.`;
    findings.push({ thing, value: "it came cut", remedy, ...told("came cut", { lot }) });
  }
  if (said.hoursOut !== undefined && !cutSince && lots.some(({ form }) => !form.cut)) {
    const remedy = `Say "cut" with the day it was cut, or take "hoursOut" out.`;
    const value = "hours out of the refrigerator count for cut produce only";
    findings.push({ thing, value, remedy, ...told("hours of what is whole", { lot }) });
  }
  if (isLyingWarm(problem, said, on, lots, cutSince)) {
    const remedy = `Say for how many hours, "hoursOut", as in: left the melon out for 1 hour; or since which day before today, "since".`;
    findings.push({
      thing,
      value: "it is cut and lies out of the refrigerator, since when is not told",
      remedy,
      ...told("warm since when", { lot }),
    });
  }
  const wraps = ["none", ...problem.kitchen.wraps];
  if (said.wrap !== undefined && !wraps.includes(said.wrap)) {
    const remedy = `Write one of: ${wraps.join(", ")}; or add it to the kitchen's wraps.`;
    const values = { lot, wrap: shownValue(said.wrap), wraps };
    findings.push({
      thing,
      value: `the kitchen has no ${shownValue(said.wrap)}`,
      remedy,
      ...told("no such wrap", values),
    });
  }
  return findings;
}

/** Cut on a day that is not told, where it lay out of the refrigerator on one it may have been: there every hour counts, so it is asked. */
function cutWarm(
  { plan, problem }: Previous,
  on: string,
  said: HappenedLot,
  parts: readonly number[],
): Finding[] {
  const until = daysBetween(plan.from, on);
  const stays = parts.flatMap((part) => plan.lots[part]!.stays).filter(({ fromDay }) => fromDay < until);
  const cold = ({ place: id }: { readonly place: string }) =>
    problem.places.some(({ place, cold }) => cold && place.id === id);
  if (until <= 0 || stays.every(cold)) return [];
  return [
    {
      thing: thingOf(said.lot),
      value: "it is cut and lay out of the refrigerator by the plan; on which day it was cut is not told",
      remedy: `Say the day, from ${plan.from} to ${on}, as in: cut the melon today, or: cut the melon yesterday.`,
      ...told("cut on which day", { lot: shownValue(said.lot), from: plan.from, on }),
    },
  ];
}

const isFinding = (one: unknown): one is Finding => typeof one === "object" && !Array.isArray(one);

function bindLot(
  previous: Previous,
  on: string,
  said: HappenedLot,
  all: readonly HappenedLot[],
): BoundHappening | Finding[] {
  const thing = thingOf(said.lot);
  const parts = partsNamed(previous, said.lot);
  if (isFinding(parts)) return [parts];
  const cutToo = all
    .filter(({ cut }) => cut !== undefined)
    .map(({ lot }) => partsNamed(previous, lot))
    .flatMap((named) => (isFinding(named) ? [] : named));
  const cutSince = parts.every((part) => cutToo.includes(part));
  const findings = stateFindings(previous, on, said, parts, thing, cutSince);
  const place = said.place === undefined ? undefined : placeNamed(previous.problem, said.place);
  if (said.place !== undefined && !place)
    findings.push(unknownPlace(previous.problem, thing, said.place, said.lot));
  const undated = said.cut === cutUndated;
  if (undated && findings.length === 0) findings.push(...cutWarm(previous, on, said, parts));
  const days = (["since", "cut"] as const).map((field) => {
    const date = said[field] === cutUndated ? previous.plan.from : said[field];
    const day = date === undefined ? undefined : dayOf(previous, on, date, said.lot, field);
    if (typeof day !== "object") return day;
    findings.push(day);
    return undefined;
  });
  if (findings.length > 0) return findings;
  return {
    said: undated ? { ...said, cut: previous.plan.from } : said,
    thing,
    parts,
    ...(undated && { cutUndated: true }),
    ...(place && { place: place.index }),
    ...(days[0] !== undefined && { sinceDay: days[0] }),
    ...(days[1] !== undefined && { cutDay: days[1] }),
  };
}

function bindVents({ problem }: Previous, { vents }: Happened) {
  const bound = new Map<number, VentSetting>();
  const findings = vents.flatMap(({ place: name, setting }): Finding[] => {
    const thing = `happened vent ${shownValue(name)}`;
    const place = placeNamed(problem, name);
    if (!place) return [unknownPlace(problem, thing, name)];
    if (place.vent === undefined) {
      const remedy = `Leave it out, or write "vent": "choose" in the kitchen file.`;
      const value = "this place has no vent that can be set";
      return [{ thing, value, remedy, ...told("vent cannot be set", { place: shownValue(name) }) }];
    }
    bound.set(place.vent, setting);
    return [];
  });
  return { bound, findings };
}

/** What came home cut, or has a safe time as it is sold and may be left of what was here before, must tell its day: taken as new, an old one would begin a new safe time. */
function undatedFindings({ problem }: Previous, { cameHome }: Happened): Finding[] {
  return cameHome.flatMap(({ commodity, form, extraDays, typed }, index): Finding[] => {
    const asSold = problem.lots.some(
      (lot) => lot.lot.commodity === commodity && lot.produce.controlledAsSold === true,
    );
    if (extraDays !== undefined || (form !== "cut" && !asSold)) return [];
    const phrase = shownValue(typed ?? commodity);
    return [
      {
        thing: `happened cameHome[${index + 1}] ${phrase}`,
        value: "it is not told how old it is, and its safe time runs",
        remedy: `Say "extraDays": days since it was cut, or since it was bought where it is sold ready to eat; 0 for today.`,
        ...told("came home without age", { phrase }),
      },
    ];
  });
}

/** Binds what happened to a plan. Throws HappenedError with everything that names what is not there or cannot have been. */
export function bindHappened(previous: Previous, on: string, happened: Happened): BoundHappened {
  const lots = happened.lots.map((said) => bindLot(previous, on, said, happened.lots));
  const vents = bindVents(previous, happened);
  const findings = [
    ...lots.flatMap((one) => (Array.isArray(one) ? one : [])),
    ...vents.findings,
    ...undatedFindings(previous, happened),
  ];
  if (findings.length > 0) throw new HappenedError(findings);
  return {
    happenings: lots.filter((one): one is BoundHappening => !Array.isArray(one)),
    vents: vents.bound,
    followed: happened.followed,
  };
}
