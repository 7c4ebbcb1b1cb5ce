import { startTransition, useEffect, useMemo, useState, useSyncExternalStore } from "react";
import { languageFor } from "../state/language.js";
import type { PlannerChange, PlannerState } from "../state/plannerState.js";
import { unitsFor } from "../state/region.js";
import { today } from "../state/today.js";
import { isWorkedExample, withExample, workedExample } from "../state/workedExample.js";
import { Keeper, type Kept } from "../storage/keeper.js";
import { deviceStore } from "../storage/localCopy.js";
import { onlyTyped, whenRested } from "./restingLetters.js";

/** The worked example, in the device's language and in the units of its region. */
const firstVisit: PlannerState = {
  ...workedExample(languageFor("device", navigator.languages)),
  units: unitsFor(navigator.languages),
};

/** The database comes after the first paint: until it is open, the copy is shown and everything done is held for it. */
async function openShelf(kinds: ReadonlySet<string>) {
  const { DatabaseShelf } = await import("../storage/databaseShelf.js");
  return new DatabaseShelf({ kinds, otherwise: firstVisit, clock: Date.now });
}

/**
 * What is kept, for everything but the box that is typed in: letters reach it when the hand rests, and are drawn when there is time; anything else
 * at once. So no letter waits for what follows from it.
 */
function useKept(keeper: Keeper): Kept {
  const [kept, setKept] = useState(keeper.now);
  useEffect(() => {
    let shown = kept;
    const show = (now: Kept) => {
      if (onlyTyped(now.state, shown.state)) startTransition(() => setKept(now));
      else setKept(now);
      shown = now;
    };
    // Something may have been done before this was listened to.
    if (keeper.now() !== shown) show(keeper.now());
    return whenRested(keeper, show);
  }, [keeper]);
  return kept;
}

/** What stands in the box, letter by letter. */
export const useTyped = (keeper: Keeper): string =>
  useSyncExternalStore(keeper.listen, () => keeper.now().state.text);

/** A change with what the page knows and the hand does not say: the day, and the example in the language chosen. */
function completed(change: PlannerChange, state: PlannerState): PlannerChange {
  if (change.change === "text") return { ...change, on: today() };
  if (change.change !== "language") return change;
  return withExample(change, state, languageFor(change.language, navigator.languages));
}

/** What the person entered, kept on the device at every change; how to change it, and how to take that back. */
export function useHaul(kinds: ReadonlySet<string>) {
  const [keeper] = useState(
    () =>
      new Keeper({
        kinds,
        otherwise: firstVisit,
        store: deviceStore,
        openShelf: () => openShelf(kinds),
        by: crypto.getRandomValues(new Uint32Array(2)).join("-"),
        clock: Date.now,
      }),
  );
  const kept = useKept(keeper);
  useEffect(() => keeper.start(), [keeper]);
  return useMemo(() => {
    const { state, undo } = kept;
    const what = undo === "forgotten" ? undefined : undo?.what;
    return {
      ...kept,
      keeper,
      kinds,
      example: isWorkedExample(state),
      /** What was replaced last, for as long as that is what would be undone. */
      replaced: what === "cleared" || what === "example" ? (what as "cleared" | "example") : undefined,
      change: (change: PlannerChange) => keeper.change(completed(change, keeper.now().state)),
      clear: () => keeper.change({ change: "clear" }),
      openExample() {
        const example = workedExample(languageFor(state.language, navigator.languages));
        keeper.change({ change: "open example", example });
      },
      bringBack: () => keeper.undo(),
    };
  }, [kept, keeper, kinds]);
}
