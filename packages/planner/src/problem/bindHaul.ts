import type { Catalogue, Commodity } from "@keepwright/catalogue";
import { type LotForm, type Produce, produceFromCommodity } from "@keepwright/physics";
import type { CalendarDate } from "@keepwright/quantities";
import { type BoundCarried, bindCarried, checkCarriedPlaces } from "./bindCarried.js";
import type { BoundKitchen } from "./bindKitchen.js";
import type { Haul, Lot } from "./lot.js";
import { ripenessOfWord } from "./lot.js";
import { type Wish, wishOf } from "./wish.js";

/** A lot with its kind's constants, as the simulation and the schedule need it. */
export interface BoundLot {
  readonly index: number;
  readonly lot: Lot;
  readonly commodity: Commodity;
  readonly produce: Produce;
  /** It is eaten with other things and takes no place at the table. */
  readonly seasoning: boolean;
  readonly grams: number;
  /** Whole number of portions it is eaten in, at least one, and their size [g]. */
  readonly portions: number;
  readonly gramsPerPortion: number;
  /** Smallest number of portions that may lie apart from the rest: a piece is not cut to split a lot. */
  readonly splitUnit: number;
  readonly form: LotForm;
  /** Ripeness on arrival, 0…2. */
  readonly ripeness: number;
  /** Share of its storage life spent on arrival; of its cut life, once cut. */
  readonly spent: number;
  /** Room it takes bare [L]. */
  readonly litres: number;
  /** The day it is wanted for, if any. */
  readonly wish: Wish | undefined;
  /** Index of the first lot that came home together with it as one lot: those share a daily limit. Its own for most. */
  readonly group: number;
  /** What it brings from an earlier plan. */
  readonly carried?: BoundCarried;
}

/** The published life [d] that a lot's life is worked out from: whole at its recommended conditions, or cut at 5 °C. */
export const publishedLife = ({ form, produce }: Pick<BoundLot, "form" | "produce">): number =>
  form.cut ? produce.cutLifeDaysAt5 : produce.storageLifeDays;

/** Largest share of the storage life taken as spent on arrival: what has come home is not yet past its best. */
export const mostSpent = 0.9;

/** The ripeness of a kind that does not ripen: ready to eat as it is. */
const readyRipeness = 1;

function ripenessOnArrival(lot: Lot, produce: Produce): number {
  if (!produce.ripening) return readyRipeness;
  if (lot.carried) return lot.carried.state.ripeness;
  if (typeof lot.ripeness === "number") return lot.ripeness;
  if (lot.ripeness !== undefined) return ripenessOfWord[lot.ripeness];
  return lot.form === "cut" ? Math.max(readyRipeness, produce.ripening.arrives) : produce.ripening.arrives;
}

/**
 * Portions of a lot. Pieces at least as large as a portion hold a whole number of portions each, so that a split falls
 * between pieces; smaller pieces are shared out by weight.
 */
function portioning({ grams, pieces, form, carried }: Lot, portion: number) {
  if (carried) return { portions: carried.portions, splitUnit: carried.splitUnit };
  if (pieces !== undefined && grams / pieces >= portion) {
    const perPiece = Math.max(1, Math.round(grams / pieces / portion));
    return { portions: perPiece * pieces, splitUnit: form === "cut" ? 1 : perPiece };
  }
  return { portions: Math.max(1, Math.round(grams / portion)), splitUnit: 1 };
}

/** Leaves sold under time and temperature control were spun dry after washing (common practice, no source); all else that came washed is wet until dried. */
const comesWet = ({ washed, carried }: Lot, { controlledAsSold }: Produce, { organ }: Commodity): boolean =>
  washed && !carried?.dry && !(controlledAsSold && organ === "leaf");

const produceOf = new WeakMap<Commodity, Produce>();

/** The constants of a kind, the same object each time: what is worked out about them is kept by it. */
function produceFrom(commodity: Commodity): Produce {
  const produce = produceOf.get(commodity) ?? produceFromCommodity(commodity);
  produceOf.set(commodity, produce);
  return produce;
}

function bindLot(
  lot: Lot,
  index: number,
  haul: Haul,
  catalogue: Catalogue,
  kitchen: Pick<BoundKitchen, "places" | "vents">,
  from: CalendarDate,
): BoundLot {
  const commodity = catalogue.commodities.get(lot.commodity)!;
  const produce = produceFrom(commodity);
  const form = { cut: lot.form === "cut", tops: lot.tops, wet: comesWet(lot, produce, commodity) };
  const { portions, splitUnit } = portioning(lot, commodity.household.portion.value);
  return {
    index,
    lot,
    commodity,
    produce,
    seasoning: commodity.household.seasoning,
    grams: lot.grams,
    portions,
    gramsPerPortion: lot.grams / portions,
    splitUnit,
    form,
    ripeness: ripenessOnArrival(lot, produce),
    // Extra days count as days at the recommended storage conditions: nothing else is known about them.
    spent: Math.min(mostSpent, lot.extraDays / publishedLife({ form, produce })),
    // A bulk density in kg/m³ is the same number in g/L.
    litres: lot.grams / commodity.household.bulkDensity.value,
    wish: wishOf(lot, from),
    group: lot.carried ? firstOfOrigin(haul, lot.carried.origin) : index,
    ...(lot.carried && { carried: bindCarried(kitchen, lot.carried) }),
  };
}

const firstOfOrigin = ({ lots }: Haul, origin: string): number =>
  lots.findIndex(({ carried }) => carried?.origin === origin);

/**
 * Gives every lot of a checked haul its constants, and its wish a day counted from the first. Throws HaulError where what is carried over lies in no place of the
 * kitchen.
 */
export function bindHaul(
  haul: Haul,
  catalogue: Catalogue,
  kitchen: Pick<BoundKitchen, "places" | "vents">,
  from: CalendarDate,
): BoundLot[] {
  checkCarriedPlaces(kitchen, haul);
  return haul.lots.map((lot, index) => bindLot(lot, index, haul, catalogue, kitchen, from));
}
