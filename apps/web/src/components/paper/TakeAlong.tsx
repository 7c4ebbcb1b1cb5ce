import { Suspense, useState } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { lazyPart } from "../../behaviour/lazyPart.js";
import { useWords } from "../../words/words.js";
import { Safely } from "../Safely.js";
import type { TakeAlongProps } from "./SheetPart.js";

/** Comes when somebody asks for it. */
const TakeAlongDialog = lazyPart(() => import("./TakeAlongDialog.js"));

/** The button that opens what of a plan can be printed and taken along. */
export function TakeAlong({ made, context }: TakeAlongProps) {
  const say = useWords();
  const { keeper } = useDesk().haul;
  const [open, setOpen] = useState(false);
  return (
    <>
      <p className="take-along-opener">
        <button type="button" className="print-button" aria-haspopup="dialog" onClick={() => setOpen(true)}>
          {say("plan.takeAlong")}
        </button>
      </p>
      {open && (
        <Safely of="takeAlong" entered={() => keeper.now().state} asked>
          <Suspense fallback={<p role="status">{say("screen.opening")}</p>}>
            <TakeAlongDialog made={made} context={context} onClose={() => setOpen(false)} />
          </Suspense>
        </Safely>
      )}
    </>
  );
}
