import type { Commodity } from "@keepwright/catalogue";
import { type Lot, ripenessWords } from "@keepwright/planner";
import type { Correction } from "../state/corrections.js";
import { useWords } from "../words/words.js";
import { Tick } from "./Tick.js";
import { Segments } from "./unpack/Segments.js";

interface StateFieldsProps {
  readonly lot: Lot;
  readonly commodity: Commodity;
  readonly correct: (correction: Correction) => void;
}

/** The state a lot is in: only what matters for its kind is asked, each answer one touch. */
export function StateFields({ lot, commodity, correct }: StateFieldsProps) {
  const say = useWords();
  return (
    <>
      {commodity.ripening && (
        <Segments
          legend={say("line.ripeness")}
          options={ripenessWords.map((value) => ({ value, words: say(`line.ripeness.${value}`) }))}
          chosen={typeof lot.ripeness === "string" ? lot.ripeness : undefined}
          onChoose={(ripeness) => correct({ ripeness })}
        />
      )}
      <Segments
        legend={say("line.form")}
        options={(["whole", "cut"] as const).map((value) => ({ value, words: say(`line.form.${value}`) }))}
        chosen={lot.form}
        onChoose={(form) => correct({ form })}
      />
      <Age days={lot.extraDays} correct={correct} />
      {commodity.water.transpirationWithTops && (
        <Tick words={say("line.tops")} ticked={lot.tops} onChange={(tops) => correct({ tops })} />
      )}
      <Tick words={say("line.washed")} ticked={lot.washed} onChange={(washed) => correct({ washed })} />
    </>
  );
}

/** Ages that are offered [d]; one told otherwise stands among them. */
const ages = [0, 1, 2, 3, 5, 7] as const;

function Age({ days, correct }: { readonly days: number; readonly correct: StateFieldsProps["correct"] }) {
  const say = useWords();
  const offered = [...new Set([...ages, days])].sort((one, other) => one - other);
  return (
    <Segments
      legend={say("line.age")}
      options={offered.map((each) => ({
        value: String(each),
        words: each === 0 ? say("line.age.today") : say("line.age.days", { count: each }),
      }))}
      chosen={String(days)}
      onChoose={(each) => correct({ extraDays: Number(each) })}
    />
  );
}
