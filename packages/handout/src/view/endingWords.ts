import type { Ending } from "@keepwright/physics";
import { commodityIn, type HandoutContext } from "./context.js";

/** A lot as far as it matters to how its ending is named. */
export interface EndedLot {
  readonly commodity: string;
  readonly form: "whole" | "cut";
}

/** Whether a safe time that ends it is that of light: whole potatoes have no other. */
export const endsGreen = (context: HandoutContext, { commodity, form }: EndedLot, ending: Ending): boolean =>
  ending === "safety" && form === "whole" && commodityIn(context, commodity)?.greensInLight !== undefined;

/** Short words for what ends a lot. */
export const endingWords = (context: HandoutContext, lot: EndedLot | undefined, ending: Ending): string =>
  context.speaker.say(lot && endsGreen(context, lot, ending) ? "ending.greening" : `ending.${ending}`);
