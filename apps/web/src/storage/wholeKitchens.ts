import { contradictions, describedKitchen, type Kitchen, type KitchenAnswers } from "@keepwright/planner";
import type { At } from "./check.js";

/** What is done to kitchens where there is time for it: not before the first paint. */
export interface KitchenDoor {
  /** Reports every contradiction within a kitchen of the right shape; false where there is one. */
  readonly agrees: (kitchen: Kitchen, at: At) => boolean;
  /** The kitchen that answers describe; nothing where they do not do. */
  readonly describe: (answers: KitchenAnswers, name: string) => Kitchen | undefined;
}

/** Contradictions, and kitchens put together again from the answers they were described by. */
export const wholeKitchens: KitchenDoor = {
  agrees(kitchen, at) {
    const faults = contradictions(kitchen);
    for (const { value, because, values } of faults)
      at.report({ field: at.field, value, wanted: { want: "agreement", because, values } });
    return faults.length === 0;
  },
  describe(answers, name) {
    if (name.trim() === "") return undefined;
    const { kitchen, faults } = describedKitchen(answers, name);
    return faults.length === 0 && contradictions(kitchen).length === 0 ? kitchen : undefined;
  },
};
