import {
  airSigns,
  coldSigns,
  cupboardSorts,
  kitchenFigures as figure,
  type KitchenAnswers,
  type KitchenQuestion,
  roomSigns,
} from "@keepwright/planner";
import type { KitchenSay } from "./kitchenWords.js";
import type { Option } from "./OptionCards.js";

/** Questions that have one answer out of a few. The others are asked in ways of their own. */
export type ChoiceQuestion = Exclude<KitchenQuestion, "cellar" | "wraps">;

export const isChoice = (question: KitchenQuestion): question is ChoiceQuestion =>
  question !== "cellar" && question !== "wraps";

/** The answer that stands for not knowing: nothing is kept then. */
export const unknown = "unknown";

const sizes = ["hip", "shoulder", "overhead", "litres", "none"] as const;
const counts = ["0", "1", "2", "3", "4"] as const;

/** The answers to a question, in the order they are shown in; not knowing comes last everywhere. */
export function optionsOf(say: KitchenSay, question: ChoiceQuestion): readonly Option<string>[] {
  const last: Option<string> = {
    value: unknown,
    words: say("step.unknown"),
    note: say("step.unknownNote"),
    picture: "unknown",
  };
  return [...known(say, question), last];
}

function known(say: KitchenSay, question: ChoiceQuestion): readonly Option<string>[] {
  switch (question) {
    case "refrigerator":
      return sizes.map((value) => ({
        value,
        words: say(`option.refrigerator.${value}`),
        picture: `refrigerator.${value}`,
      }));
    case "drawers":
      return counts.map((value) => ({
        value,
        words: say("option.drawers.count", { count: Number(value) }),
        picture: `drawers.${value}`,
      }));
    case "door":
      return (["yes", "no"] as const).map((value) => ({
        value,
        words: say(`option.door.${value}`),
        picture: `door.${value}`,
      }));
    case "cold":
      return coldSigns.map((value) => ({
        value,
        words: say(`option.cold.${value}`),
        picture: `cold.${value}`,
      }));
    case "room":
      return roomSigns.map((value) => ({
        value,
        words: say(`option.room.${value}`),
        picture: `room.${value}`,
      }));
    case "air":
      return airSigns.map((value) => ({ value, words: say(`option.air.${value}`), picture: `air.${value}` }));
    case "cupboard":
      return [cupboardSorts[1], cupboardSorts[2], cupboardSorts[0]].map((value) => ({
        value,
        words: say(`option.cupboard.${value}`),
        picture: `cupboard.${value}`,
      }));
  }
}

/** Which of the answers holds. */
export function chosenOf(question: ChoiceQuestion, answers: KitchenAnswers): string {
  if (question === "drawers") return answers.drawers ? String(answers.drawers.length) : unknown;
  if (question === "door") return answers.door === undefined ? unknown : answers.door ? "yes" : "no";
  return answers[question] ?? unknown;
}

/** What choosing an answer changes. */
export function choosing(question: ChoiceQuestion, value: string, answers: KitchenAnswers): KitchenAnswers {
  if (question === "drawers") {
    if (value === unknown) return { drawers: undefined } as unknown as KitchenAnswers;
    const before = answers.drawers ?? [];
    return { drawers: Array.from({ length: Number(value) }, (_, index) => before[index] ?? "unknown") };
  }
  const next = value === unknown ? undefined : question === "door" ? value === "yes" : value;
  return { [question]: next } as KitchenAnswers;
}

/** The figures taken for the answers to a question, with how wide each is: what the page tells on being asked. */
export const takenFigures = {
  refrigerator: [
    ["hip", figure.smallRefrigeratorLitres, "practice"],
    ["shoulder", figure.refrigeratorLitres, "practice"],
    ["overhead", figure.largeRefrigeratorLitres, "practice"],
  ],
  cold: [
    ["freezes", figure.coldWhereThingsFreeze, "freezes"],
    ["ordinary", figure.refrigeratorTemperature, "evans"],
    ["turns", figure.coldWhereMilkTurns, "turns"],
  ],
  room: [
    ["cool", figure.coolRoomTemperature, "practice"],
    ["ordinary", figure.roomTemperature, "practice"],
    ["hot", figure.hotRoomTemperature, "practice"],
  ],
  air: [
    ["dry", figure.dryRoomHumidity, "practice"],
    ["ordinary", figure.roomHumidity, "practice"],
    ["damp", figure.dampRoomHumidity, "practice"],
  ],
} as const;
