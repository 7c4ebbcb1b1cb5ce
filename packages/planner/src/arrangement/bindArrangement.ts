import type { BoundLot } from "../problem/bindHaul.js";
import { untouchedVent } from "../problem/bindKitchen.js";
import { told } from "../problem/findingCode.js";
import { ArrangementError, type Finding } from "../problem/inputError.js";
import type { VentSetting } from "../problem/kitchen.js";
import type { Problem } from "../problem/problem.js";
import type { Choice, Part } from "../problem/programme.js";
import { shownValue } from "../problem/schemaFindings.js";
import type { Arrangement, PlacedLot } from "./arrangement.js";
import { placeNamed, programmeOf, stayProblems, unknownPlace } from "./bindStays.js";
import { lotToName, namedLots } from "./namedLots.js";

/** An arrangement in terms of the problem: what it says is fixed, and vents are as found; other lots are free. */
export interface BoundArrangement {
  /** Parts of each lot it mentions, by the lot's index. */
  readonly fixed: ReadonlyMap<number, readonly Part[]>;
  /** The setting of each vent that can be set; as nobody has touched it where it is not mentioned. */
  readonly vents: readonly VentSetting[];
  /** Which of them it mentions. */
  readonly ventsSaid: readonly boolean[];
}

const lotThing = (lot: BoundLot): string => `arrangement lot ${lotToName(lot)}`;

/** Shares within this of 1 add up to all of a lot: what rounding to hundredths leaves. */
const shareRounding = 0.01;

function shareProblems(lot: BoundLot, entries: readonly PlacedLot[]): Finding[] {
  const thing = lotThing(lot);
  const name = lotToName(lot);
  const whole = entries.filter(({ share }) => share === undefined).length;
  if (entries.length > 1 && whole > 0) {
    const remedy = `Say it once, or give each its "share", together 1.`;
    const value = `it is said ${entries.length} times where it lies`;
    return [{ thing, value, remedy, ...told("lies said twice", { lotNamed: name, times: entries.length }) }];
  }
  const sum = entries.reduce((total, { share = 1 }) => total + share, 0);
  if (Math.abs(sum - 1) > shareRounding) {
    const shown = Number(sum.toFixed(3));
    const remedy = "Say where all of it lies: the shares must add up to 1.";
    const value = `its shares add up to ${shown}`;
    return [{ thing, value, remedy, ...told("shares not whole", { lotNamed: name, sum: shown }) }];
  }
  const least = lot.splitUnit / lot.portions;
  if (portionsOf(lot, entries).some((portions) => portions === 0)) {
    const step = Number(least.toFixed(3));
    const remedy = `Give shares in steps of about ${step}, or leave it in one place.`;
    const value = "a share is less than can lie apart";
    return [{ thing, value, remedy, ...told("share too small", { lotNamed: name, step }) }];
  }
  return [];
}

/** Portions of each share, in whole pieces; together all of the lot. */
function portionsOf({ portions, splitUnit }: BoundLot, entries: readonly PlacedLot[]): number[] {
  const upTo = (count: number): number => {
    if (count === entries.length) return portions;
    const share = entries.slice(0, count).reduce((sum, entry) => sum + (entry.share ?? 1), 0);
    return Math.min(portions, Math.round((portions * share) / splitUnit) * splitUnit);
  };
  return entries.map((_, index) => upTo(index + 1) - upTo(index));
}

/** Entries by the lots they name, with everything wrong about names. */
function entriesByLot(problem: Problem, { lots }: Arrangement) {
  const entries = new Map<BoundLot, PlacedLot[]>();
  const problems: Finding[] = [];
  for (const placed of lots) {
    const named = namedLots(problem, placed.lot);
    if (!named.ok) problems.push(named.problem);
    for (const lot of named.ok ? named.lots : []) entries.set(lot, [...(entries.get(lot) ?? []), placed]);
  }
  return { entries, problems };
}

function ventProblems(problem: Problem, { vents }: Arrangement): Finding[] {
  const seen = new Set<number>();
  return vents.flatMap(({ place: name, setting }): Finding[] => {
    const thing = `arrangement vent ${shownValue(name)}`;
    const bound = placeNamed(problem, name);
    const place = shownValue(name);
    if (!bound) return [unknownPlace(problem, thing, name)];
    if (seen.has(bound.index)) {
      const remedy = "Say it once for each vent.";
      return [{ thing, value: "it is set more than once", remedy, ...told("vent set twice", { place }) }];
    }
    seen.add(bound.index);
    const fixed = bound.place.vent;
    if (bound.vent !== undefined || fixed === setting) return [];
    if (fixed === undefined) {
      const remedy = "Leave it out of the vents.";
      return [{ thing, value: "this place has no vent", remedy, ...told("place without vent", { place }) }];
    }
    const value = `the kitchen says that it is always ${fixed}, the arrangement that it is ${setting}`;
    const remedy = `Write "${fixed}", or "vent": "choose" in the kitchen file.`;
    return [{ thing, value, remedy, ...told("vent always so", { place, fixed, setting }) }];
  });
}

/** Binds an arrangement to a problem. Throws ArrangementError with everything that names what is not there or cannot be. */
export function bindArrangement(problem: Problem, arrangement: Arrangement): BoundArrangement {
  const { entries, problems } = entriesByLot(problem, arrangement);
  for (const [lot, placed] of entries) {
    problems.push(...placed.flatMap((one) => stayProblems(problem, lot, one, lotThing(lot))));
    problems.push(...shareProblems(lot, placed));
  }
  problems.push(...ventProblems(problem, arrangement));
  if (problems.length > 0) throw new ArrangementError(problems);
  const fixed = new Map(
    [...entries].map(([lot, placed]) => {
      const portions = portionsOf(lot, placed);
      const parts = placed.map(
        (one, index): Part => ({
          lot: lot.index,
          portions: portions[index]!,
          programme: programmeOf(problem, lot, one),
        }),
      );
      return [lot.index, parts] as const;
    }),
  );
  const said = problem.vents.map((index) =>
    arrangement.vents.find(({ place }) => placeNamed(problem, place)?.index === index),
  );
  return {
    fixed,
    vents: said.map((one) => one?.setting ?? untouchedVent),
    ventsSaid: said.map((one) => one !== undefined),
  };
}

/** A choice with everything the arrangement says put back as it says. */
export function asArranged({ fixed, vents }: BoundArrangement, choice: Choice): Choice {
  const free = choice.parts.filter(({ lot }) => !fixed.has(lot));
  const parts = [...free, ...[...fixed.values()].flat()].sort((a, b) => a.lot - b.lot);
  return { parts, vents };
}
