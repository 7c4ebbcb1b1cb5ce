import type { OwnKitchen } from "./plannerState.js";

/** A key that no kitchen has yet, for one made by a change to another, which stays as it is. */
export function changedKitchenKey(kitchens: readonly OwnKitchen[]): string {
  const taken = new Set(kitchens.map(({ key }) => key));
  let number = 1;
  while (taken.has(`own-changed-${number}`)) number += 1;
  return `own-changed-${number}`;
}
