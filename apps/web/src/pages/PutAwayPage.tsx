import { kindNames } from "@keepwright/catalogue";
import { useRef } from "react";
import { useFigures } from "../behaviour/useFigures.js";
import { useHaul } from "../behaviour/useHaul.js";
import { useWorkedOut } from "../behaviour/useWorkedOut.js";
import { HaulBox } from "../components/HaulBox.js";
import { HaulButtons } from "../components/HaulButtons.js";
import { KitchenChooser } from "../components/KitchenChooser.js";
import { PlanView } from "../components/PlanView.js";
import { SwatchPatterns } from "../components/Swatch.js";
import { UnderstoodList } from "../components/UnderstoodList.js";
import { useWords } from "../words/words.js";

const kinds = new Set(kindNames().keys());

/** The whole first journey on one page: what came home, what was understood, the kitchen, the plan. */
export function PutAwayPage() {
  const say = useWords();
  const box = useRef<HTMLTextAreaElement>(null);
  const haul = useHaul(kinds);
  const { state } = haul;
  const { catalogue, failed } = useFigures();
  const worked = useWorkedOut(state, catalogue);
  const clear = () => {
    haul.clear();
    box.current?.focus();
  };
  return (
    <>
      <SwatchPatterns />
      <Masthead />
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
          {worked ? (
            <UnderstoodList
              lines={worked.lines}
              context={worked.context}
              onCorrect={(key, correction) => haul.change({ change: "correct", key, correction })}
              onAsRead={(key) => haul.change({ change: "as read", key })}
            />
          ) : (
            <p role={failed ? "alert" : "status"}>{say(failed ? "page.noFigures" : "page.opening")}</p>
          )}
        </div>
        {worked && (
          <>
            <KitchenChooser state={state} context={worked.context} onChange={haul.change} />
            <PlanView state={worked.plan} context={worked.context} onAgain={worked.again} />
          </>
        )}
      </main>
    </>
  );
}

function Masthead() {
  const say = useWords();
  return (
    <header className="masthead">
      <h1>{say("page.name")}</h1>
      <p>
        {say("page.lead")} <span className="private">{say("page.private")}</span>
      </p>
    </header>
  );
}
