import { catalogue as bundledCatalogue } from "@keepwright/catalogue";
import { handoutContext } from "@keepwright/handout";
import { ordinaryKitchens } from "@keepwright/planner";
import { useDeferredValue, useEffect, useMemo, useReducer, useState } from "react";
import { usePlan } from "../behaviour/usePlan.js";
import { HaulBox } from "../components/HaulBox.js";
import { KitchenChooser } from "../components/KitchenChooser.js";
import { PlanView } from "../components/PlanView.js";
import { SwatchPatterns } from "../components/Swatch.js";
import { UnderstoodList } from "../components/UnderstoodList.js";
import { type PlannerState, plannerReducer } from "../state/plannerState.js";
import { lotsToPlan, readLines } from "../state/readLots.js";
import { today } from "../state/today.js";
import { load, save } from "../storage/deviceStorage.js";

const catalogue = bundledCatalogue();

/** The whole first journey on one page: what came home, what was understood, the kitchen, the plan. */
export function PutAwayPage() {
  const [state, dispatch] = useReducer(plannerReducer, undefined, load);
  const [kept, setKept] = useState(true);
  const [from] = useState(() => today());
  useEffect(() => setKept(save(state)), [state]);

  const text = useDeferredValue(state.text);
  const lines = useMemo(() => readLines(text, state.corrections, catalogue), [text, state.corrections]);
  const lots = useMemo(() => lotsToPlan(lines), [lines]);
  const context = useMemo(() => handoutContext(catalogue, { units: state.units }), [state.units]);
  const ask = useMemo(() => askFor(state, lots, from), [state, lots, from]);
  const { plan, reasons, problem, working } = usePlan(ask);

  return (
    <>
      <SwatchPatterns />
      <header className="masthead">
        <h1>Keepwright</h1>
        <p>
          Where everything goes, how to keep it, and what to eat first. Worked out on this device; nothing is
          sent anywhere.
        </p>
      </header>
      <main>
        {!kept && (
          <p role="alert" className="wrong">
            This device would not keep your list (its storage is full or switched off). It stays on this page
            until you close it; copy the text to keep it.
          </p>
        )}
        <div className="unpack">
          <HaulBox text={state.text} onChange={(next) => dispatch({ change: "text", text: next })} />
          <UnderstoodList
            lines={lines}
            catalogue={catalogue}
            context={context}
            onCorrect={(key, correction) => dispatch({ change: "correct", key, correction })}
          />
        </div>
        <KitchenChooser state={state} context={context} onChange={dispatch} />
        <PlanView
          plan={plan}
          lots={lots}
          reasons={reasons}
          problem={problem}
          working={working}
          context={context}
        />
      </main>
    </>
  );
}

function askFor(state: PlannerState, lots: ReturnType<typeof lotsToPlan>, from: string) {
  if (lots.length === 0) return undefined;
  return {
    lots,
    kitchen: ordinaryKitchens[state.kitchen],
    household: { people: state.people, portionsPerPersonPerDay: 5, daysAway: [], days: state.days },
    from,
  };
}
