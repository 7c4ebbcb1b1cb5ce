import { gramsPerOunce, gramsPerPound, litresPerCup, litresPerDryPint } from "@keepwright/quantities";
import { shapeWords } from "./shapes.js";

/** A unit as it was written: of mass, of volume, or one that each kind gives its own mass ("bunch"). */
export type Unit =
  | { readonly of: "mass"; readonly grams: number; readonly word: string }
  | { readonly of: "volume"; readonly litres: number; readonly name: string; readonly word: string }
  | { readonly of: "household"; readonly name: string; readonly container: boolean; readonly word: string };

const mass: [number, string][] = [
  [1, "g gr gm gram grams gramme grammes gramo gramos"],
  [1000, "kg kgs kilo kilos kilogram kilograms kilogramo kilogramos"],
  [gramsPerPound, "lb lbs pound pounds libra libras"],
  [gramsPerOunce, "oz ounce ounces onza onzas"],
];
const volume: [number, string, string][] = [
  [litresPerDryPint, "pint", "pt pts pint pints"],
  [2 * litresPerDryPint, "quart", "qt qts quart quarts"],
  [litresPerCup, "cup", "cup cups c taza tazas"],
  [0.001, "millilitre", "ml mls millilitre millilitres milliliter milliliters mililitro mililitros"],
  [1, "litre", "l litre litres liter liters litro litros"],
];
const pieces: [string, string][] = [
  ["each", "each ea piece pieces pc pcs pieza piezas unidad unidades whole"],
  ["bunch", "bunch bunches manojo manojos atado atados ramo ramos"],
  ["head", "head heads cabeza cabezas"],
  ["stalk", "stalk stalks stick sticks rib ribs tallo tallos"],
  ["ear", "ear ears cob cobs mazorca mazorcas"],
  ["clove", "clove cloves diente dientes"],
  ["hand", "hand hands"],
  ["bulb", "bulb bulbs bulbo bulbos"],
  ["knob", "knob knobs"],
  ["handful", "handful handfuls punado punados"],
  ["sprig", "sprig sprigs ramita ramitas"],
  ["spear", "spear spears"],
  ["pod", "pod pods vaina vainas"],
  ["leaf", "leaf leaves hoja hojas"],
  ["crown", "crown crowns"],
  ["root", "root roots"],
  ["cluster", "cluster clusters racimo racimos"],
  ...shapeWords.map(([name, words]): [string, string] => [name, words]),
];
const containers: [string, string][] = [
  ["bag", "bag bags bolsa bolsas"],
  ["clamshell", "clamshell clamshells"],
  ["punnet", "punnet punnets tub tubs"],
  ["box", "box boxes caja cajas carton cartons"],
  ["package", "package packages pkg pkgs packet packets pack packs paquete paquetes"],
  ["basket", "basket baskets cesta cestas"],
  ["tray", "tray trays bandeja bandejas"],
  ["sack", "sack sacks saco sacos"],
  ["crate", "crate crates"],
  ["net", "net nets malla mallas"],
];

/** Units so short that they count only right after a number: "2 l", not "l". */
const onlyAfterNumber = new Set([
  "l",
  "c",
  "g",
  "gr",
  "gm",
  "ea",
  "pt",
  "qt",
  "whole",
  "leaves",
  "leaf",
  "root",
  "roots",
  "quarters",
  // Elsewhere they say that something is cut.
  ...shapeWords.flatMap(([, words]) => words.split(" ")),
]);

function collect(): Map<string, Unit> {
  const all = new Map<string, Unit>();
  const add = (words: string, make: (word: string) => Unit) => {
    for (const word of words.split(" ")) all.set(word, make(word));
  };
  for (const [grams, words] of mass) add(words, (word) => ({ of: "mass", grams, word }));
  for (const [litres, name, words] of volume) add(words, (word) => ({ of: "volume", litres, name, word }));
  for (const [name, words] of pieces)
    add(words, (word) => ({ of: "household", name, container: false, word }));
  for (const [name, words] of containers)
    add(words, (word) => ({ of: "household", name, container: true, word }));
  return all;
}
const all = collect();

/** The unit that a word names; `afterNumber` admits the very short ones. "#" after a number means pounds. */
export function unitNamed(word: string, afterNumber: boolean): Unit | undefined {
  if (word === "#") return afterNumber ? { of: "mass", grams: gramsPerPound, word } : undefined;
  return onlyAfterNumber.has(word) && !afterNumber ? undefined : all.get(word);
}
