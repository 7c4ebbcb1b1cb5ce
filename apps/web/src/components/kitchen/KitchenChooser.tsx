import { type HandoutContext, kitchenView, type Units, unitsOf } from "@keepwright/handout";
import { memo, useMemo } from "react";
import { kitchenOf } from "../../state/kitchenOf.js";
import type { PlannerChange, PlannerState } from "../../state/plannerState.js";
import { addressOf } from "../../state/route.js";
import { useWords } from "../../words/words.js";
import { PeopleAndDays, PortionsAndAway } from "./HouseholdFields.js";
import { KitchenSelect } from "./KitchenSelect.js";

interface KitchenChooserProps {
  readonly kitchens: PlannerState["kitchens"];
  readonly kitchen: PlannerState["kitchen"];
  readonly units: Units;
  readonly context: HandoutContext;
  readonly onChange: (change: PlannerChange) => void;
}

/** Which kitchen, how many people, how many days, which units; and, on opening, what that kitchen is and who is away. */
export const KitchenChooser = memo(function KitchenChooser({
  kitchens,
  kitchen,
  units,
  context,
  onChange,
}: KitchenChooserProps) {
  const say = useWords();
  const described = useMemo(
    () => kitchenView(context, kitchenOf({ kitchen, kitchens })).lines,
    [context, kitchen, kitchens],
  );
  return (
    <section className="kitchen" aria-labelledby="kitchen-heading">
      <h2 id="kitchen-heading">{say("kitchen.heading")}</h2>
      <div className="fields">
        <KitchenSelect state={{ kitchens, kitchen }} context={context} onChange={onChange} />
        <PeopleAndDays />
        <UnitsField units={units} onChange={(units) => onChange({ change: "units", units })} />
        <a className="button" href={addressOf("kitchen")}>
          {say("kitchen.describe")}
        </a>
      </div>
      <details>
        <summary>{say("kitchen.moreEating")}</summary>
        <div className="fields">
          <PortionsAndAway />
        </div>
      </details>
      <details>
        <summary>{say("kitchen.details")}</summary>
        <ul>
          {described.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </details>
    </section>
  );
});

interface UnitsFieldProps {
  readonly units: Units;
  readonly onChange: (units: Units) => void;
}

/** Both at once; each apart is for the settings, and shown here where it was chosen there. */
function UnitsField({ units, onChange }: UnitsFieldProps) {
  const say = useWords();
  const apart = units.mass !== units.temperature;
  return (
    <label className="field">
      <span>{say("kitchen.units")}</span>
      <select
        value={apart ? "apart" : units.mass}
        onChange={(event) => onChange(unitsOf(event.target.value === "us" ? "us" : "metric"))}
      >
        {apart && <option value="apart">{say("kitchen.apart")}</option>}
        <option value="metric">{say("kitchen.metric")}</option>
        <option value="us">{say("kitchen.us")}</option>
      </select>
    </label>
  );
}
