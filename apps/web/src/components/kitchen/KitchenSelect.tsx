import { type HandoutContext, kitchenView } from "@keepwright/handout";
import { type OrdinaryKitchenKey, ordinaryKitchens } from "@keepwright/planner";
import type { PlannerChange, PlannerState } from "../../state/plannerState.js";
import { useWords } from "../../words/words.js";

interface KitchenSelectProps {
  readonly state: Pick<PlannerState, "kitchens" | "kitchen">;
  readonly context: HandoutContext;
  readonly onChange: (change: PlannerChange) => void;
}

const ordinaryKeys = Object.keys(ordinaryKitchens) as OrdinaryKitchenKey[];

/** Which kitchen is planned for: one of the person's own, which come first, or an ordinary one. */
export function KitchenSelect({ state, context, onChange }: KitchenSelectProps) {
  const say = useWords();
  const ordinary = ordinaryKeys.map((key) => (
    <option key={key} value={key}>
      {kitchenView(context, ordinaryKitchens[key]).name}
    </option>
  ));
  return (
    <label className="field wide">
      <span>{say("kitchen.choose")}</span>
      <select
        value={state.kitchen}
        onChange={(event) => onChange({ change: "kitchen", kitchen: event.target.value })}
      >
        {state.kitchens.length === 0 ? (
          ordinary
        ) : (
          <>
            <optgroup label={say("kitchen.own")}>
              {state.kitchens.map(({ key, kitchen }) => (
                <option key={key} value={key}>
                  {kitchen.name}
                </option>
              ))}
            </optgroup>
            <optgroup label={say("kitchen.ordinary")}>{ordinary}</optgroup>
          </>
        )}
      </select>
    </label>
  );
}
