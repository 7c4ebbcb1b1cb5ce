import { type HandoutContext, kitchenView } from "@keepwright/handout";
import { type OrdinaryKitchenKey, ordinaryKitchens } from "@keepwright/planner";
import { dayRange, type PlannerChange, type PlannerState, peopleRange } from "../state/plannerState.js";
import { WholeNumberField } from "./WholeNumberField.js";

interface KitchenChooserProps {
  readonly state: PlannerState;
  readonly context: HandoutContext;
  readonly onChange: (change: PlannerChange) => void;
}

const keys = Object.keys(ordinaryKitchens) as OrdinaryKitchenKey[];

/** Which ordinary kitchen, how many people, how many days, which units; and what that kitchen is, in words. */
export function KitchenChooser({ state, context, onChange }: KitchenChooserProps) {
  return (
    <section className="kitchen" aria-labelledby="kitchen-heading">
      <h2 id="kitchen-heading">The kitchen and who eats</h2>
      <div className="fields">
        <label className="field wide">
          <span>Kitchen most like yours</span>
          <select
            value={state.kitchen}
            onChange={(event) =>
              onChange({ change: "kitchen", kitchen: event.target.value as OrdinaryKitchenKey })
            }
          >
            {keys.map((key) => (
              <option key={key} value={key}>
                {ordinaryKitchens[key].name}
              </option>
            ))}
          </select>
        </label>
        <WholeNumberField
          label="People"
          value={state.people}
          range={peopleRange}
          onChange={(people) => onChange({ change: "people", people })}
        />
        <WholeNumberField
          label="Days to plan"
          value={state.days}
          range={dayRange}
          onChange={(days) => onChange({ change: "days", days })}
        />
        <label className="field">
          <span>Units</span>
          <select
            value={state.units}
            onChange={(event) =>
              onChange({ change: "units", units: event.target.value === "us" ? "us" : "metric" })
            }
          >
            <option value="metric">°C and kilograms</option>
            <option value="us">°F and pounds</option>
          </select>
        </label>
      </div>
      <details>
        <summary>What this kitchen is taken to be</summary>
        <ul>
          {kitchenView(context, ordinaryKitchens[state.kitchen]).lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}
