import "../../styles/paper.css";
import { usePaperWords } from "../../words/paperWords.js";
import { useModal } from "../useModal.js";
import { CalendarPart } from "./CalendarPart.js";
import { LabelsPart } from "./LabelsPart.js";
import { SheetPart, type TakeAlongProps } from "./SheetPart.js";

interface TakeAlongDialogProps extends TakeAlongProps {
  readonly onClose: () => void;
}

/** Over the plan: what of it can be printed and taken along. */
export default function TakeAlongDialog({ made, context, onClose }: TakeAlongDialogProps) {
  const say = usePaperWords();
  const modal = useModal(onClose);
  return (
    <dialog {...modal.props} className="take-along" aria-labelledby="take-along-heading">
      <div className="take-along-head">
        <h2 id="take-along-heading" tabIndex={-1}>
          {say("paper.heading")}
        </h2>
        <button type="button" onClick={modal.close}>
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
            modal.close();
            print();
          }}
        >
          {say("paper.print")}
        </button>
      </p>
    </dialog>
  );
}
