import { type HandoutContext, kitchenView, type Units, unitsOf } from "@keepwright/handout";
import { type OrdinaryKitchenKey, ordinaryKitchens } from "@keepwright/planner";
import { kitchenOf } from "../state/kitchenOf.js";
import { dayRange, type PlannerChange, type PlannerState, peopleRange } from "../state/plannerState.js";
import { useWords } from "../words/words.js";
import { WholeNumberField } from "./WholeNumberField.js";

interface KitchenChooserProps {
  readonly state: PlannerState;
  readonly context: HandoutContext;
  readonly onChange: (change: PlannerChange) => void;
}

const keys = Object.keys(ordinaryKitchens) as OrdinaryKitchenKey[];

/** Which ordinary kitchen, how many people, how many days, which units; and what that kitchen is, in words. */
export function KitchenChooser({ state, context, onChange }: KitchenChooserProps) {
  const say = useWords();
  return (
    <section className="kitchen" aria-labelledby="kitchen-heading">
      <h2 id="kitchen-heading">{say("kitchen.heading")}</h2>
      <div className="fields">
        <label className="field wide">
          <span>{say("kitchen.choose")}</span>
          <select
            value={state.kitchen}
            onChange={(event) => onChange({ change: "kitchen", kitchen: event.target.value })}
          >
            {keys.map((key) => (
              <option key={key} value={key}>
                {ordinaryKitchens[key].name}
              </option>
            ))}
            {state.kitchens.map(({ key, kitchen }) => (
              <option key={key} value={key}>
                {kitchen.name}
              </option>
            ))}
          </select>
        </label>
        <WholeNumberField
          label={say("kitchen.people")}
          value={state.people}
          range={peopleRange}
          onChange={(people) => onChange({ change: "people", people })}
        />
        <WholeNumberField
          label={say("kitchen.days")}
          value={state.days}
          range={dayRange}
          onChange={(days) => onChange({ change: "days", days })}
        />
        <UnitsField units={state.units} onChange={(units) => onChange({ change: "units", units })} />
      </div>
      <details>
        <summary>{say("kitchen.details")}</summary>
        <ul>
          {kitchenView(context, kitchenOf(state)).lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}

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
