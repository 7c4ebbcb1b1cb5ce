import type { Unused, Wanted } from "../../storage/check.js";
import { keptFields } from "../../storage/keptFields.js";
import { type SaySettings, useSettingsWords } from "../../words/settingsWords.js";

type Agreement = Extract<Wanted, { want: "agreement" }>;

/** What contradicts itself, and what would work instead. */
const contradiction = (say: SaySettings, { because, values }: Agreement): string =>
  // The messages have the values of their own kind of contradiction: a test tries all of them.
  (say as (key: string, values: object) => string)(`agree.${because}`, values);

/** What would work instead. */
function remedy(say: SaySettings, wanted: Exclude<Wanted, Agreement>): string {
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
    default:
      return say(`unused.want.${wanted.want}`);
  }
}

/** In the person's words, and as it stands in the file for whoever mends it; once where both are the same. */
function fieldName(say: SaySettings, at: string): string {
  if (at === "") return say("unused.whole");
  const key = keptFields.find((each) => at === each);
  const name = key && say(`unused.field.${key}`);
  return name === undefined || name === at ? at : say("unused.named", { name, field: at });
}

/** Where it stands, what stands there, and what would work. */
export function unusedLine(say: SaySettings, { field: at, value, wanted }: Unused): string {
  const field = fieldName(say, at);
  if (wanted.want === "agreement") return say("unused.told", { field, told: contradiction(say, wanted) });
  return say("unused.line", {
    field,
    value: value === "" ? say("unused.missing") : value,
    remedy: remedy(say, wanted),
  });
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
        <li key={unusedLine(say, each)}>{unusedLine(say, each)}</li>
      ))}
      {unused.length > listed.length && (
        <li>{say("unused.more", { count: unused.length - listed.length })}</li>
      )}
    </ul>
  );
}
