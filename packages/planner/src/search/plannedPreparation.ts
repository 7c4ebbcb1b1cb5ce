import type { BoundLot } from "../problem/bindHaul.js";
import type { Programme } from "../problem/programme.js";

/** Things that no longer make sense once produce has been washed. */
const notOnceWashed = new Set(["keep dry and unwashed", "wash just before use"]);

/**
 * What to do before putting a lot away: the catalogue's list for its kind, with leaves and drying as the programme says.
 * Cut produce has had all that done, but may still have to be dried.
 */
export function plannedPreparation({ commodity, form, lot }: BoundLot, programme: Programme): string[] {
  if (form.cut) return programme.dried ? ["dry well"] : [];
  const usual = commodity.preparation
    .map((entry) => entry.do as string)
    .filter((name) => name !== "twist off leaves" && name !== "dry well")
    .filter((name) => !(lot.washed && notOnceWashed.has(name)));
  return [
    ...(programme.leavesOff ? ["twist off leaves"] : []),
    ...(programme.dried ? ["dry well"] : []),
    ...new Set(usual),
  ];
}
