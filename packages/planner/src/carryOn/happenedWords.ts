import type { WrapId } from "@keepwright/catalogue";
import type { RipenessWord } from "../problem/lot.js";

/** What a line may say, by the words it begins with: English, then Spanish. */
export type Said =
  | "ate"
  | "ate none"
  | "threw out"
  | "gave away"
  | "froze"
  | "came home"
  | "found"
  | "moved"
  | "cut"
  | "left out"
  | "left lying";

const who = "(?:i|we|they|yo|nosotros|ya|me|nos|hemos|he|have|has|had|also|then|and|y|luego|también|se)";
const begins = (words: string): RegExp => new RegExp(`^(?:${who}\\s+)*(?:${words})(?=\\s|$)\\s*`, "u");

/** Tried in this order: what is longer comes before what it begins with. */
export const beginnings: readonly (readonly [Said, RegExp])[] = [
  ["left out", begins("left(?=.*\\bout\\b)|dej[eé](?=.*\\bfuera\\b)|dejamos(?=.*\\bfuera\\b)")],
  [
    "left lying",
    begins(
      "(?:left|forgot)(?=.*\\s(?:on|in|at)\\s)|(?:dej[eé]|dejamos|olvid[eé]|olvidamos)(?=.*\\s(?:en|sobre)\\s)",
    ),
  ],
  ["ate none", begins("ate none(?: of)?|ate no|did not eat|didn['’]t eat|no com[ií]|no comimos")],
  [
    "ate",
    begins(
      "ate|eaten|eat|finished|used up|used|cooked|roasted|boiled|fried|juiced|pickled|dried|made\\s+(?:\\S+\\s+){1,3}?(?:with|from|out of)|" +
        "com[ií]|comimos|termin[eé]|terminamos|us[eé]|usamos|cocin[eé]|cocinamos|acab[oó]|acabaron|acab[eé]|acabamos|hice\\s+(?:\\S+\\s+){1,3}?(?:con|de)",
    ),
  ],
  [
    "threw out",
    begins(
      "threw out|threw away|threw|thrown out|binned|tossed|discarded|composted|tir[eé]|tiramos|bot[eé]|botamos|" +
        "ech(?:ó|o|aron) a perder|pudri(?:ó|o|eron)",
    ),
  ],
  [
    "gave away",
    begins(
      "gave away|gave|given away|donated|handed out|regal[eé]|regalamos|regalad[oa]s?|don[eé]|donamos|(?:les?\\s+)?(?:di|dimos)",
    ),
  ],
  ["froze", begins("froze|frozen|congel[eé]|congelamos|congelad[oa]s?")],
  ["came home", begins("bought|brought home|brought|got|picked|compr[eé]|compramos|traje|trajimos")],
  ["found", begins("found|encontr[eé]|encontramos")],
  [
    "moved",
    begins("moved|put|mov[ií]|movimos|puse|pusimos|pas[eé]|pasamos|guard[eé]|guardamos|met[ií]|metimos"),
  ],
  [
    "cut",
    begins(
      "cut|cut up|cut open|sliced(?: up)?|chopped(?: up)?|diced|halved|quartered|opened(?: up)?|cort[eé]|cortamos|part[ií]|partimos|reban[eé]|rebanamos|piqu[eé]|picamos|abr[ií]|abrimos",
    ),
  ],
];

/** Where a new thing begins within a line: “ate 2 apples and threw out the spinach”. */
export const nextThing = new RegExp(
  "(?:\\s*[;\\n]\\s*|\\s*,\\s+(?:and\\s+|y\\s+)?|\\s+(?:and|y|e)\\s+)(?=(?:i\\s+|we\\s+)?(?:" +
    "ate|threw|gave|donated|bought|found|moved|put|cut(?!\\s+(?:today|yesterday|on|this|last|since|the (?:day|night)|(?:\\d+|an?|one|two|three|four|five|six|few|couple)\\s+(?:\\S+\\s+){0,2}?(?:days?|weeks?|hours?|nights?)))|sliced|chopped|opened|cooked|froze|used|left|did not eat|didn['’]t eat|" +
    "com[ií]mos|com[ií]|tir[eé]|tiramos|bot[eé]|botamos|compr[eé]|compramos|encontr[eé]|encontramos|regal[eé]|regalamos|don[eé]|donamos|" +
    "mov[ií]|movimos|puse|pusimos|cort[eé]|cortamos|part[ií]|partimos|reban[eé]|rebanamos|piqu[eé]|picamos|abr[ií]|abrimos|" +
    "us[eé]|usamos|cocin[eé]|cocinamos|congel[eé]|congelamos|dej[eé]|dejamos)(?=\\s|$))",
  "u",
);

/** How a line ends that says how ripe a lot is. */
export const ripenessEndings: readonly (readonly [RipenessWord, RegExp])[] = [
  [
    "very ripe",
    /\b(?:very ripe|overripe|over-ripe|too ripe|muy madur[oa]s?|pasad[oa]s?)\s*(?:now|already|ya)?$/u,
  ],
  [
    "unripe",
    /\b(?:not ripe(?: yet)?|not yet ripe|unripe|still hard|hard|no (?:está|están) madur[oa]s?|(?:sigue|siguen) (?:dur[oa]s?|verdes?)|dur[oa]s?|verdes?)\s*(?:still|yet|todavía|aún)?$/u,
  ],
  ["turning", /\b(?:almost ripe|nearly ripe|turning|casi madur[oa]s?|pint[oó]n(?:es)?)\s*(?:now|ya)?$/u],
  ["ripe", /\b(?:ripe|soft|madur[oa]s?)\s*(?:now|already|ya)?$/u],
];

/** How a line ends that says that it is no longer fit to eat: as good as thrown out. */
export const spoiledEnding =
  /\s*\b(?:(?:is|are|was|were|has|have)\s+(?:all\s+|completely\s+)?(?:gone\s+)?(?:bad|off)|(?:(?:has|have)\s+)?(?:went|gone|turned)\s+(?:bad|off|mou?ldy|slimy|rotten|mushy)|(?:(?:is|are|está|están|estan)\s+)?(?:all\s+|completely\s+|muy\s+)?(?:rotten|rotted|spoiled|spoilt|mou?ldy|slimy|mushy|podrid[oa]s?|con moho|babos[oa]s?|echad[oa]s? a perder)|se ech(?:ó|aron) a perder|se pudri(?:ó|eron))\s*(?:now|already|ya)?$/u;
/** A line that says that something is not so: nothing is thrown out for it. */
export const denied =
  /(?:^|\s)(?:not|no|none|no longer|isn['’]t|aren['’]t|wasn['’]t|weren['’]t|never|nothing|barely|hardly|nearly|almost|nunca|nada|ningun[oa]?|ya no|apenas|casi)(?=\s|$)/u;
/** Words that part a line into what is so and what is not: each has to be told on its own. */
export const excepted = /(?:^|\s)(?:but|except(?: for)?|apart from|pero|menos|salvo|excepto)(?=\s|$)/u;
/** Words of a day or a time that are left over once a day has been read. */
export const timeLeftOver =
  /(?:^|\s)(?:ago|days?|weeks?|months?|yesterday|today|morning|evening|night|noon|before|last|hace|ayer|anteayer|antier|antes|días?|semanas?|mes(?:es)?|mañana|tarde|noche)(?=\s|$)/u;
const freezer = "(?:the |our |my |el |la |mi )?(?:deep )?(?:freezer|congelador|congeladora)";
/** How a line ends that tells of something put into the freezer, which is no place of a plan. */
export const toFreezer = new RegExp(
  `\\s+(?:(?:in|into|to|inside|en|a|dentro de)\\s+${freezer}|al congelador)$`,
  "u",
);
/** The same of what is there: “the spinach is in the freezer”, “spinach frozen”. */
export const frozenEnding = new RegExp(
  `\\s+(?:(?:is|are|está|están|estan|now|all|ya|went|fueron?|fue)\\s+)*(?:(?:in|into|to|en|a)\\s+${freezer}|al congelador|frozen|congelad[oa]s?)$`,
  "u",
);
/** How a line ends that says that nothing is left. */
export const goneEnding = /\s*\b(?:is|are|está|están)?\s*(?:all )?(?:gone|finished|used up|acabad[oa]s?)$/u;
/** Whom it was given to, at the end of a line. */
export const givenTo =
  /\s+(?:to|a)\s+(?:(?:my|our|the|a|an|mi|mis|la|el|una?|nuestr[oa]s?)\s+)?\p{L}+(?:\s+\p{L}+)?$/u;
/** Where something is said to lie: “the kale is still on the counter”. */
export const lies =
  /\s+(?:is|are|was|were|está|están|estan|esta|sigue|siguen)\s+(?:still\s+|now\s+|todavía\s+|aún\s+)?(?=(?:on|in|at|en|sobre)\s)/u;

export const goodEnding =
  /\b(?:still |(?:(?:todavía|aún|sigue|siguen) )*(?:(?:está|están) )?(?:(?:todavía|aún) )?)?(?:good|fine|fresh|buen[oa]s?|bien|fresc[oa]s?)\s*(?:still|todavía|aún)?$/u;
export const leftEnding = /\s*\b(?:is|are)?\s*(?:still )?left(?: over)?$/u;
export const leftBeginning = /^(?:quedan|queda|there are still|there is still)\s+/u;
export const isWords = /\s*\b(?:is|are|was|were|have become|has become|está|están|estan|esta)?\s*$/u;

export const everything =
  /^(?:all(?: of)?|(?:the )?rest of|everything|todo|todos|todas|toda|(?:el )?resto del?):?\s+/u;
export const nothingOf = /^(?:none of|no|nothing of|nada de|ningun[oa]?)\s+/u;
export const shares: readonly (readonly [number, RegExp])[] = [
  [0.5, /^(?:a |the )?(?:half(?: of)?(?: a)?|(?:la )?mitad del?|medi[oa])\s+/u],
  [1 / 3, /^(?:a |one )?(?:third of|(?:un )?tercio del?)\s+/u],
  [0.25, /^(?:a |one )?(?:quarter of|(?:un )?cuarto del?)\s+/u],
  [2 / 3, /^(?:two thirds of|dos tercios del?)\s+/u],
];
/** Portions, which are an amount of a plan, at the beginning of a phrase: how many, as digits or a word. */
export const portions =
  /^(?:about\s+)?(?:(\d+(?:[.,]\d+)?)|(half a|media)|(one|an?|una?)|(two|dos)|(three|tres)|(four|cuatro)|(five|cinco)|(six|seis))\s+(?:portions?|servings?|porci[oó]n(?:es)?|raci[oó]n(?:es)?)\s+(?:(?:of|de|del)\s+)?(?=\S)/u;
/** What one of these portions is, by the group that found it; the first is written in digits. */
export const portionsOfGroup = [Number.NaN, 0.5, 1, 2, 3, 4, 5, 6] as const;
/** Pieces of what was cut: they may be of any size. */
export const slices =
  /(?:^|\s)(?:slices?|wedges?|chunks?|cubes?|rebanadas?|rodajas?|tajadas?|trozos?|trozitos?|pedazos?|gajos?|cubitos?)\s+(?:of|de|del)\s/u;
/** How a line ends that says that it looks worse than it did, and not whether it is still eaten. */
export const limpEnding =
  /\s(?:limp|wilted|wilting|wilty|droopy|floppy|shrivel+ed|wrinkl(?:y|ed)|soggy|marchit[oa]s?|aguad[oa]s?|arrugad[oa]s?|lacias?|lacios?|mustias?|mustios?)\s*(?:now|already|ya)?$/u;
export const vague = /\b(?:some|a few|a bit|a little|several|most|algun[oa]s?|algo|un poco|varios|varias)\b/u;
export const articles = /^(?:(?:the|a|an|my|our|el|la|los|las|mis?|nuestr[oa]s?|de|del)\s+)+/u;

/** Wraps as people name them within a line. */
export const wrapWords: readonly (readonly [WrapId, RegExp])[] = [
  ["none", /\s*,?\s*\b(?:unwrapped|without (?:a |any )?(?:bag|wrap)|bare|sin bolsa)\b/u],
  [
    "paper bag",
    /\s*,?\s*\b(?:in|into|inside|en)\s+(?:an?\s+|the\s+|una\s+)?(?:paper bags?|bolsas? de papel)\b/u,
  ],
  ["perforated bag", /\s*,?\s*\b(?:in|into|inside|en)\s+(?:an?\s+|the\s+)?(?:perforated bags?)\b/u],
  [
    "closed film bag",
    /\s*,?\s*\b(?:in|into|inside|en)\s+(?:an?\s+|the\s+)?(?:closed (?:film |plastic )?bags?)\b/u,
  ],
  ["damp towel", /\s*,?\s*\b(?:in|into|under|inside|en)\s+(?:an?\s+|the\s+)?(?:damp towels?)\b/u],
  ["beeswax cloth", /\s*,?\s*\b(?:in|into|inside|en)\s+(?:an?\s+|the\s+)?(?:beeswax cloths?)\b/u],
  ["foil", /\s*,?\s*\b(?:in|into|inside|en)\s+(?:the\s+)?(?:foil)\b/u],
  ["lidded box", /\s*,?\s*\b(?:in|into|inside|en)\s+(?:an?\s+|the\s+)?(?:lidded box(?:es)?)\b/u],
  ["glass of water", /\s*,?\s*\b(?:in|into|en)\s+(?:an?\s+|the\s+)?(?:glass(?:es)? of water)\b/u],
];

/** Kinds of places as people call them: the one a kitchen has of that kind. */
export const placeKindWords: readonly (readonly [string, RegExp])[] = [
  [
    "counter",
    /^(?:counter|counter ?top|worktop|table|kitchen table|bowl|mesa|barra|encimera|mesada|mesón|meseta)$/u,
  ],
  ["cool dark cupboard", /^(?:cupboard|pantry|larder|alacena|despensa)$/u],
  ["cellar", /^(?:cellar|basement|sótano|bodega)$/u],
  [
    "refrigerator door",
    /^(?:door|fridge door|refrigerator door|puerta|puerta del? (?:refri|refrigerador|frigorífico|nevera|la nevera))$/u,
  ],
  ["crisper drawer", /^(?:drawer|crisper|vegetable drawer|cajón|cajón de (?:las )?verduras)$/u],
];

export const refrigeratorWords = /^(?:fridge|refrigerator|nevera|refrigerador|frigorífico|refri)$/u;
export const toPlace =
  /\s+(?:back\s+)?(?:to|into|onto|on|in|at|al|a|en|sobre)\s+(?:(?:the|my|our|el|la|mi)\s+)*/gu;
/** For how long it lay somewhere, at the end of a line. */
export const hoursLying = /\s+(?:for|por|durante)?\s*(\d+(?:[.,]\d+)?|an?|una)\s*(?:hours?|hrs?|h|horas?)$/u;
export const hoursOut =
  /\s*\b(?:out|fuera)\b(?:\s+(?:on|in|at|en|sobre)\s+\D+?(?=\s+(?:for|por|durante)\s))?(?:\s+(?:for|of the (?:fridge|refrigerator) for|por|durante))?\s*(\d+(?:[.,]\d+)?|an?|una)\s*(?:hours?|hrs?|h|horas?)(?:\s+(?:today|yesterday|hoy|ayer))?$/u;
export const ateNothing =
  /^(?:(?:i|we)\s+)?(?:ate nothing|did not eat anything|nothing was eaten|no comimos nada|no com[ií] nada)$/u;
