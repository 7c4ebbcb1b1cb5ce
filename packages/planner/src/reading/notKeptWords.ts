import type { Mark, NotKept } from "./notKept.js";
import type { Token } from "./tokens.js";

/** What was found at a token, and whether it speaks of the name before it ("tomatoes, rotten"). */
export interface FoundMark {
  readonly mark: Mark;
  readonly remark: boolean;
  readonly next: number;
}

/** Said of produce, before or after its name. */
const remarks: [Mark, string][] = [
  [
    "wild mushrooms",
    "wild|foraged|gathered|from the woods|from the forest|from the field|from the fields|we picked|i picked|that we picked|that i picked|" +
      "we found|i found|we gathered|i gathered|silvestre|silvestres|del bosque|de bosque|del monte|de monte|del campo|de campo|" +
      "que junte|que juntamos|que recogi|que recogimos|que encontre|que encontramos|recogidos|recogidas|recolectados|recolectadas",
  ],
  ["in oil", "in oil|in olive oil|under oil|in garlic oil|en aceite|en aceite de oliva"],
  [
    "rotten",
    "rotten|rotting|rotted|rot|putrid|spoiled|spoilt|gone off|gone bad|going bad|going off|podrido|podrida|podridos|podridas|" +
      "echado a perder|echada a perder|echados a perder|echadas a perder",
  ],
  ["slimy", "slimy|slime|viscoso|viscosa|viscosos|viscosas|baboso|babosa|babosos|babosas"],
  ["fermenting", "fermenting|fizzy|fermentando|bubbling"],
  [
    "mouldy",
    "mouldy|moldy|mould|mold|moulding|molding|moulded|molded|mildew|mildewed|furry|moho|con moho|" +
      "mohoso|mohosa|mohosos|mohosas|enmohecido|enmohecida|enmohecidos|enmohecidas",
  ],
  [
    "sprouted",
    "sprouted|with sprouts|sprouting|with eyes|germinado|germinada|germinados|germinadas|brotado|brotada|brotados|brotadas|con brotes",
  ],
  [
    "cooked",
    "cooked|roasted|boiled|baked|fried|grilled|steamed|mashed|stewed|cocido|cocida|cocidos|cocidas|asado|asada|asados|asadas|" +
      "frito|frita|fritos|fritas|hervido|hervida|hervidos|hervidas",
  ],
  ["frozen", "frozen|congelado|congelada|congelados|congeladas"],
  ["tinned", "canned|tinned|jarred|enlatado|enlatada|enlatados|enlatadas|en lata|en conserva"],
  [
    "dried",
    "dried|sun dried|dehydrated|seco|seca|secos|secas|deshidratado|deshidratada|deshidratados|deshidratadas",
  ],
  [
    "pickled",
    "pickled|fermented|in vinegar|in brine|encurtido|encurtida|encurtidos|encurtidas|en vinagre|fermentado|fermentada|fermentados|fermentadas",
  ],
  ["made from it", "candied|smoked"],
];
/** Foods of their own, made from produce. */
const foods: [Mark, string][] = [
  ["oil", "oil|olive oil|vegetable oil|aceite|aceite de oliva"],
  ["cooked", "soup|sauce|puree|salsa"],
  ["tinned", "can|cans|tin|tins|jar|jars|bottle|bottles|lata|latas|frasco|frascos"],
  ["dried", "powder|flour"],
  ["juice", "juice|cider|syrup|jugo|zumo"],
  ["pickled", "vinegar|pickle|pickles"],
  ["made from it", "jam|jelly|pie|cake|bread|chips|crisps|paste|seeds|ketchup|fries|mermelada"],
];

/** Seeds that are sold sprouted. "Sprouts" alone is left to the names: in some places they are Brussels sprouts. */
const seeds =
  "alfalfa|bean|beans|mung|mung bean|mungo|moong|soy|soya|soybean|soy bean|clover|red clover|radish|broccoli|lentil|lentils|" +
  "chickpea|chickpeas|pea|sunflower|fenugreek|mustard|onion|garlic|wheat|quinoa|adzuki|raw|mixed|seed|cress|beet|leek|fennel";
const sprouts = [
  ...seeds.split("|").flatMap((seed) => [`${seed} sprout`, `${seed} sprouts`]),
  ...[
    "beansprout",
    "beansprouts",
    "sprouted beans",
    "sprouted mung beans",
    "sprouted lentils",
    "sprouted chickpeas",
  ],
  ...["sprouted seeds", "sprouted alfalfa", "sprouting seeds"],
  ...[
    "alfalfa",
    "soja",
    "soya",
    "rabano",
    "brocoli",
    "lenteja",
    "lentejas",
    "trebol",
    "judia mungo",
    "frijol mungo",
  ].flatMap((seed) => [
    `germinados de ${seed}`,
    `germinado de ${seed}`,
    `brotes de ${seed}`,
    `${seed} germinada`,
    `${seed} germinadas`,
  ]),
  "frijoles germinados",
];

const known = new Map<string, Omit<FoundMark, "next">>([
  ...remarks.flatMap(([mark, texts]) =>
    texts.split("|").map((text) => [text, { mark, remark: true }] as const),
  ),
  ...foods.flatMap(([mark, texts]) =>
    texts.split("|").map((text) => [text, { mark, remark: false }] as const),
  ),
]);
const mushrooms =
  "mushroom|mushrooms|chanterelle|chanterelles|morel|morels|porcini|cep|ceps|bolete|boletes|puffball|puffballs|truffle|truffles|toadstool|toadstools|" +
  "seta|setas|hongo|hongos|champinon|champinones|nizcalo|nizcalos|rebozuelo|rebozuelos|boleto|boletos";
const wildInSpanish = [
  "silvestre",
  "silvestres",
  ...["bosque", "monte", "campo"].flatMap((where) => [`de ${where}`, `del ${where}`]),
];
const wildMushrooms = mushrooms
  .split("|")
  .flatMap((name) =>
    ["wild", "foraged", "gathered"]
      .map((wild) => `${wild} ${name}`)
      .concat(wildInSpanish.map((wild) => `${name} ${wild}`)),
  );

const rhubarbLeaves = [
  "rhubarb leaf",
  "rhubarb leaves",
  "rhubarb tops",
  "hoja de ruibarbo",
  "hojas de ruibarbo",
];

/** Names of their own, which name no kind of the catalogue. */
const names = new Map<string, NotKept>([
  ...sprouts.map((name) => [name, "raw sprouts"] as const),
  ...wildMushrooms.map((name) => [name, "wild mushrooms"] as const),
  ...rhubarbLeaves.map((name) => [name, "rhubarb leaves"] as const),
]);
const longest = 4;

/** The longest run of words that begins at a token and is among those given; words may be joined by hyphens. */
export function longestOf<Found>(
  tokens: readonly Token[],
  at: number,
  lookUp: (text: string) => Found | undefined,
): { found: Found; next: number } | undefined {
  let best: { found: Found; next: number } | undefined;
  let text = "";
  for (let index = at, count = 0; count < longest && tokens[index]?.kind === "word"; count++) {
    text = text === "" ? tokens[index]!.folded : `${text} ${tokens[index]!.folded}`;
    index++;
    const found = lookUp(text);
    if (found !== undefined) best = { found, next: index };
    if (tokens[index]?.text === "-" && !tokens[index]!.spaced) index++;
  }
  return best;
}

/** The word or phrase for something not kept here that begins at a token. */
export function markAt(tokens: readonly Token[], at: number): FoundMark | undefined {
  const best = longestOf(tokens, at, (text) => known.get(text));
  return best && { ...best.found, next: best.next };
}

/** The name of something not kept here (sprouts grown from seed, wild mushrooms, rhubarb leaves) that begins at a token. */
export const notKeptNameAt = (tokens: readonly Token[], at: number) =>
  longestOf(tokens, at, (text) => names.get(text));
