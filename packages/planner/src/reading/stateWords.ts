import type { RipenessWord } from "../problem/lot.js";
import { begunPhrases } from "./begunWords.js";
import { shapePhrases } from "./shapes.js";
import type { SaidWish } from "./wishWords.js";

/** What a word or phrase says about the state of a lot. */
export interface StateChange {
  readonly ripeness?: RipenessWord;
  readonly form?: "whole" | "cut";
  /** Some of it has been eaten: a piece is cut then, a bag of pieces is not. */
  readonly begun?: true;
  readonly tops?: boolean;
  readonly washed?: boolean;
  readonly extraDays?: number;
  /** The day it is wanted for. */
  readonly wanted?: SaidWish;
  /** Told by the colour green, which means unripe only in some kinds. */
  readonly byColour?: boolean;
  /** Only tells one part from another: "3 red apples and 2 yellow"; also "seedless", "on the vine". */
  readonly colour?: string;
  /** "Half ripe", behind a name, may as well mean half of the lot. */
  readonly orHalf?: boolean;
}

/** A colour by its first word, in all its words. Orange is left out: it is a fruit. */
const coloured = (words: string): [StateChange, string[]] => {
  const all = words.split(" ");
  return [{ colour: all[0]! }, all];
};

/** Words and phrases, folded, with what they say. */
export const statePhrases: readonly [StateChange, readonly string[]][] = [
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
    ],
  ],
  [{ form: "cut" }, shapePhrases],
  [{ begun: true }, begunPhrases],
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
  [
    { extraDays: 1 },
    [
      "yesterday",
      "from yesterday",
      "bought yesterday",
      "yesterdays",
      "last night",
      "ayer",
      "de ayer",
      "anoche",
    ],
  ],
  [{ extraDays: 0 }, ["this morning", "esta manana"]],
  // How it came, or what variety it is: it only tells one part from another.
  [{ colour: "on the vine" }, ["on the vine", "on vine", "en rama", "en racimo", "en racimos", "en la rama"]],
  [{ colour: "with seeds" }, ["with seeds", "con semilla", "con semillas"]],
  [{ colour: "seedless" }, ["without seeds", "sin semilla", "sin semillas"]],
];
