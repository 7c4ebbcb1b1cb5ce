import { useDesk } from "../../behaviour/desk.js";
import type { MadePlan } from "../../behaviour/usePlan.js";
import { useToday } from "../../behaviour/useToday.js";
import { daysFrom } from "../../state/daysAway.js";
import { useWords } from "../../words/words.js";

/** Where days have gone by since the list came home: that they have, what that means, and a way to begin anew. */
export function SinceThen({ made }: { readonly made: MadePlan }) {
  const say = useWords();
  const { haul, tag } = useDesk();
  const today = useToday();
  const { from, household } = made.first;
  const passed = daysFrom(from, today);
  if (passed <= 0) return null;
  const date = new Intl.DateTimeFormat(tag, {
    weekday: "long",
    day: "numeric",
    month: "long",
    timeZone: "UTC",
  });
  const values = { date: date.format(new Date(`${from}T00:00:00Z`)), count: passed };
  const over = passed >= household.days;
  return (
    <div className="since-then">
      <p>{say(over ? "since.over" : made.past ? "since.carried" : "since.nothingLeft", values)}</p>
      <button type="button" onClick={() => haul.change({ change: "from", from: today })}>
        {say("since.anew")}
      </button>
    </div>
  );
}
