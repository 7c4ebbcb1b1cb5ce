import "../../styles/paper.css";
import { useLayoutEffect, useRef } from "react";
import { usePaperWords } from "../../words/paperWords.js";
import { CalendarPart } from "./CalendarPart.js";
import { LabelsPart } from "./LabelsPart.js";
import { SheetPart, type TakeAlongProps } from "./SheetPart.js";

interface TakeAlongDialogProps extends TakeAlongProps {
  readonly onClose: () => void;
}

/** Over the plan: what of it can be printed and taken along. */
export default function TakeAlongDialog({ made, context, onClose }: TakeAlongDialogProps) {
  const say = usePaperWords();
  const dialog = useRef<HTMLDialogElement>(null);
  // Closed before it is taken away, so that the focus goes back to where it was.
  useLayoutEffect(() => {
    const own = dialog.current;
    own?.showModal();
    return () => own?.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      className="take-along"
      aria-labelledby="take-along-heading"
      onClose={() => dialog.current?.open || onClose()}
    >
      <div className="take-along-head">
        <h2 id="take-along-heading" tabIndex={-1}>
          {say("paper.heading")}
        </h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {say("paper.close")}
        </button>
      </div>
      <SheetPart made={made} context={context} />
      <LabelsPart made={made} context={context} />
      <CalendarPart made={made} context={context} />
      <p className="take-along-print">
        <button
          type="button"
          onClick={() => {
            dialog.current?.close();
            print();
          }}
        >
          {say("paper.print")}
        </button>
      </p>
    </dialog>
  );
}
