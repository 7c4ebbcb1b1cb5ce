import { type HandoutContext, kitchenView } from "@keepwright/handout";
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
        <label className="field">
          <span>{say("kitchen.units")}</span>
          <select
            value={state.units}
            onChange={(event) =>
              onChange({ change: "units", units: event.target.value === "us" ? "us" : "metric" })
            }
          >
            <option value="metric">{say("kitchen.metric")}</option>
            <option value="us">{say("kitchen.us")}</option>
          </select>
        </label>
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
