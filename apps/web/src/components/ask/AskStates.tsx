import type { AskedState } from "@keepwright/handout";
import { useWords } from "../../words/words.js";
import { Choice } from "./Choice.js";

export type AskKitchen = "mine" | "ordinary";
export type AskRipeness = NonNullable<AskedState["ripeness"]>;
/** For what the answer holds. */
export interface AskFor {
  readonly kitchen: AskKitchen;
  readonly form: AskedState["form"];
  readonly ripeness: AskRipeness;
}

interface AskStatesProps {
  readonly asked: AskFor;
  /** Whether the person's kitchen is another than the ordinary one. */
  readonly own: boolean;
  readonly ripens: boolean;
  readonly onChange: (asked: AskFor) => void;
}

/** In which kitchen, whole or cut, and unripe or ripe where it matters. */
export function AskStates({ asked, own, ripens, onChange }: AskStatesProps) {
  const say = useWords();
  const options = <Value extends string, Group extends string>(group: Group, values: readonly Value[]) =>
    values.map((value) => ({ value, key: `ask.${group}.${value}` as const }));
  return (
    <div className="ask-states">
      {own && (
        <Choice
          legend={say("ask.kitchen")}
          value={asked.kitchen}
          options={options("kitchen", ["mine", "ordinary"] as const).map(({ value, key }) => ({
            value,
            label: say(key),
          }))}
          onChange={(kitchen) => onChange({ ...asked, kitchen })}
        />
      )}
      <Choice
        legend={say("ask.form")}
        value={asked.form}
        options={options("form", ["whole", "cut"] as const).map(({ value, key }) => ({
          value,
          label: say(key),
        }))}
        onChange={(form) => onChange({ ...asked, form })}
      />
      {ripens && asked.form === "whole" && (
        <Choice
          legend={say("ask.ripeness")}
          value={asked.ripeness}
          options={options("ripeness", ["unripe", "ripe"] as const).map(({ value, key }) => ({
            value,
            label: say(key),
          }))}
          onChange={(ripeness) => onChange({ ...asked, ripeness })}
        />
      )}
    </div>
  );
}
