import { type Kitchen, type OrdinaryKitchenKey, ordinaryKitchens } from "@keepwright/planner";
import { firstKitchen, type PlannerState } from "./plannerState.js";

export const isOrdinary = (key: string): key is OrdinaryKitchenKey => Object.hasOwn(ordinaryKitchens, key);

/** The kitchen chosen: the person's own or an ordinary one; that of a first visit where the key is known no more. */
export function kitchenOf({ kitchen, kitchens }: Pick<PlannerState, "kitchen" | "kitchens">): Kitchen {
  const own = kitchens.find(({ key }) => key === kitchen);
  if (own) return own.kitchen;
  return ordinaryKitchens[isOrdinary(kitchen) ? kitchen : firstKitchen];
}
