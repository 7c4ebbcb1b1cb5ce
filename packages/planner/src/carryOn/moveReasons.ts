import type { Part } from "../problem/programme.js";
import { presentProgrammes } from "../search/candidates.js";
import { type Evaluation, evaluatePrepared } from "../search/evaluate.js";
import { type AskedPart, movedByHand, worthNaming } from "./askedPart.js";
import type { ChangeReason, LotChange } from "./carriedOn.js";

const indexOf = ({ prepared, id }: AskedPart): number =>
  prepared.problem.lots.findIndex(({ lot }) => lot.id === id);

/** Places in the new choice's list of parts that belong to it. */
const partsOf = (asked: AskedPart): number[] => {
  const lot = indexOf(asked);
  return asked.evaluation.choice.parts.flatMap((one, index) => (one.lot === lot ? [index] : []));
};

/** Whether it stays as it lies, moves now as was foreseen, or moves (or is wrapped anew) though it was not to. */
export function staying(asked: AskedPart): "stays" | "moves as planned" | "moves" {
  const { lies, remainder } = asked.prepared.problem.lots[indexOf(asked)]!.carried!;
  const firsts = partsOf(asked).map((part) => asked.evaluation.choice.parts[part]!.programme.stays[0]!);
  const at = (here: { place: number; wrap: string }) => (first: { place: number; wrap: string }) =>
    first.place === here.place && first.wrap === here.wrap;
  if (firsts.every(at(lies))) return "stays";
  const foreseen = firsts.every((first) => at(lies)(first) || remainder.some((stay) => at(stay)(first)));
  return foreseen ? "moves as planned" : "moves";
}

/** The new plan with a lot left as it lies; none where it may not lie so. */
function ifLeft(asked: AskedPart): Evaluation | undefined {
  const { prepared, evaluation } = asked;
  const index = indexOf(asked);
  const lot = prepared.problem.lots[index]!;
  const ways = presentProgrammes(prepared.problem, lot);
  const others = evaluation.choice.parts.filter((part) => part.lot !== index);
  const tried = ways.map((programme) => {
    const whole: Part = { lot: index, portions: lot.portions, programme };
    const parts = [...others, whole].sort((a, b) => a.lot - b.lot);
    return evaluatePrepared(prepared, { ...evaluation.choice, parts });
  });
  return tried.sort((a, b) => a.objective.total - b.objective.total)[0];
}

const worth = (days: number, life: number): boolean =>
  days >= Math.max(worthNaming.days, worthNaming.share * life);

function lifeIn({ choice, outcomes }: Evaluation, lot: number): number {
  const ends = choice.parts.flatMap((part, index) => (part.lot === lot ? [outcomes[index]!.endDay] : []));
  return Math.min(...ends);
}

/** First whole day on which all of a lot is ready to eat; Infinity where some of it never is. */
const readyDay = ({ choice, costs }: Evaluation, lot: number): number =>
  Math.max(...choice.parts.flatMap((part, index) => (part.lot === lot ? [costs[index]!.readyDay] : [])));

/** Quality [0…1] by which eating is noticeably better. Declared. */
const betterEating = 0.05;

/** Mean quality of what is eaten or left of a lot when it is. */
function qualityOf({ choice, costs, eating }: Evaluation, lot: number): number {
  let [sum, portions] = [0, 0];
  choice.parts.forEach((part, index) => {
    if (part.lot !== lot) return;
    const { quality, qualityLeft } = costs[index]!;
    portions += part.portions;
    sum += eating.left[index]! * qualityLeft;
    eating.eaten[index]!.forEach((count, day) => {
      sum += count * quality[day]!;
    });
  });
  return sum / portions;
}

const newLotsIn = ({ carrying, plan }: AskedPart, place: string): string[] =>
  carrying.now.newLots.filter((id) =>
    plan.lots.some((part) => part.lot === id && part.stays[0]!.place === place),
  );

/** Days its life is shortened by what came home, where it lies; found by leaving that out of the simulation. */
function harmOfNew(asked: AskedPart, left: Evaluation): { days: number; lots: string[] } {
  const { prepared, carrying } = asked;
  const fresh = new Set(carrying.now.newLots);
  const index = indexOf(asked);
  const isNew = (part: Part) => fresh.has(prepared.problem.lots[part.lot]!.lot.id);
  const parts = left.choice.parts.filter((part) => !isNew(part));
  if (parts.length === left.choice.parts.length) return { days: 0, lots: [] };
  const { lots } = prepared.simulate({ ...left.choice, parts });
  const without = lots[parts.findIndex((part) => part.lot === index)]!.endDay;
  return { days: without - lifeIn(left, index), lots: carrying.now.newLots.slice() };
}

/** Whether it would not have fitted in a place while what has been eaten since lay there. */
function roomIsNew({ carrying, plan, id }: AskedPart, place: string): boolean {
  const before = carrying.previous.plan.places.find((one) => one.place === place);
  const litres = plan.lots.filter(({ lot }) => lot === id).reduce((sum, part) => sum + part.litres, 0);
  return before !== undefined && before.litresTaken + litres > before.litres;
}

function reasons(asked: AskedPart, left: Evaluation): ChangeReason[] {
  const { prepared, evaluation, plan, id } = asked;
  const index = indexOf(asked);
  const { lies } = prepared.problem.lots[index]!.carried!;
  const here = prepared.problem.places[lies.place]!;
  const to = plan.lots.find(({ lot }) => lot === id)!.stays[0]!.place;
  const found: ChangeReason[] = [];
  if (left.over[lies.place]! > evaluation.over[lies.place]!) {
    found.push({ because: "room taken", place: here.place.id, lots: newLotsIn(asked, here.place.id) });
  }
  const harm = harmOfNew(asked, left);
  if (worth(harm.days, lifeIn(left, index))) found.push({ because: "beside", ...harm });
  const longer = lifeIn(evaluation, index) - lifeIn(left, index);
  if (worth(longer, lifeIn(left, index))) found.push({ because: "lasts longer there", days: longer });
  if (readyDay(evaluation, index) < readyDay(left, index)) found.push({ because: "ripens there" });
  if (qualityOf(evaluation, index) > qualityOf(left, index) + betterEating)
    found.push({ because: "eats better there" });
  if (to !== here.place.id && roomIsNew(asked, to)) found.push({ because: "room free", place: to });
  return found;
}

/** Why a lot moves though it was not to, and what the plan would lose if it stayed. */
export function whyMoved(asked: AskedPart): Pick<LotChange, "gain" | "reasons"> {
  const byHand: ChangeReason[] = movedByHand(asked) ? [{ because: "moved by hand" }] : [];
  const left = ifLeft(asked);
  if (!left) return { reasons: [...byHand, { because: "may not stay" }] };
  const value = left.objective.total - asked.evaluation.objective.total;
  const gain = { value, unit: "g" as const };
  const found = [...byHand, ...reasons(asked, left)];
  return { gain, reasons: found.length > 0 ? found : [{ because: "better for the rest", gain }] };
}
