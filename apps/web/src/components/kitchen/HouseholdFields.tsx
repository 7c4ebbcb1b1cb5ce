import { useId, useMemo } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { useToday } from "../../behaviour/useToday.js";
import { daysOfPlan } from "../../state/daysAway.js";
import { dayRange, peopleRange, portionRange } from "../../state/plannerState.js";
import { firstDay } from "../../state/sinceThen.js";
import { useWords } from "../../words/words.js";
import { WholeNumberField } from "../WholeNumberField.js";

/** How many eat, and for how many days is planned. */
export function PeopleAndDays() {
  const say = useWords();
  const { haul } = useDesk();
  return (
    <>
      <WholeNumberField
        label={say("kitchen.people")}
        value={haul.state.people}
        range={peopleRange}
        onChange={(people) => haul.change({ change: "people", people })}
      />
      <WholeNumberField
        label={say("kitchen.days")}
        value={haul.state.days}
        range={dayRange}
        onChange={(days) => haul.change({ change: "days", days })}
      />
    </>
  );
}

/** How much each eats a day, and the days on which nobody is at home. */
export function PortionsAndAway() {
  const say = useWords();
  const { haul } = useDesk();
  return (
    <>
      <WholeNumberField
        label={say("kitchen.portions")}
        value={haul.state.portions}
        range={portionRange}
        onChange={(portions) => haul.change({ change: "portions", portions })}
      />
      <DaysAway />
    </>
  );
}

function DaysAway() {
  const say = useWords();
  const { haul, language } = useDesk();
  const id = useId();
  const { away, days } = haul.state;
  const written = useMemo(
    () =>
      new Intl.DateTimeFormat(language, {
        weekday: "short",
        day: "numeric",
        month: "short",
        timeZone: "UTC",
      }),
    [language],
  );
  return (
    <fieldset className="segments away" aria-describedby={`${id}-note`}>
      <legend>{say("kitchen.away")}</legend>
      {daysOfPlan(firstDay(haul.state, useToday()), days).map((day) => (
        <label key={day}>
          <input
            type="checkbox"
            checked={away.includes(day)}
            onChange={(event) =>
              haul.change({
                change: "away",
                away: event.target.checked ? [...away, day] : away.filter((each) => each !== day),
              })
            }
          />
          <span>{written.format(new Date(`${day}T00:00:00Z`))}</span>
        </label>
      ))}
      <p id={`${id}-note`} className="soft">
        {say("kitchen.awayNote")}
      </p>
    </fieldset>
  );
}
