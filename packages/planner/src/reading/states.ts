import type { RipenessWord } from "../problem/lot.js";
import { numberAt } from "./numbers.js";
import type { Token } from "./tokens.js";

/** What a word or phrase says about the state of a lot. */
export interface StateChange {
  readonly ripeness?: RipenessWord;
  readonly form?: "whole" | "cut";
  readonly tops?: boolean;
  readonly washed?: boolean;
  readonly extraDays?: number;
  /** Told by the colour green, which means unripe only in some kinds. */
  readonly byColour?: boolean;
  /** Only tells one part from another: "3 red apples and 2 yellow". */
  readonly colour?: string;
  /** "Half ripe", behind a name, may as well mean half of the lot. */
  readonly orHalf?: boolean;
}

/** A colour by its first word, in all its words. Orange is left out: it is a fruit. */
const coloured = (words: string): [StateChange, string[]] => {
  const all = words.split(" ");
  return [{ colour: all[0]! }, all];
};

const phrases: [StateChange, string[]][] = [
  [
    { ripeness: "unripe", byColour: true, colour: "green" },
    [
      "green",
      "still green",
      "greenish",
      "greening",
      "gone green",
      "going green",
      "turned green",
      "turning green",
      "green skin",
      "green skins",
      "with green skin",
      "green patches",
      "green spots",
      "with green patches",
      "with green spots",
      "verde",
      "verdes",
      "verdoso",
      "verdosa",
      "verdosos",
      "verdosas",
    ],
  ],
  [
    { ripeness: "unripe" },
    [
      "unripe",
      "not ripe",
      "not yet ripe",
      "underripe",
      "under ripe",
      "hard",
      "rock hard",

      "firm",

      "still hard",

      "duro",
      "dura",
      "duros",
      "duras",
      "firme",
      "firmes",
      "sin madurar",
    ],
  ],
  [
    { ripeness: "turning" },
    [
      "turning",
      "nearly ripe",
      "almost ripe",
      "green tips",
      "with green tips",
      "breaking",
      "not quite ripe",
      "casi maduro",
      "casi madura",
      "casi maduros",
      "casi maduras",
    ],
  ],
  [{ ripeness: "turning", orHalf: true }, ["half ripe", "medio maduro", "medio madura"]],
  [
    { ripeness: "ripe" },
    [
      "ripe",
      "soft",
      "firm ripe",
      "ready to eat",
      "ready",
      "just ripe",
      "perfectly ripe",
      "maduro",
      "madura",
      "maduros",
      "maduras",
    ],
  ],
  [
    { ripeness: "very ripe" },
    [
      "very ripe",
      "overripe",
      "over ripe",
      "very soft",
      "mushy",
      "spotty",
      "too ripe",
      "really ripe",
      "brown spots",
      "with brown spots",
      "muy maduro",
      "muy madura",
      "muy maduros",
      "muy maduras",
    ],
  ],
  [
    { form: "cut" },
    [
      "cut",
      "sliced",
      "chopped",
      "diced",
      "cubed",
      "peeled",
      "shelled",
      "podded",
      "hulled",
      "shucked",
      "husked",
      "cored",
      "pitted",
      "stoned",
      "deseeded",
      "desgranado",
      "desgranada",
      "desgranados",
      "desgranadas",
      "deshuesado",
      "deshuesada",
      "deshuesados",
      "deshuesadas",
      "leftover",
      "left over",
      "half eaten",
      "cut up",
      "precut",
      "pre cut",
      "shredded",
      "grated",
      "halved",
      "in half",
      "quartered",
      "already cut",
      "cut in half",
      "cut open",
      "sliced up",
      "chopped up",
      "cortado",
      "cortada",
      "cortados",
      "cortadas",
      "pelado",
      "pelada",
      "pelados",
      "peladas",
      "picado",
      "picada",
      "picados",
      "picadas",
      "en rodajas",
    ],
  ],
  [{ form: "whole" }, ["whole", "uncut", "entero", "entera", "enteros", "enteras"]],
  [
    { washed: true },
    [
      "washed",
      "prewashed",
      "pre washed",
      "ready washed",
      "triple washed",
      "rinsed",
      "already washed",
      "lavado",
      "lavada",
      "lavados",
      "lavadas",
    ],
  ],
  [{ washed: false }, ["unwashed", "not washed", "sin lavar"]],
  [
    { tops: true },
    [
      "bunched",
      "with tops",
      "with greens",
      "with leaves",
      "with their tops",
      "with the tops",
      "with tops on",
      "with the tops on",
      "with their greens",
      "with their leaves",
      "with leaves on",
      "with the leaves on",
      "tops on",
      "leaves on",
      "greens on",
      "with green tops",
      "con hojas",
      "con sus hojas",
    ],
  ],
  [
    { tops: false },
    ["without tops", "no tops", "tops off", "topped", "without leaves", "without greens", "sin hojas"],
  ],
  [
    { extraDays: 7 },
    ["from last week", "a week old", "last weeks", "bought last week", "de la semana pasada"],
  ],
  ...["red rojo roja rojos rojas", "yellow amarillo amarilla amarillos amarillas"].map(coloured),
  ...["white blanco blanca blancos blancas", "purple morado morada morados moradas"].map(coloured),
  ...["black", "golden", "pink", "brown"].map(coloured),
  [{ extraDays: 1 }, ["from yesterday", "bought yesterday", "yesterdays", "de ayer"]],
];
const known = new Map(
  phrases.flatMap(([change, texts]) => texts.map((text): [string, StateChange] => [text, change])),
);
const longest = Math.max(...[...known.keys()].map((text) => text.split(" ").length));

const daysIn: Record<string, number> = {
  day: 1,
  days: 1,
  dia: 1,
  dias: 1,
  week: 7,
  weeks: 7,
  semana: 7,
  semanas: 7,
};
const mostExtraDays = 60;

/** "3 days old", "2 weeks ago", "from 3 days ago". */
function ageAt(tokens: readonly Token[], at: number): { change: StateChange; next: number } | undefined {
  const start = tokens[at]?.folded === "from" || tokens[at]?.folded === "bought" ? at + 1 : at;
  const number = numberAt(tokens, start);
  if (!number) return undefined;
  const dash = (index: number) => (tokens[index]?.text === "-" ? index + 1 : index);
  const unit = dash(number.next);
  const word = tokens[unit]?.folded ?? "";
  if (!Object.hasOwn(daysIn, word)) return undefined;
  const last = dash(unit + 1);
  const days = number.value * daysIn[word]!;
  return ["old", "ago"].includes(tokens[last]?.folded ?? "") && days <= mostExtraDays
    ? { change: { extraDays: days }, next: last + 1 }
    : undefined;
}

/** The state that begins at a token, longest phrase first; words may be joined by hyphens. */
export function stateAt(
  tokens: readonly Token[],
  at: number,
): { change: StateChange; next: number } | undefined {
  const age = ageAt(tokens, at);
  if (age) return age;
  let text = "";
  let found: { change: StateChange; next: number } | undefined;
  let index = at;
  for (let count = 0; count < longest && tokens[index]?.kind === "word"; count++) {
    text = text === "" ? tokens[index]!.folded : `${text} ${tokens[index]!.folded}`;
    index++;
    const change = known.get(text);
    if (change) found = { change, next: index };
    if (tokens[index]?.text === "-" && !tokens[index]!.spaced) index++;
  }
  return found;
}
