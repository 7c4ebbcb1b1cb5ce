import { useEffect, useReducer, useState } from "react";
import { cleared, isExample, opened, type PlannerChange, plannerReducer } from "../state/plannerState.js";
import { workedExample } from "../state/workedExample.js";
import { load, save } from "../storage/deviceStorage.js";

interface Replaced {
  readonly how: "cleared" | "example";
  readonly state: ReturnType<typeof load>;
}

/** What the person entered, kept on the device at every change; and what was replaced last, to bring it back. */
export function useHaul(kinds: ReadonlySet<string>) {
  const [state, dispatch] = useReducer(plannerReducer, undefined, () =>
    load({ otherwise: workedExample, kinds }),
  );
  const [replaced, setReplaced] = useState<Replaced | undefined>(undefined);
  const [kept, setKept] = useState(true);
  useEffect(() => setKept(save(state)), [state]);

  const replaceBy = (how: Replaced["how"], next: Replaced["state"]) => {
    setReplaced({ how, state });
    dispatch({ change: "replace", state: next });
  };
  return {
    state,
    kept,
    example: isExample(state, workedExample),
    replaced: replaced?.how,
    change(next: PlannerChange) {
      // Once something new is typed, bringing back the old would lose it.
      if (next.change === "text") setReplaced(undefined);
      dispatch(next);
    },
    clear: () => replaceBy("cleared", cleared(state)),
    openExample: () => replaceBy("example", opened(workedExample, state)),
    bringBack() {
      if (replaced) dispatch({ change: "replace", state: replaced.state });
      setReplaced(undefined);
    },
  };
}
