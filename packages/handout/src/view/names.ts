import type { Commodity } from "@keepwright/catalogue";
import type { Plan, PlannedLot } from "@keepwright/planner";
import { plainText } from "../words/plainText.js";
import { commodityIn, type HandoutContext } from "./context.js";

/** Names of the kind in the speaker's language, English where the catalogue has no other. */
const namesIn = (context: HandoutContext, commodity: Commodity) =>
  context.speaker.tag.startsWith("es") ? commodity.names.es : commodity.names.en;

/** "avocados": the kind as it is spoken of in an amount; its id where the catalogue does not know it. */
export function kindName(context: HandoutContext, id: string, number: "one" | "many" = "many"): string {
  const commodity = commodityIn(context, id);
  return plainText(commodity ? namesIn(context, commodity)[number] : id.replaceAll("-", " "));
}

/** Grams of one piece, where the kind is counted in pieces. */
function gramsEach(commodity: Commodity | undefined): number | undefined {
  const unit = commodity?.household.countUnit;
  return unit?.startsWith("each")
    ? commodity?.household.units.find(({ name }) => name === unit)?.grams
    : undefined;
}

type Stage = "unripe" | "turning" | "ripe" | "very ripe";

/** The word for its ripeness on arrival; undefined where ripeness does not change what is done with it. */
function stageOf(context: HandoutContext, lot: PlannedLot): Stage | undefined {
  if (!commodityIn(context, lot.commodity)?.climacteric || lot.form === "cut") return undefined;
  if (lot.ripeness < 0.25) return "unripe";
  if (lot.ripeness < 0.9) return "turning";
  return lot.ripeness < 1.4 ? "ripe" : "very ripe";
}

/** Leaves that are twisted off first are gone by the time the lot is spoken of. */
const keepsTops = (lot: PlannedLot): boolean => lot.tops && !lot.preparation.includes("twist off leaves");

/** What a lot is called by itself: its kind, one or many of it, cut or with its leaves. */
function bareName(context: HandoutContext, lot: PlannedLot): string {
  const each = gramsEach(commodityIn(context, lot.commodity));
  const single = each !== undefined && lot.grams < 1.4 * each;
  const name = kindName(context, lot.commodity, single ? "one" : "many");
  if (lot.form === "cut") return context.speaker.say("lot.cut", { name });
  return keepsTops(lot) ? context.speaker.say("lot.tops", { name }) : name;
}

const kindKey = (lot: PlannedLot): string => `${lot.commodity}|${lot.form}|${keepsTops(lot)}`;

/**
 * Names of every lot of a plan by its id, as within a sentence. Lots of a kind that came at different ripeness are told apart by it; what
 * would still be called the same is numbered as parts.
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

export const placeNames = (plan: Plan): ReadonlyMap<string, string> =>
  new Map(plan.places.map(({ place, name }) => [place, plainText(name)]));
