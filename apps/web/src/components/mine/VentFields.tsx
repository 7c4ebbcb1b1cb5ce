import { type VentSetting, ventSettings } from "@keepwright/planner";
import type { PlannerChange, PlannerState } from "../../state/plannerState.js";
import { useWords } from "../../words/words.js";
import type { Mine } from "./useMine.js";

interface VentFieldsProps {
  readonly mine: Mine;
  readonly vents: PlannerState["vents"];
  readonly onChange: (change: PlannerChange) => void;
}

/** How each vent stands that can be turned. */
export function VentFields({ mine, vents, onChange }: VentFieldsProps) {
  const say = useWords();
  const turning = mine.kitchen.places.filter(({ vent }) => vent === "choose");
  if (turning.length === 0) return null;
  return (
    <fieldset className="vents">
      <legend>{say("mine.vents")}</legend>
      {turning.map(({ id }) => (
        <label key={id} className="field">
          <span>{mine.places.get(id)}</span>
          <select
            value={vents[id] ?? ""}
            onChange={(event) => {
              const setting = ventSettings.find((each) => each === event.target.value);
              onChange({ change: "vent", place: id, setting });
            }}
          >
            <option value="">{say("mine.vent.unsaid")}</option>
            {ventSettings.map((setting: VentSetting) => (
              <option key={setting} value={setting}>
                {say(`mine.vent.${setting}`)}
              </option>
            ))}
          </select>
        </label>
      ))}
    </fieldset>
  );
}
