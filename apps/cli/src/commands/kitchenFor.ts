import { type Kitchen, kitchenFrom, type OrdinaryKitchenKey, ordinaryKitchens } from "@keepwright/planner";
import type { Door } from "../door/door.js";
import { readJsonFile } from "../door/readText.js";

export const ordinaryKeys = Object.keys(ordinaryKitchens) as OrdinaryKitchenKey[];

export const isOrdinaryKey = (text: string): text is OrdinaryKitchenKey =>
  (ordinaryKeys as readonly string[]).includes(text);

/**
 * The kitchen asked for: a file, or an ordinary one by its key when no file bears that name; the first ordinary one when
 * none is asked for. Throws UserError or KitchenError.
 */
export function kitchenFor(door: Door, asked: string | undefined): Kitchen {
  if (asked === undefined) return ordinaryKitchens.ordinary;
  if (isOrdinaryKey(asked) && door.look(asked) !== "file") return ordinaryKitchens[asked];
  return kitchenFrom(readJsonFile(door, asked, "kitchen file"));
}
