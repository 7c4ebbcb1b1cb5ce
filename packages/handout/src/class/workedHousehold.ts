import { type Catalogue, type Commodity, commodityOf } from "@keepwright/catalogue";
import {
  bindProblem,
  type Kitchen,
  kitchenFrom,
  type Lot,
  ordinaryKitchens,
  type Plan,
  type PlanRequest,
  planProblem,
  readHaul,
} from "@keepwright/planner";
import { readingView } from "../view/readingView.js";
import { ClassError } from "./classItems.js";
import type { ClassReader } from "./classReader.js";
import type { ClassRequest } from "./classRequest.js";

/** First day of the worked household. The documents name days by number, so that it is no date of anybody's. */
const firstDay = "2001-01-01";

/** The kitchen: an ordinary one by its key, or one given as data. Throws KitchenError, and ClassError for a key that is none. */
export function classKitchen({ household: { kitchen } }: ClassRequest): Kitchen {
  if (typeof kitchen !== "string") return kitchenFrom(kitchen);
  if (Object.hasOwn(ordinaryKitchens, kitchen)) return ordinaryKitchens[kitchen as "ordinary"];
  const keys = Object.keys(ordinaryKitchens).join(", ");
  throw new ClassError([
    {
      thing: "class household kitchen",
      value: `“${kitchen}”`,
      remedy: `Give one of ${keys}, or a whole kitchen as \`keepwright kitchen ordinary --json\` prints it.`,
    },
  ]);
}

/** The lots of a haul in words. Throws ClassError with what was not understood: a kit must not quietly be about less. */
export function haulLots({ handout, say, catalogue }: ClassReader, words: string, thing: string): Lot[] {
  const reading = readHaul(words, catalogue);
  const { questions } = readingView(handout, reading);
  const lots = reading.items.flatMap((item) => (item.kind === "lot" ? [item] : []));
  if (questions.length > 0 || lots.length === 0)
    throw new ClassError(
      (questions.length > 0 ? questions : [say("wrong.haul.remedy")]).map((remedy) => ({
        thing,
        value: say("wrong.haul"),
        remedy,
      })),
    );
  return lots.map(({ lot }, index) => ({ ...lot, id: `lot-${index + 1}` }));
}

const gramsOf = ({ household }: Commodity, name: string): number | undefined =>
  household.units.find((unit) => unit.name === name)?.grams;

/** Single pieces lighter than this [g] come home several at once. A declared preference, no source. */
const severalBelow = 400;
const several = 4;

/** The usual amount of one kind: a bunch, a bag, a head; four where it comes as small single pieces. */
export function usualLot(commodity: Commodity, id: string, times = 1): Lot {
  const { bareUnit, countUnit, portion } = commodity.household;
  const grams = gramsOf(commodity, bareUnit) ?? portion.value;
  const single = bareUnit === countUnit && bareUnit.startsWith("each");
  const pieces = single && grams < severalBelow ? several : 1;
  return {
    id,
    commodity: commodity.id,
    grams: grams * pieces * times,
    form: "whole",
    tops: false,
    washed: false,
    extraDays: 0,
    ...(single && { pieces: pieces * times }),
  };
}

/** Portions a lot makes; none where it only seasons. */
export const portionsOf = ({ household }: Commodity, { grams }: Pick<Lot, "grams">): number =>
  household.seasoning ? 0 : Math.max(1, Math.round(grams / household.portion.value));

/** Most of each kind, in usual amounts: an invented home buys no more of one thing. A declared preference, no source. */
const mostTimes = 12;

/**
 * Lots of an invented home: usual amounts of each kind, as many times over as it takes to come to a share of what is eaten until the next shop.
 * @param share of the portions eaten [1]: 1 is all of them
 */
export function inventedLots(
  catalogue: Catalogue,
  items: readonly string[],
  { household }: Pick<ClassRequest, "household">,
  share: number,
): Lot[] {
  const kinds = items.map((id) => commodityOf(catalogue, id));
  const once = kinds.reduce((sum, kind) => sum + portionsOf(kind, usualLot(kind, kind.id)), 0);
  const wanted = share * household.people * household.portions * household.days;
  const times = Math.min(mostTimes, Math.max(1, Math.round(wanted / Math.max(1, once))));
  // Of what only seasons, the usual amount is enough for any home.
  return kinds.map((kind, index) => usualLot(kind, `lot-${index + 1}`, kind.household.seasoning ? 1 : times));
}

/** What is asked of the planner for the worked household. */
export function householdRequest(
  catalogue: Catalogue,
  { household, seed }: ClassRequest,
  kitchen: Kitchen,
  lots: readonly Lot[],
): PlanRequest {
  const { people, portions, days } = household;
  return {
    haul: { lots },
    kitchen,
    household: { people, portionsPerPersonPerDay: portions, days, daysAway: [] },
    from: firstDay,
    seed,
    catalogue,
  };
}

/** The plan for the worked household. */
export const householdPlan = (request: PlanRequest): Plan => planProblem(bindProblem(request));
