import type { Plan, PlannedLot } from "../problem/plan.js";
import { breaksApart } from "../rules/cutOpen.js";
import type { Evaluation } from "../search/evaluate.js";
import type { Prepared } from "../search/prepare.js";
import type { CarriedOn, LotChange } from "./carriedOn.js";
import type { Carrying } from "./carryOn.js";
import { dayReasons, fateReasons } from "./dayReasons.js";
import { staying, whyMoved } from "./moveReasons.js";
import type { Previous } from "./previous.js";
import { waysGone } from "./remaining.js";

type Meals = LotChange["meals"]["now"];
type Lies = NonNullable<LotChange["from"]>;

/** Meals of some parts of a plan from a day on, counted from that day. */
function mealsOf(parts: readonly PlannedLot[], from: number): Meals {
  const byDay = new Map<number, number>();
  for (const { day, portions } of parts.flatMap(({ eatOn }) => eatOn)) {
    if (day >= from) byDay.set(day - from, (byDay.get(day - from) ?? 0) + portions);
  }
  return [...byDay].sort(([a], [b]) => a - b).map(([day, portions]) => ({ day, portions }));
}

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Whether its safe time was over before the plan begins: nothing else is told of it. */
const isPast = ({ safeUntil }: PlannedLot): boolean => safeUntil === "past";

const firstOf = ({ stays }: PlannedLot): Lies => ({ place: stays[0]!.place, wrap: stays[0]!.wrap });

/** The same plan, nothing changed: it is carried on on its own first day and nothing happened. */
export function unchanged({ plan, haul }: Previous): CarriedOn {
  return {
    version: 1,
    plan,
    haul,
    elapsed: 0,
    changes: plan.lots.map((part) => ({
      lot: part.lot,
      part: part.id,
      commodity: part.commodity,
      change: isPast(part) ? "throw away" : "stays",
      from: firstOf(part),
      to: isPast(part) ? [] : [firstOf(part)],
      meals: { before: mealsOf([part], 0), now: mealsOf([part], 0) },
      reasons: [],
    })),
    vents: [],
    begun: [],
    takenAsCut: [],
  };
}

/** What is said to have left a part otherwise than by being eaten. */
function takenOf({ remaining }: Carrying, part: number): Pick<LotChange, "taken"> {
  const { gone } = remaining[part]!;
  const taken = (["given away", "frozen", "thrown out"] as const)
    .filter((way) => gone[way] > 0)
    .map((way) => ({ way, grams: { value: gone[way], unit: "g" as const } }));
  return taken.length > 0 ? { taken } : {};
}

/** What was to happen to a part, and what does. */
function changeOfPart(
  carrying: Carrying,
  prepared: Prepared,
  evaluation: Evaluation,
  plan: Plan,
  part: number,
): LotChange {
  const { previous, now, day, remaining, past } = carrying;
  const before = previous.plan.lots[part]!;
  const id = now.lotOfPart[part];
  const meals = { before: mealsOf([before], day), now: [] as Meals };
  const { place, wrap } = past.parts[part]!.lies;
  const from: Lies = { place: previous.problem.places[place]!.place.id, wrap };
  const common = { part: before.id, commodity: before.commodity, from, ...takenOf(carrying, part) };
  if (id === undefined) {
    const { gone } = remaining[part]!;
    // The rest was eaten before: what was thrown out, frozen or given away was the last of it.
    const last = waysGone.findLast((way) => gone[way] > 0) ?? "eaten";
    return { ...common, change: "gone", to: [], meals, reasons: [{ because: last }] };
  }
  const parts = plan.lots.filter(({ lot }) => lot === id);
  if (parts.every(isPast)) return { ...common, lot: id, change: "throw away", to: [], meals, reasons: [] };
  const to = parts.map(firstOf);
  meals.now = mealsOf(parts, 0);
  const asked = { carrying, prepared, evaluation, plan, part, id };
  const kept = { ...common, lot: id, to, meals };
  const how = staying(asked);
  if (how === "moves") return { ...kept, change: "moves", ...whyMoved(asked) };
  const fate = fateReasons(asked);
  if (how === "moves as planned") return { ...kept, change: how, reasons: fate };
  if (same(meals.before, meals.now)) return { ...kept, change: "stays", reasons: [] };
  return { ...kept, change: "other days", reasons: fate.length > 0 ? fate : dayReasons(asked, meals) };
}

function changeOfNew({ happened }: Carrying, plan: Plan, id: string, index: number): LotChange {
  const parts = plan.lots.filter(({ lot }) => lot === id);
  const past = parts.every(isPast);
  const { meant, commodity } = happened.cameHome[index]!;
  const kinds = meant?.kinds.filter((kind) => kind !== commodity) ?? [];
  const otherKinds = meant ? [{ because: "usual kind" as const, word: meant.word, kinds }] : [];
  return {
    lot: id,
    commodity: parts[0]!.commodity,
    change: past ? "throw away" : "new",
    to: past ? [] : parts.map(firstOf),
    meals: { before: [], now: mealsOf(parts, 0) },
    reasons: [{ because: "came home" }, ...otherKinds],
  };
}

function ventChanges({ problem }: Prepared, { choice }: Evaluation): CarriedOn["vents"] {
  return choice.vents.flatMap((setting, vent) => {
    const stood = problem.standing?.vents[vent];
    const { id } = problem.places[problem.vents[vent]!]!.place;
    return stood === undefined || stood === setting ? [] : [{ place: id, from: stood, to: setting }];
  });
}

/** Lots in pieces of several portions of which a piece has been begun, but for those that come apart by hand: nobody said that it is cut, and the plan takes it for whole. */
function begun({ previous, now, remaining }: Carrying, plan: Plan): string[] {
  return now.lotOfPart.flatMap((id, part) => {
    const planned = previous.plan.lots[part]!;
    const lot = previous.problem.lots.find((one) => one.lot.id === planned.lot)!;
    const whole = now.haul.lots.find((one) => one.id === id)?.form === "whole";
    const kept = plan.lots.some((one) => one.lot === id && !isPast(one));
    return kept && whole && !breaksApart(lot) && remaining[part]!.portions % lot.splitUnit !== 0 ? [id!] : [];
  });
}

/** What was begun, cut on a day that is not told, or lay nobody says where, with the day it is taken to be cut. */
const takenAsCut = ({ bound, now }: Carrying): CarriedOn["takenAsCut"] =>
  bound.takenAsCut.flatMap(({ part, ...why }) => {
    const lot = now.lotOfPart[part];
    const { said } = bound.happenings.findLast(
      ({ parts, cutDay }) => parts.includes(part) && cutDay !== undefined,
    )!;
    return lot === undefined ? [] : [{ lot, date: said.cut!, ...why }];
  });

/** What changed against the earlier plan, and why, lot by lot in the order of the earlier plan, then what came home. */
export function changesOf(
  carrying: Carrying,
  prepared: Prepared,
  evaluation: Evaluation,
  plan: Plan,
): Pick<CarriedOn, "changes" | "vents" | "begun" | "takenAsCut"> {
  const old = carrying.previous.plan.lots.map((_, part) =>
    changeOfPart(carrying, prepared, evaluation, plan, part),
  );
  return {
    changes: [...old, ...carrying.now.newLots.map((id, index) => changeOfNew(carrying, plan, id, index))],
    vents: ventChanges(prepared, evaluation),
    begun: begun(carrying, plan),
    takenAsCut: takenAsCut(carrying),
  };
}
