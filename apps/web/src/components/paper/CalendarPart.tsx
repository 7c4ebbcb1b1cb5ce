import type { Reminder } from "@keepwright/handout";
import { useState } from "react";
import { usePaperWords } from "../../words/paperWords.js";
import { Choice } from "../settings/Choice.js";
import { saveFile } from "../settings/saveFile.js";
import type { TakeAlongProps } from "./SheetPart.js";
import { calendarOf } from "./takeAlong.js";

/** Hours are declared preferences, no source. */
const reminders = {
  none: undefined,
  same: { day: "same", hour: 8, minute: 0 },
  before: { day: "before", hour: 18, minute: 0 },
} as const satisfies Record<string, Reminder | undefined>;
type Remind = keyof typeof reminders;

/** The days of the plan for a calendar program. */
export function CalendarPart({ made, context }: TakeAlongProps) {
  const say = usePaperWords();
  const [remind, setRemind] = useState<Remind>("none");
  const [saved, setSaved] = useState("");
  const save = () => {
    const name = say("paper.file.calendar", { date: made.plan.from });
    const text = calendarOf(context, made, reminders[remind], new Date().toISOString());
    saveFile(name, text, "text/calendar");
    setSaved(say("paper.savedDays", { name }));
  };
  return (
    <section aria-labelledby="paper-calendar">
      <h3 id="paper-calendar">{say("paper.calendar")}</h3>
      <p>{say("paper.calendarAbout")}</p>
      <div className="fields">
        <Choice
          label={say("paper.remind")}
          value={remind}
          choices={(["none", "same", "before"] as const).map((each) => [each, say(`paper.remind.${each}`)])}
          onChange={setRemind}
        />
      </div>
      <button type="button" className="main-button" onClick={save}>
        {say("paper.makeCalendar")}
      </button>
      <p role="status" className="paper-status">
        {saved}
      </p>
    </section>
  );
}
