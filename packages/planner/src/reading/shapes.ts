/** Pieces that produce is cut into: each shape by its name, then all its words. None is the name of a kind. */
const shapes: readonly (readonly [string, string])[] = [
  ["cube", "cube cubes cubo cubos cubito cubitos dado dados"],
  [
    "chunk",
    "chunk chunks trozo trozos trocito trocitos pedazo pedazos pedacito pedacitos cacho cachos cachito cachitos",
  ],
  ["slice", "slice slices tajada tajadas rodaja rodajas rebanada rebanadas"],
  ["wedge", "wedge wedges segment segments gajo gajos"],
  ["ring", "ring rings aro aros"],
  ["strip", "strip strips tira tiras tirita tiritas"],
  ["baton", "baton batons matchstick matchsticks baston bastones"],
  ["floret", "floret florets florete floretes"],
  ["coin", "coin coins"],
];
const byWord = new Map(
  shapes.flatMap(([name, words]) => words.split(" ").map((word) => [word, name] as const)),
);

/** Each shape with its words. */
export const shapeWords: readonly (readonly [string, string])[] = shapes;

/** The shape that a word names: "cubes" and “cubos” are "cube". */
export const shapeNamed = (word: string): string | undefined => byWord.get(word);

/** Is a unit of this name one piece of something cut up? */
export const isShape = (unitName: string): boolean => shapes.some(([name]) => name === unitName);

/** Words of shapes alone and behind "in" or "en": they say that it is cut. */
export const shapePhrases: readonly string[] = [
  ...byWord.keys(),
  ...[...byWord.keys(), "pieces", "sticks", "spears"].flatMap((word) => [`in ${word}`, `into ${word}`]),
  ...[...byWord.keys(), "palitos"].map((word) => `en ${word}`),
];

/** Shapes of something: they say that it is cut, not how much of it there is. */
export const shapesOf: readonly string[] = [...byWord.keys()].flatMap((word) => [`${word} of`, `${word} de`]);

/** Words for one piece, cut or whole: behind a name and without a count of their own they mean pieces cut from it. */
const cutBehindName: ReadonlySet<string> = new Set(
  "piece pieces pieza piezas stick sticks spear spears palito palitos".split(" "),
);
export const isCutBehindName = (word: string): boolean => cutBehindName.has(word);
