import type { TypedReading } from "@keepwright/planner";
import { useKitchenWords } from "./kitchenWords.js";
import { OptionCards } from "./OptionCards.js";
import type { AskProps } from "./QuestionScreen.js";
import { ReadingField } from "./ReadingField.js";

type Place = "cellar" | "balcony" | "neither";
const places: readonly Place[] = ["cellar", "balcony", "neither"];

/** A cellar, a balcony, both or neither, each with its reading. */
export function AskCellar({ answers, context, wrong, wrongId, onAnswer }: AskProps) {
  const say = useKitchenWords();
  const { cellar, balcony } = answers;
  const neither = cellar === false && balcony === false;
  const usualUnit: TypedReading["unit"] = context.units.temperature === "us" ? "°F" : "°C";
  const field = { wrong, wrongId, usualUnit };
  const choose = (place: Place, chosen: boolean) =>
    onAnswer(place === "neither" ? { cellar: false, balcony: false } : { [place]: chosen });
  const chosen = places.filter((place) =>
    place === "neither" ? neither : place === "cellar" ? cellar : balcony,
  );
  return (
    <>
      <OptionCards
        legend={say("ask.cellar")}
        several
        options={places.map((value) => ({
          value,
          words: say(`option.cellar.${value}`),
          picture: `cellar.${value}` as const,
        }))}
        chosen={chosen}
        onChoose={choose}
      />
      {cellar && (
        <ReadingField
          {...field}
          label={say("reading.cellar")}
          reading={answers.cellarReading}
          onRead={(cellarReading) => onAnswer({ cellarReading })}
        />
      )}
      {balcony && (
        <ReadingField
          {...field}
          label={say("reading.balcony")}
          hint={say("reading.balconyWhy")}
          reading={answers.balconyReading}
          onRead={(balconyReading) => onAnswer({ balconyReading })}
        />
      )}
    </>
  );
}
