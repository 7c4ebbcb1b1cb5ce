const list = (text: string): readonly string[] => text.split(" ");

/** Before a time that is past: they say that something has been so since then. */
export const sinceWords: ReadonlySet<string> = new Set(list("since desde"));
/** Behind these a day is that of what was done: "cut on Monday", “comprado el lunes”. */
export const doneWords: ReadonlySet<string> = new Set(
  list(
    "cut sliced chopped diced peeled halved opened open begun started bought got picked harvested " +
      "cortado cortada cortados cortadas picado picada picados picadas pelado pelada pelados peladas partido partida partidos partidas " +
      "abierto abierta abiertos abiertas empezado empezada empezados empezadas comprado comprada comprados compradas",
  ),
);
/** Before a day or a number of days, where they change nothing. */
export const ageLeads: ReadonlySet<string> = new Set(list("from bought of on in de del el la the"));
/** Before a number of days: it is only about right. */
export const aboutDays: ReadonlySet<string> = new Set(
  list("about around roughly maybe perhaps almost nearly unos unas como casi ya"),
);

const phrases = (days: number, ...texts: string[]): readonly [readonly string[], number][] =>
  texts.map((text) => [list(text), days]);

/** Times by the days they are back, as they are said in either language. */
const told: readonly (readonly [readonly string[], number])[] = [
  ...phrases(0, "today", "earlier today", "this morning", "this afternoon", "this evening", "just now"),
  ...phrases(0, "hoy", "hoy mismo", "esta manana", "esta tarde", "hace un rato", "hace un momento"),
  ...phrases(0, "hace rato", "hace un ratito", "hace poco"),
  ...phrases(1, "yesterday", "yesterdays", "last night"),
  ...phrases(1, "ayer", "anoche", "dia de ayer", "noche de ayer"),
  ...phrases(2, "the day before yesterday", "day before yesterday", "the night before last"),
  ...phrases(2, "night before last", "anteayer", "antier", "antes de ayer", "antes de anoche", "anteanoche"),
  ...phrases(2, "antenoche", "antes ayer", "antiayer"),
  ...phrases(3, "anteantier", "trasanteayer", "antes de anteayer", "antes de antier"),
];
/** Longest first. */
export const timesBack = [...told].sort(([one], [other]) => other.length - one.length);

/** The time of a day, behind it. */
export const partsOfDay: readonly (readonly string[])[] = [
  "por la manana",
  "por la tarde",
  "por la noche",
  "en la manana",
  "en la tarde",
  "en la noche",
  "a mediodia",
  "al mediodia",
  "mediodia",
  "temprano",
  "noche",
  "morning",
  "noon",
  "lunchtime",
  "lunch",
  "afternoon",
  "evening",
  "night",
].map(list);

/** Times that may be several days: the days they are at least taken for where something is whole, none where nobody could say. */
const vague: [readonly string[], number | undefined][] = [
  [list("last week"), 7],
  [list("last weeks"), 7],
  [list("la semana pasada"), 7],
  [list("semana pasada"), 7],
  [list("last weekend"), undefined],
  [list("the weekend"), undefined],
  [list("el fin de semana"), undefined],
  [list("fin de semana"), undefined],
  [list("the other day"), undefined],
  [list("el otro dia"), undefined],
  [list("a while ago"), undefined],
  [list("some time ago"), undefined],
  [list("a long time ago"), undefined],
  [list("several days ago"), undefined],
  [list("some days ago"), undefined],
  [list("hace unos dias"), undefined],
  [list("hace varios dias"), undefined],
  [list("hace algunos dias"), undefined],
  [list("hace unas semanas"), undefined],
  [list("hace dias"), undefined],
  [list("hace tiempo"), undefined],
  [list("hace mucho"), undefined],
  [list("hace mucho tiempo"), undefined],
];
/** Longest first. */
export const vagueTimes = vague.sort(([one], [other]) => other.length - one.length);

/** Days in a unit of time [d]; hours are rounded up to whole days. */
export const daysIn: Readonly<Record<string, number>> = {
  ...Object.fromEntries(list("day days night nights dia dias noche noches").map((word) => [word, 1])),
  ...Object.fromEntries(list("week weeks semana semanas").map((word) => [word, 7])),
  ...Object.fromEntries(list("month months mes meses").map((word) => [word, 30])),
  ...Object.fromEntries(list("hour hours hr hrs hora horas").map((word) => [word, 1 / 24])),
};

/** Words that speak of a time: where they are not understood, it is asked how long ago it was. */
export const timeWords: ReadonlySet<string> = new Set([
  ...Object.keys(daysIn),
  ...list(
    "ago since yesterday today before earlier last previous morning afternoon evening weekend fortnight",
  ),
  ...list("hace desde ayer hoy anteayer antier anoche antes tarde manana quincena"),
  ...list("monday tuesday wednesday thursday friday saturday sunday"),
  ...list("lunes martes miercoles jueves viernes sabado domingo"),
]);
