import type { HandoutContext } from "@keepwright/handout";
import { humidityWords, roomWords, temperatureWords } from "@keepwright/handout";
import { type KitchenQuestion, kitchenFigures } from "@keepwright/planner";
import { takenFigures } from "./choices.js";
import { type KitchenSay, useKitchenWords } from "./kitchenWords.js";

interface TakenFiguresProps {
  readonly question: KitchenQuestion;
  readonly context: HandoutContext;
}

/** What each answer is taken as, how far off that may be, and where it comes from; on being asked. */
export function TakenFigures({ question, context }: TakenFiguresProps) {
  const say = useKitchenWords();
  const lines = linesFor(say, question, context);
  if (lines.length === 0) return null;
  return (
    <details className="taken">
      <summary>{say("step.sources")}</summary>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}

function linesFor(say: KitchenSay, question: KitchenQuestion, context: HandoutContext): readonly string[] {
  const { speaker, units } = context;
  const told = (value: number) =>
    question === "refrigerator"
      ? roomWords(speaker, units, value)
      : question === "air"
        ? humidityWords(speaker, value)
        : temperatureWords(speaker, units, value);
  const line = (option: string, figure: { value: number; low: number; high: number }, from: string) =>
    say("step.taken", {
      option,
      value: told(figure.value),
      low: told(figure.low),
      high: told(figure.high),
      from,
    });
  switch (question) {
    case "refrigerator":
      return [
        ...takenFigures.refrigerator.map(([value, figure, from]) =>
          line(say(`option.refrigerator.${value}`), figure, say(`from.${from}`)),
        ),
        say("from.litres"),
      ];
    case "cold":
      return takenFigures.cold.map(([value, figure, from]) =>
        line(say(`option.cold.${value}`), figure, say(`from.${from}`)),
      );
    case "room":
      return takenFigures.room.map(([value, figure, from]) =>
        line(say(`option.room.${value}`), figure, say(`from.${from}`)),
      );
    case "air":
      return takenFigures.air.map(([value, figure, from]) =>
        line(say(`option.air.${value}`), figure, say(`from.${from}`)),
      );
    case "cellar":
      return [line(say("option.cellar.cellar"), kitchenFigures.cellarTemperature, say("from.practice"))];
    case "drawers":
      return [say("from.vent")];
    default:
      return [];
  }
}
