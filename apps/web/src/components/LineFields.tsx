import type { HandoutContext } from "@keepwright/handout";
import type { Correction } from "../state/corrections.js";
import { type ReadLine, waits } from "../state/readLots.js";
import { shownAmount } from "../state/shownAmount.js";
import { isLeftOutByWord } from "../state/wordAsked.js";
import { useWords } from "../words/words.js";
import { AmountField } from "./AmountField.js";
import { Candidates, candidatesOf } from "./Candidates.js";
import { KindPicker } from "./KindPicker.js";
import { StateFields } from "./StateFields.js";

interface LineFieldsProps {
  readonly line: ReadLine;
  readonly context: HandoutContext;
  /** Every field, and not only what answers the questions of the line. */
  readonly all: boolean;
  readonly correct: (correction: Correction) => void;
}

/** What can be corrected of a line: likely kinds first, then every field with what holds now. */
export function LineFields({ line, context, all, correct }: LineFieldsProps) {
  const say = useWords();
  const candidates = candidatesOf(line.item.questions);
  const likely = line.kind === "question" ? line.likely : undefined;
  const kind = line.lot?.commodity ?? line.correction?.commodity ?? likely;
  const none = isLeftOutByWord(line.item);
  const commodity = kind === undefined ? undefined : context.catalogue.commodities.get(kind);
  return (
    <>
      <Candidates
        candidates={candidates}
        chosen={kind}
        context={context}
        onPick={(picked) => correct({ commodity: picked })}
      />
      <div className="fields">
        {all && (
          <>
            <KindPicker
              value={kind ?? ""}
              candidates={likely === undefined ? candidates : [likely, ...candidates]}
              context={context}
              onPick={(picked) => correct({ commodity: picked })}
            />
            <AmountField
              key={kind}
              amount={shownAmount(line, commodity, context.units.mass)}
              commodity={commodity}
              onChange={(amount) => correct({ amount })}
            />
            {line.lot && commodity && <StateFields lot={line.lot} commodity={commodity} correct={correct} />}
          </>
        )}
        {line.kind === "lot" && waits(line) && (
          <button type="button" onClick={() => correct({})}>
            {say("line.right")}
          </button>
        )}
        <button type="button" onClick={() => correct({ leftOut: true })}>
          {say(none ? "line.none" : "line.leaveOut")}
        </button>
      </div>
    </>
  );
}
