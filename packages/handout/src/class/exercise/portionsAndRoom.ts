import { commodityOf } from "@keepwright/catalogue";
import type { Lot } from "@keepwright/planner";
import { litresPerLiquidPint } from "@keepwright/quantities";
import type { ClassContext } from "../classContext.js";
import { portionsOf } from "../workedHousehold.js";

/** US customary measure: by definition. */
const pintsPerQuart = 2;

/** Rounded as it is printed, so that the sums on the answer sheet are those of the figures on the sheet. */
export interface ListedThing {
  readonly lot: Lot;
  /** Portions it makes; none where it only seasons. */
  readonly portions: number | undefined;
  /** Room it takes loose, in litres or quarts, to a tenth. */
  readonly room: number;
}

/** Litres as they are printed: litres or quarts. */
export const printedRoom = ({ handout }: ClassContext, litres: number): number =>
  handout.units.mass === "us" ? litres / (pintsPerQuart * litresPerLiquidPint) : litres;

export const tenths = (value: number): number => Math.round(value * 10) / 10;

export const roomText = ({ handout }: ClassContext, room: number): string => {
  const value = handout.speaker.number(room, { maximumFractionDigits: 1 });
  return handout.speaker.say(handout.units.mass === "us" ? "amount.quarts" : "amount.litres", { value });
};

export function listedThing(context: ClassContext, lot: Lot): ListedThing {
  const kind = commodityOf(context.catalogue, lot.commodity);
  const { household } = kind;
  return {
    lot,
    portions: household.seasoning ? undefined : portionsOf(kind, lot),
    room: Math.max(0.1, tenths(printedRoom(context, lot.grams / household.bulkDensity.value))),
  };
}

/** All that a list comes to. */
export function sumOf(things: readonly ListedThing[]) {
  return {
    portions: things.reduce((sum, { portions = 0 }) => sum + portions, 0),
    room: tenths(things.reduce((sum, { room }) => sum + room, 0)),
  };
}
