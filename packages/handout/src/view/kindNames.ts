import { type Commodity, namesFor } from "@keepwright/catalogue";
import { plainText } from "../words/plainText.js";
import { commodityIn, type HandoutContext } from "./context.js";

/** Names of the kind in the speaker's language and region. */
const namesIn = (context: HandoutContext, commodity: Commodity) => namesFor(commodity, context.speaker.tag);

/** "avocados": the kind as it is spoken of in an amount; its id where the catalogue does not know it. */
export function kindName(context: HandoutContext, id: string, number: "one" | "many" = "many"): string {
  const commodity = commodityIn(context, id);
  return plainText(commodity ? namesIn(context, commodity)[number] : id.replaceAll("-", " "));
}

/** Other names of the kind in the speaker's language; none where the catalogue does not know it. */
export function alsoCalled(context: HandoutContext, id: string): string[] {
  const commodity = commodityIn(context, id);
  return commodity ? namesIn(context, commodity).also.map(plainText) : [];
}

/** Grams of one piece, where the kind is counted in pieces. */
function gramsEach(commodity: Commodity | undefined): number | undefined {
  const unit = commodity?.household.countUnit;
  const pieces = unit !== undefined && /^(each|head|bulb)/.test(unit);
  return pieces ? commodity?.household.units.find(({ name }) => name === unit)?.grams : undefined;
}

/** An amount of one kind in one state. */
export interface NamedLot {
  readonly commodity: string;
  readonly grams: number;
  readonly pieces?: number | undefined;
  readonly form: "whole" | "cut";
  readonly tops: boolean;
}

function isSingle(context: HandoutContext, lot: NamedLot): boolean {
  if (lot.pieces !== undefined) return lot.pieces === 1;
  const each = gramsEach(commodityIn(context, lot.commodity));
  return each !== undefined && lot.grams < 1.4 * each;
}

/** What a lot is called by itself, as within a sentence: one or many of its kind or the person's own word, cut or with its leaves. */
export function stateName(context: HandoutContext, lot: NamedLot, word?: string): string {
  const kind = () => kindName(context, lot.commodity, isSingle(context, lot) ? "one" : "many");
  const name = word === undefined ? kind() : plainText(word);
  if (lot.form === "cut") return context.speaker.say("lot.cut", { name });
  return lot.tops ? context.speaker.say("lot.tops", { name }) : name;
}
