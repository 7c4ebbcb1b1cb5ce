import { allAsPlanned, allInRefrigerator } from "../../state/lying.js";
import type { PlannerChange } from "../../state/plannerState.js";
import { useWords } from "../../words/words.js";
import type { Mine } from "./useMine.js";

interface BeginWithProps {
  readonly mine: Mine;
  readonly onChange: (change: PlannerChange) => void;
}

/** Three ways to begin, so that only what differs has to be said. */
export function BeginWith({ mine, onChange }: BeginWithProps) {
  const say = useWords();
  const { lots, kitchen, plan } = mine;
  const cold = allInRefrigerator(lots, kitchen, plan);
  const begin = (said: ReturnType<typeof allAsPlanned>) => onChange({ change: "all lying", ...said });
  return (
    <fieldset className="begin">
      <legend>{say("mine.begin")}</legend>
      <button type="button" onClick={() => begin(allAsPlanned(lots, plan))}>
        {say("mine.begin.planned")}
      </button>
      {cold && (
        <button type="button" onClick={() => begin(cold)}>
          {say("mine.begin.cold")}
        </button>
      )}
      <button type="button" onClick={() => begin({ lying: {}, vents: {} })}>
        {say("mine.begin.nothing")}
      </button>
    </fieldset>
  );
}
