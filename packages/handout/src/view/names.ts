import type { Plan, PlannedLot } from "@keepwright/planner";
import { commodityIn, type HandoutContext } from "./context.js";
import { stateName } from "./kindNames.js";
import { kitchenWords } from "./ordinaryNames.js";

type Stage = "unripe" | "turning" | "nearly ripe" | "ripe" | "very ripe";

/** The word for its ripeness on arrival; undefined where ripeness does not change what is done with it. */
function stageOf(context: HandoutContext, lot: PlannedLot): Stage | undefined {
  if (!commodityIn(context, lot.commodity)?.ripening || lot.form === "cut") return undefined;
  if (lot.ripeness < 0.25) return "unripe";
  if (lot.ripeness < 0.75) return "turning";
  // Ripe is what is ready to eat, and nothing else: plans wait for ripeness 1.
  if (lot.ripeness < 1) return "nearly ripe";
  return lot.ripeness < 1.4 ? "ripe" : "very ripe";
}

/** Leaves that are twisted off first are gone by the time the lot is spoken of. */
const keepsTops = (lot: PlannedLot): boolean => lot.tops && !lot.preparation.includes("twist off leaves");

const bareName = (context: HandoutContext, lot: PlannedLot): string =>
  stateName(context, { ...lot, tops: keepsTops(lot) });

const kindKey = (lot: PlannedLot): string =>
  `${lot.commodity}|${lot.form === "cut" ? "cut" : keepsTops(lot)}`;

/**
 * Names of every lot of a plan by its id, as within a sentence. Lots of a kind that came at different ripeness are told
 * apart by it; what would still be called the same is numbered as parts.
 */
export function lotNames(context: HandoutContext, plan: Plan): ReadonlyMap<string, string> {
  const stage = (lot: PlannedLot) => stageOf(context, lot);
  const alike = (lot: PlannedLot) => plan.lots.filter((other) => kindKey(other) === kindKey(lot));
  return new Map(
    plan.lots.map((lot) => {
      const bare = bareName(context, lot);
      const own = stage(lot);
      const differ = alike(lot).some((other) => stage(other) !== own);
      const name = own && differ ? context.speaker.say(`lot.came.${own}`, { name: bare }) : bare;
      const parts = alike(lot).filter((other) => stage(other) === own);
      if (parts.length < 2) return [lot.id, name];
      return [
        lot.id,
        context.speaker.say("lot.part", { name, part: parts.indexOf(lot) + 1, parts: parts.length }),
      ];
    }),
  );
}

/** Names of whole lots by their ids: of lots in parts, without the number of the part. */
export function wholeLotNames(context: HandoutContext, plan: Plan): ReadonlyMap<string, string> {
  const whole = new Map<string, PlannedLot>();
  for (const part of plan.lots) {
    const before = whole.get(part.lot);
    whole.set(part.lot, before ? { ...before, grams: before.grams + part.grams } : { ...part, id: part.lot });
  }
  return lotNames(context, { ...plan, lots: [...whole.values()] });
}

/** The name with how ripe it is now, for the moment of putting away. */
export function nameOnArrival(context: HandoutContext, plan: Plan, lot: PlannedLot, name: string): string {
  const stage = stageOf(context, lot);
  const told = plan.lots.some(
    (other) => kindKey(other) === kindKey(lot) && stageOf(context, other) !== stage,
  );
  return stage === undefined || stage === "turning" || told
    ? name
    : context.speaker.say(`lot.now.${stage}`, { name });
}

/** Names of a plan's places by their ids. */
export const placeNames = (context: HandoutContext, plan: Plan): ReadonlyMap<string, string> =>
  new Map(plan.places.map(({ place, name }) => [place, kitchenWords(context, name)]));
