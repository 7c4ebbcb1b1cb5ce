import type { HandoutContext } from "@keepwright/handout";
import { type PaperSize, paperSizes } from "@keepwright/paper/browser";
import { useState } from "react";
import { usePaper } from "../../behaviour/paper/usePaper.js";
import type { MadePlan } from "../../behaviour/usePlan.js";
import { usePaperWords } from "../../words/paperWords.js";
import { Choice } from "../settings/Choice.js";
import { Tick } from "../Tick.js";
import { PaperStatus } from "./PaperStatus.js";
import { sheetAsked } from "./takeAlong.js";

export interface TakeAlongProps {
  readonly made: MadePlan;
  readonly context: HandoutContext;
}

/** The sheet for the refrigerator door: paper, print, and the file. */
export function SheetPart({ made, context }: TakeAlongProps) {
  const say = usePaperWords();
  const [paper, setPaper] = useState<PaperSize>(context.units.mass === "us" ? "letter" : "a4");
  const [large, setLarge] = useState(false);
  const { state, make } = usePaper();
  return (
    <section aria-labelledby="paper-sheet">
      <h3 id="paper-sheet">{say("paper.sheet")}</h3>
      <p>{say("paper.sheetAbout")}</p>
      <div className="fields">
        <Choice
          label={say("paper.size")}
          value={paper}
          choices={paperSizes.map((size) => [size, say(`paper.size.${size}`)])}
          onChange={setPaper}
        />
      </div>
      <Tick words={say("paper.large")} ticked={large} onChange={setLarge} />
      <button
        type="button"
        className="main-button"
        onClick={() =>
          make(sheetAsked(context, made, { paper, large }), say("paper.file.sheet", { date: made.plan.from }))
        }
      >
        {say("paper.makeSheet")}
      </button>
      <PaperStatus state={state} />
    </section>
  );
}
