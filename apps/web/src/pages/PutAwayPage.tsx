import { catalogue as bundledCatalogue } from "@keepwright/catalogue";
import { handoutContext } from "@keepwright/handout";
import { ordinaryKitchens } from "@keepwright/planner";
import { useDeferredValue, useMemo, useRef } from "react";
import type { PlanAsked } from "../behaviour/planMessages.js";
import { useHaul } from "../behaviour/useHaul.js";
import { usePlan } from "../behaviour/usePlan.js";
import { useToday } from "../behaviour/useToday.js";
import { HaulBox } from "../components/HaulBox.js";
import { HaulButtons } from "../components/HaulButtons.js";
import { KitchenChooser } from "../components/KitchenChooser.js";
import { PlanView } from "../components/PlanView.js";
import { SwatchPatterns } from "../components/Swatch.js";
import { UnderstoodList } from "../components/UnderstoodList.js";
import type { PlannerState } from "../state/plannerState.js";
import { lotsToPlan, readLines } from "../state/readLots.js";
import { useWords } from "../words/words.js";

const catalogue = bundledCatalogue();
const kinds = new Set(catalogue.commodities.keys());

/** Portions of fruit and vegetables a person eats a day: WHO's 400 g a day as five portions of 80 g (from memory). */
const portionsPerPersonPerDay = 5;

/** The whole first journey on one page: what came home, what was understood, the kitchen, the plan. */
export function PutAwayPage() {
  const say = useWords();
  const box = useRef<HTMLTextAreaElement>(null);
  const haul = useHaul(kinds);
  const from = useToday();
  const { state } = haul;
  const text = useDeferredValue(state.text);
  const lines = useMemo(() => readLines(text, state.corrections, catalogue), [text, state.corrections]);
  const context = useMemo(() => handoutContext(catalogue, { units: state.units }), [state.units]);
  const ask = useMemo(() => askFor(state, lotsToPlan(lines), from), [state, lines, from]);
  const { again, ...plan } = usePlan(ask);
  const clear = () => {
    haul.clear();
    box.current?.focus();
  };
  return (
    <>
      <SwatchPatterns />
      <header className="masthead">
        <h1>{say("page.name")}</h1>
        <p>
          {say("page.lead")} <span className="private">{say("page.private")}</span>
        </p>
      </header>
      <main>
        {!haul.kept && (
          <p role="alert" className="wrong wrong-box">
            {say("page.notKept")}
          </p>
        )}
        <div className="unpack">
          <HaulBox
            text={state.text}
            box={box}
            onChange={(next) => haul.change({ change: "text", text: next })}
          >
            <HaulButtons
              empty={state.text.trim() === ""}
              example={haul.example}
              replaced={haul.replaced}
              onClear={clear}
              onExample={haul.openExample}
              onBringBack={haul.bringBack}
            />
          </HaulBox>
          <UnderstoodList
            lines={lines}
            context={context}
            onCorrect={(key, correction) => haul.change({ change: "correct", key, correction })}
            onAsRead={(key) => haul.change({ change: "as read", key })}
          />
        </div>
        <KitchenChooser state={state} context={context} onChange={haul.change} />
        <PlanView state={plan} context={context} onAgain={again} />
      </main>
    </>
  );
}

function askFor(
  { kitchen, people, days }: PlannerState,
  lots: PlanAsked["lots"],
  from: string,
): PlanAsked | undefined {
  if (lots.length === 0) return undefined;
  const household = { people, portionsPerPersonPerDay, daysAway: [], days };
  return { lots, kitchen: ordinaryKitchens[kitchen], household, from };
}
