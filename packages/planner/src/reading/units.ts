import {
  gramsPerOunce,
  gramsPerPound,
  litresPerBushel,
  litresPerCup,
  litresPerDryPint,
  litresPerGallon,
  litresPerPeck,
} from "@keepwright/quantities";
import { shapeWords } from "./shapes.js";

/** A unit as it was written: of mass, of volume, or one that each kind gives its own mass ("bunch"). */
export type Unit =
  | { readonly of: "mass"; readonly grams: number; readonly word: string }
  | { readonly of: "volume"; readonly litres: number; readonly name: string; readonly word: string }
  | { readonly of: "household"; readonly name: string; readonly container: boolean; readonly word: string };

const mass: [number, string][] = [
  [1, "g gr gm gram grams gramme grammes gramo gramos"],
  [1000, "kg kgs kgr k kilo kilos kilogram kilograms kilogramo kilogramos"],
  [gramsPerPound, "lb lbs pound pounds libra libras"],
  [gramsPerOunce, "oz ounce ounces onza onzas"],
];
const volume: [number, string, string][] = [
  [litresPerDryPint, "pint", "pt pts pint pints pinta pintas"],
  [2 * litresPerDryPint, "quart", "qt qts quart quarts"],
  [litresPerGallon, "gallon", "gal gals gallon gallons galon galones"],
  [litresPerPeck, "peck", "peck pecks"],
  [litresPerBushel, "bushel", "bushel bushels"],
  [litresPerCup, "cup", "cup cups c taza tazas"],
  [0.001, "millilitre", "ml mls millilitre millilitres milliliter milliliters mililitro mililitros"],
  [1, "litre", "l lt lts ltr litre litres liter liters litro litros"],
];
const pieces: [string, string][] = [
  ["each", "each ea piece pieces pc pcs pieza piezas unidad unidades whole"],
  [
    "bunch",
    "bunch bunches manojo manojos manojito manojitos atado atados atadito ataditos mazo mazos rollo rollos ramo ramos",
  ],
  ["head", "head heads cabeza cabezas"],
  ["stalk", "stalk stalks stick sticks rib ribs tallo tallos"],
  ["ear", "ear ears cob cobs mazorca mazorcas"],
  ["clove", "clove cloves diente dientes"],
  ["hand", "hand hands mano manos"],
  ["bulb", "bulb bulbs bulbo bulbos"],
  ["knob", "knob knobs"],
  ["handful", "handful handfuls punado punados puno punos punito punitos"],
  ["sprig", "sprig sprigs rama ramas ramita ramitas"],
  ["spear", "spear spears"],
  ["pod", "pod pods vaina vainas"],
  ["leaf", "leaf leaves hoja hojas"],
  ["crown", "crown crowns"],
  ["heart", "heart hearts corazon corazones"],
  ["root", "root roots"],
  ["cluster", "cluster clusters racimo racimos"],
  ...shapeWords.map(([name, words]): [string, string] => [name, words]),
];
const containers: [string, string][] = [
  ["bag", "bag bags bolsa bolsas bolsita bolsitas"],
  ["clamshell", "clamshell clamshells domo domos"],
  ["punnet", "punnet punnets tub tubs tarrina tarrinas"],
  ["box", "box boxes caja cajas cajita cajitas carton cartons"],
  ["package", "package packages pkg pkgs packet packets pack packs paquete paquetes paquetito paquetitos"],
  ["basket", "basket baskets cesta cestas canasta canastas canastilla canastillas canastita canastitas"],
  ["tray", "tray trays bandeja bandejas charola charolas"],
  ["sack", "sack sacks saco sacos costal costales"],
  ["crate", "crate crates case cases reja rejas huacal huacales guacal guacales"],
  ["net", "net nets malla mallas mallita mallitas"],
];

/** Units so short that they count only right after a number: "2 l", not "l". */
const onlyAfterNumber = new Set([
  "l",
  "lt",
  "lts",
  "ltr",
  "gal",
  "gals",
  "c",
  "k",
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
