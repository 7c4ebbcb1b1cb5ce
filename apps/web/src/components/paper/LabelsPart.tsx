import { type LabelSheet, type UsualSheet, usualSheets } from "@keepwright/handout";
import { useState } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { usePaper } from "../../behaviour/paper/usePaper.js";
import { type SayPaper, usePaperWords } from "../../words/paperWords.js";
import { Choice } from "../settings/Choice.js";
import { Tick } from "../Tick.js";
import { WholeNumberField } from "../WholeNumberField.js";
import { PaperStatus } from "./PaperStatus.js";
import type { TakeAlongProps } from "./SheetPart.js";
import { labelsAsked } from "./takeAlong.js";

const names = Object.keys(usualSheets) as UsualSheet[];
const ofLetter = (name: UsualSheet): boolean => name.startsWith("letter");

function gridWords(say: SayPaper, number: (value: number) => string, name: UsualSheet): string {
  const { columns, rows, labelWidth, labelHeight }: LabelSheet = usualSheets[name];
  const page = say(ofLetter(name) ? "paper.size.letter" : "paper.size.a4");
  return say("paper.gridName", {
    page,
    columns,
    rows,
    width: number(labelWidth),
    height: number(labelHeight),
  });
}

/** Labels for bags and boxes: the sheet, where to begin on it, and the file. */
export function LabelsPart({ made, context }: TakeAlongProps) {
  const say = usePaperWords();
  const { tag } = useDesk();
  const us = context.units.mass === "us";
  const [name, setName] = useState<UsualSheet>(us ? "letter-3x10-66.7x25.4" : "a4-3x7-63.5x38.1");
  const [start, setStart] = useState(1);
  const [outlines, setOutlines] = useState(false);
  const { state, make } = usePaper();
  const grid = usualSheets[name];
  const most = grid.columns * grid.rows;
  const written = new Intl.NumberFormat(tag);
  return (
    <section aria-labelledby="paper-labels">
      <h3 id="paper-labels">{say("paper.labels")}</h3>
      <p>{say("paper.labelsAbout")}</p>
      <div className="fields">
        <Choice
          label={say("paper.grid")}
          value={name}
          choices={names.map((each) => [each, gridWords(say, (value) => written.format(value), each)])}
          onChange={setName}
        />
        <WholeNumberField
          label={say("paper.start")}
          value={Math.min(start, most)}
          range={{ least: 1, most }}
          onChange={setStart}
        />
      </div>
      <Tick words={say("paper.outlines")} ticked={outlines} onChange={setOutlines} />
      <button
        type="button"
        className="main-button"
        onClick={() =>
          make(
            labelsAsked(context, made, { grid, start: Math.min(start, most), outlines }),
            say("paper.file.labels", { date: made.plan.from }),
          )
        }
      >
        {say("paper.makeLabels")}
      </button>
      <PaperStatus state={state} />
    </section>
  );
}
