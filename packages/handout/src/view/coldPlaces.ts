import type { Plan } from "@keepwright/planner";

/** Whether a place is in a refrigerator. */
export const isCold = ({ placeKind }: Pick<Plan["places"][number], "placeKind">): boolean =>
  placeKind.startsWith("refrigerator") || placeKind === "crisper drawer";
