import { useEffect, useState, useSyncExternalStore } from "react";
import { isExample, type PlannerChange } from "../state/plannerState.js";
import { workedExample } from "../state/workedExample.js";
import { Keeper } from "../storage/keeper.js";
import { deviceStore } from "../storage/localCopy.js";

/** The database comes after the first paint: until it is open, the copy is shown and everything done is held for it. */
async function openShelf(kinds: ReadonlySet<string>) {
  const { DatabaseShelf } = await import("../storage/databaseShelf.js");
  return new DatabaseShelf({ kinds, otherwise: workedExample, clock: Date.now });
}

/** What the person entered, kept on the device at every change; how to change it, and how to take that back. */
export function useHaul(kinds: ReadonlySet<string>) {
  const [keeper] = useState(
    () =>
      new Keeper({
        kinds,
        otherwise: workedExample,
        store: deviceStore,
        openShelf: () => openShelf(kinds),
        by: crypto.getRandomValues(new Uint32Array(2)).join("-"),
        clock: Date.now,
      }),
  );
  const kept = useSyncExternalStore(keeper.listen, keeper.now);
  useEffect(() => keeper.start(), [keeper]);
  const { state, undo } = kept;
  const what = undo === "forgotten" ? undefined : undo?.what;
  return {
    ...kept,
    keeper,
    kinds,
    example: isExample(state, workedExample),
    /** What was replaced last, for as long as that is what would be undone. */
    replaced: what === "cleared" || what === "example" ? what : undefined,
    change: (change: PlannerChange) => keeper.change(change),
    clear: () => keeper.change({ change: "clear" }),
    openExample: () => keeper.change({ change: "open example", example: workedExample }),
    bringBack: () => keeper.undo(),
  };
}
