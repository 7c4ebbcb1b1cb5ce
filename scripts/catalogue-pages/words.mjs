import { speaker } from "@keepwright/handout";

const spoken = speaker();

/** What ends a life, in words: those of the handout, and a word of its own for what is frozen. */
export const endingWords = (ending) => (ending === "freezing" ? "freezing" : spoken.say(`ending.${ending}`));

export const languages = ["en", "es"];

/** The fixed words of the parts that stand in both languages. */
export const words = {
  en: {
    ripe: "Ripe or good to use, and how to test it",
    going: "It is going: eat it now",
    discard: "Throw it away",
    prepare: "Before you put it away, and why",
    wraps: "Wraps that suit it, best first",
    trimmings: "Trimmings",
    save: "Freeze it or save it",
    hazards: "What can hurt",
    free: "no plastic",
    plastic: "plastic",
    season: "Season",
    north: "North",
    south: "South",
    allYear: "all year",
    to: "to",
    moved: "the northern months moved by six",
    portions: "Portions in one piece",
    unit: "Unit",
    grams: "Grams",
    portion: "Portions",
    also: "Also called",
    seasoning: "It is eaten in small amounts beside other food.",
    months: "January February March April May June July August September October November December".split(
      " ",
    ),
  },
  es: {
    ripe: "Maduro o en su punto, y cómo probarlo",
    going: "Ya se está pasando: cómelo hoy",
    discard: "Tíralo",
    prepare: "Antes de guardarlo, y por qué",
    wraps: "Envolturas que le van, la mejor primero",
    trimmings: "Lo que se corta",
    save: "Congélalo o consérvalo",
    hazards: "Lo que puede hacer daño",
    free: "sin plástico",
    plastic: "de plástico",
    season: "Temporada",
    north: "Norte",
    south: "Sur",
    allYear: "todo el año",
    to: "a",
    moved: "los meses del norte corridos seis meses",
    portions: "Porciones por pieza",
    unit: "Medida",
    grams: "Gramos",
    portion: "Porciones",
    also: "También se llama",
    seasoning: "Se come en poca cantidad junto con otra comida.",
    months: "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre".split(
      " ",
    ),
  },
};

/** Names of the wraps in both languages, by id. */
export const wrapNames = {
  en: {
    none: "nothing around it",
    "paper bag": "paper bag",
    "perforated bag": "bag with holes",
    "closed film bag": "closed film bag",
    "damp towel": "damp cloth towel",
    "beeswax cloth": "beeswax cloth",
    foil: "aluminium foil",
    "lidded box": "box with a lid",
    "glass of water": "stems in a glass of water",
  },
  es: {
    none: "sin envolver",
    "paper bag": "bolsa de papel",
    "perforated bag": "bolsa con agujeros",
    "closed film bag": "bolsa cerrada",
    "damp towel": "trapo húmedo",
    "beeswax cloth": "tela con cera de abeja",
    foil: "papel aluminio",
    "lidded box": "caja con tapa",
    "glass of water": "tallos en un vaso con agua",
  },
};

const unitParts = {
  each: "pieza",
  small: "chica",
  medium: "mediana",
  large: "grande",
  baby: "muy chica",
  bunch: "manojo",
  bag: "bolsa",
  cup: "taza",
  handful: "puñado",
  package: "paquete",
  sprig: "ramita",
  leaf: "hoja",
  clamshell: "cajita",
  head: "cabeza",
  stalk: "tallo",
  pint: "pinta",
  piece: "trozo",
  hand: "mano",
  knob: "trozo de raíz",
  tablespoon: "cucharada",
  wedge: "gajo",
  heart: "corazón",
  spear: "tallo",
  sack: "costal",
  bulb: "bulbo",
  tray: "bandeja",
  clove: "diente",
  ear: "mazorca",
  husked: "pelada",
  box: "caja",
};
const masculine = new Set(["stalk", "bunch", "bulb"]);
const masculineForms = { small: "chico", medium: "mediano" };

/** A household unit in Spanish; undefined where its words are a variety's name. */
export function spanishUnit(name) {
  const parts = name.split(" ");
  const spanish = parts.map((part) => (masculine.has(parts[0]) && masculineForms[part]) || unitParts[part]);
  return spanish.includes(undefined) ? undefined : spanish.join(" ");
}

/** Parts of a plant in the order of the list of kinds: catalogue's word, heading in English and Spanish. */
export const plantParts = [
  ["fruit", "Fruit", "Frutas"],
  ["berry", "Berries", "Bayas"],
  ["citrus", "Citrus", "Cítricos"],
  ["melon", "Melons", "Melones"],
  ["fruit vegetable", "Fruit used as vegetables", "Frutos que se usan como verdura"],
  ["leaf", "Leaves", "Hojas"],
  ["head", "Heads", "Repollos y cogollos"],
  ["stem", "Stems and shoots", "Tallos y brotes"],
  ["flower", "Flowers and buds", "Flores y botones"],
  ["root", "Roots and root-like stems", "Raíces y rizomas"],
  ["tuber", "Tubers", "Tubérculos"],
  ["bulb", "Bulbs", "Bulbos"],
  ["seed", "Seeds and pods", "Semillas y vainas"],
  ["fungus", "Mushrooms", "Hongos"],
  ["herb", "Herbs", "Hierbas"],
];
