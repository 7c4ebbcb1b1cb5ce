import { memo, Suspense, useRef } from "react";
import { useDesk } from "../behaviour/desk.js";
import { lazyPart } from "../behaviour/lazyPart.js";
import { useStable } from "../behaviour/useStable.js";
import { useTypingClass } from "../behaviour/useTypingClass.js";
import type { WorkedOut } from "../behaviour/useWorkedOut.js";
import { afterDialog } from "../components/afterDialog.js";
import { HaulBox } from "../components/HaulBox.js";
import { HaulButtons } from "../components/HaulButtons.js";
import { KitchenChooser } from "../components/kitchen/KitchenChooser.js";
import { Safely } from "../components/Safely.js";
import { SwatchPatterns } from "../components/Swatch.js";
import { UnderstoodList } from "../components/UnderstoodList.js";
import type { Correction } from "../state/corrections.js";
import type { WordMeant } from "../state/meant.js";
import { useWords } from "../words/words.js";

/** Comes with the figures, after there is a box to type in. */
const PlanView = lazyPart(async () => ({
  default: memo((await import("../components/plan/PlanView.js")).PlanView),
}));

/** The first journey on one screen: what came home, what was understood, the kitchen, the plan. */
export function UnpackPage() {
  const say = useWords();
  const box = useRef<HTMLTextAreaElement>(null);
  const unpack = useRef<HTMLDivElement>(null);
  useTypingClass(unpack);
  const { haul, figures, worked } = useDesk();
  const { state } = haul;
  // The lists below are drawn anew when what they show changes, not at every letter.
  const correct = useStable((key: string, correction: Correction, meant?: WordMeant) =>
    haul.change({ change: "correct", key, correction, meant }),
  );
  const change = useStable(haul.change);
  const asRead = useStable((key: string, word?: string) => haul.change({ change: "as read", key, word }));
  const clear = () => {
    haul.clear();
    afterDialog(() => box.current?.focus());
  };
  return (
    <>
      <SwatchPatterns />
      <div ref={unpack} className="unpack">
        <HaulBox box={box}>
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
            onCorrect={correct}
            onAsRead={asRead}
          />
        ) : (
          !figures.failed && <p role="status">{say("page.opening")}</p>
        )}
      </div>
      {worked && (
        <>
          <KitchenChooser
            kitchens={state.kitchens}
            kitchen={state.kitchen}
            units={state.units}
            context={worked.context}
            onChange={change}
          />
          <PlanBelow worked={worked} />
        </>
      )}
    </>
  );
}

/** The plan. Where it fails, the list above it goes on. */
function PlanBelow({ worked }: { readonly worked: WorkedOut }) {
  const say = useWords();
  const { keeper } = useDesk().haul;
  return (
    <Safely of="plan" entered={() => keeper.now().state}>
      <Suspense fallback={<p role="status">{say("plan.working")}</p>}>
        <PlanView state={worked.plan} context={worked.context} onAgain={worked.again} />
      </Suspense>
    </Safely>
  );
}
