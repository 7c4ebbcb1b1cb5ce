import type { RipenessWord } from "../problem/lot.js";
import type { SaidAge } from "./ages.js";
import { begunPhrases, leftoverPhrases } from "./begunWords.js";
import { shapePhrases, shapesOf } from "./shapes.js";
import type { SaidWish } from "./wishWords.js";

/** What a word or phrase says about the state of a lot. */
export interface StateChange extends SaidAge {
  readonly ripeness?: RipenessWord;
  readonly form?: "whole" | "cut";
  /** Some of it has been eaten: a piece is cut then, a bag of pieces is not. */
  readonly begun?: true;
  /** What is left of it: how much that is has to be asked. */
  readonly leftOver?: true;
  /** Cut before it came home or before today, as what is left over and what is sold cut are: when is not told by it. */
  readonly cutBefore?: true;
  /** Some pieces of it: how much that is of something heavy has to be asked. */
  readonly piecesOf?: true;
  readonly tops?: boolean;
  readonly washed?: boolean;
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
      "pinton",
      "pintona",
      "pintones",
      "pintonas",
    ],
  ],
  [
    { ripeness: "turning", orHalf: true },
    ["half ripe", "medio maduro", "medio madura", "medio maduros", "medio maduras"],
  ],
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
      "blando",
      "blanda",
      "blandos",
      "blandas",
      "blandito",
      "blanditos",
      "suave",
      "suaves",
      "listo para comer",
      "lista para comer",
      "listos para comer",
      "listas para comer",
      "en su punto",
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
      "muy blando",
      "muy blanda",
      "muy blandos",
      "muy blandas",
      "muy suave",
      "muy suaves",
      "pasado",
      "pasada",
      "pasados",
      "pasadas",
      "muy pasado",
      "muy pasada",
      "muy pasados",
      "muy pasadas",
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
      "cut up",
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
      "corte",
      "cortamos",
      "que corte",
      "que cortamos",
      "que parti",
      "que partimos",
      "picado",
      "picada",
      "picados",
      "picadas",
    ],
  ],
  [{ form: "cut" }, shapePhrases],
  [
    { form: "cut", cutBefore: true },
    ["precut", "pre cut", "precortado", "precortada", "precortados", "precortadas"],
  ],
  [{ form: "cut", leftOver: true, cutBefore: true }, leftoverPhrases],
  [{ form: "cut", piecesOf: true }, shapesOf],
  [{ piecesOf: true }, ["piece of", "pieces of", "pieza de", "piezas de"]],
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
      "con rabo",
      "con rabos",
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
  ...["red rojo roja rojos rojas", "yellow amarillo amarilla amarillos amarillas"].map(coloured),
  ...["white blanco blanca blancos blancas", "purple morado morada morados moradas"].map(coloured),
  ...["black", "golden", "pink", "brown"].map(coloured),
  // How it came, or what variety it is: it only tells one part from another.
  [{ colour: "on the vine" }, ["on the vine", "on vine", "en rama", "en racimo", "en racimos", "en la rama"]],
  [{ colour: "with seeds" }, ["with seeds", "con semilla", "con semillas"]],
  [{ colour: "seedless" }, ["without seeds", "sin semilla", "sin semillas"]],
];
