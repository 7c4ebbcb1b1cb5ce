import type { Unused, Wanted } from "../../storage/check.js";
import { type SaySettings, useSettingsWords } from "../../words/settingsWords.js";

/** What would work instead. What contradicts itself the planner tells in its own words. */
function remedy(say: SaySettings, wanted: Wanted): string {
  switch (wanted.want) {
    case "text":
      return say("unused.want.text", wanted);
    case "number":
    case "whole number":
      return say(`unused.want.${wanted.want}`, wanted);
    case "length":
      return say("unused.want.length", wanted);
    case "choice":
      return say("unused.want.choice", { choices: wanted.choices.join(", ") });
    case "agreement":
      return wanted.remedy;
    default:
      return say(`unused.want.${wanted.want}`);
  }
}

/** Most that is listed; a person who mends a file by hand goes on from there. */
const mostListed = 30;

/** What could not be used of a record or a file: by field and value, each with what would work. */
export function UnusedList({ unused }: { readonly unused: readonly Unused[] }) {
  const say = useSettingsWords();
  if (unused.length === 0) return null;
  const listed = unused.slice(0, mostListed);
  return (
    <ul className="unused">
      {listed.map((each) => (
        <li key={`${each.field} ${each.wanted.want}`}>
          {say("unused.line", {
            field: each.field === "" ? say("unused.whole") : each.field,
            value: each.value === "" ? say("unused.missing") : each.value,
            remedy: remedy(say, each.wanted),
          })}
        </li>
      ))}
      {unused.length > listed.length && (
        <li>{say("unused.more", { count: unused.length - listed.length })}</li>
      )}
    </ul>
  );
}
