import { type Commodity, commodityOf, type SafetyLimit } from "@keepwright/catalogue";
import type { ClassContext } from "../classContext.js";

export const kindsOf = ({ catalogue, items }: ClassContext): Commodity[] =>
  items.map((id) => commodityOf(catalogue, id));

/** Ids of the kit's kinds that something holds for. */
export const thoseWith = (context: ClassContext, holds: (kind: Commodity) => boolean): string[] =>
  kindsOf(context)
    .filter(holds)
    .map(({ id }) => id);

/** "Apples, kale and pears", to begin a sentence. */
export const namesOfKinds = ({ handout, name }: ClassContext, ids: readonly string[]): string =>
  handout.speaker.capital(handout.speaker.list(ids.map(name)));

const cold = ["refrigerator shelf", "refrigerator door", "crisper drawer"];

/** Whether the answer sheet has it in the cold in its first place, or in any. */
export const firstInCold = (context: ClassContext, id: string): boolean =>
  cold.includes(context.answer(id).belongs.stays[0]?.placeKind ?? "");
export const everInCold = (context: ClassContext, id: string): boolean =>
  context.answer(id).belongs.stays.some(({ placeKind }) => cold.includes(placeKind));

/** Temperature of the kitchen's coldest refrigerator [°C]; undefined where it has none. */
export const coldest = ({ kitchen }: ClassContext): number | undefined =>
  kitchen.refrigerators.length > 0
    ? Math.min(...kitchen.refrigerators.map(({ temperature }) => temperature))
    : undefined;

/** A safety limit of the catalogue. Throws RangeError where there is none of that name: a caution may not fall out unseen. */
export function limitOf({ catalogue }: ClassContext, id: string): SafetyLimit {
  const limit = catalogue.safety.get(id);
  if (!limit) throw new RangeError(`The catalogue has no safety limit "${id}".`);
  return limit;
}
