import { drawerSorts, type TypedReading } from "@keepwright/planner";
import { useId } from "react";
import type { ChoiceQuestion } from "./choices.js";
import { useKitchenWords } from "./kitchenWords.js";
import type { AskProps } from "./QuestionScreen.js";
import { ReadingField, TypedField } from "./ReadingField.js";

/** What is asked further beneath some answers: a reading, the litres, the slide of every drawer. */
export function ChoiceExtras({ question, ...ask }: AskProps & { readonly question: ChoiceQuestion }) {
  const say = useKitchenWords();
  const { answers, onAnswer, wrong, wrongId } = ask;
  const usualUnit: TypedReading["unit"] = ask.context.units.temperature === "us" ? "°F" : "°C";
  const field = { wrong, wrongId };
  if (question === "drawers") return <DrawerSlides {...ask} />;
  if (question === "refrigerator" && answers.refrigerator === "litres")
    return (
      <TypedField
        {...field}
        label={say("reading.litres")}
        typed={answers.litres ?? ""}
        onType={(litres) => onAnswer({ litres })}
      />
    );
  if (question === "cold" && answers.cold === "reading")
    return (
      <ReadingField
        {...field}
        label={say("reading.cold")}
        hint={say("reading.coldHow")}
        reading={answers.coldReading}
        usualUnit={usualUnit}
        onRead={(coldReading) => onAnswer({ coldReading })}
      />
    );
  if (question === "room" && answers.room === "reading")
    return (
      <ReadingField
        {...field}
        label={say("reading.room")}
        reading={answers.roomReading}
        usualUnit={usualUnit}
        onRead={(roomReading) => onAnswer({ roomReading })}
      />
    );
  if (question === "air" && answers.air === "reading")
    return (
      <TypedField
        {...field}
        label={say("reading.air")}
        typed={answers.airReading ?? ""}
        onType={(airReading) => onAnswer({ airReading })}
      />
    );
  return null;
}

/** For every drawer, whether air can be let into it. */
function DrawerSlides({ answers, onAnswer }: AskProps) {
  const say = useKitchenWords();
  const name = useId();
  const drawers = answers.drawers ?? [];
  return drawers.map((sort, index) => (
    <fieldset key={index} className="segments">
      <legend>{say("drawer.which", { number: index + 1 })}</legend>
      {drawerSorts.map((each) => (
        <label key={each}>
          <input
            type="radio"
            name={`${name}-${index}`}
            checked={each === sort}
            onChange={() => onAnswer({ drawers: drawers.map((old, at) => (at === index ? each : old)) })}
          />
          <span>{say(`drawer.${each}`)}</span>
        </label>
      ))}
    </fieldset>
  ));
}
