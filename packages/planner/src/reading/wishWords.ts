import type { Wanted, WantedWord, Weekday } from "../problem/wanted.js";

const set = (words: string): ReadonlySet<string> => new Set(words.split(" "));

/** Words that may stand before the day and only say that something is wanted: "ripe", "wanted", "we want them ready to eat". */
export const leads: ReadonlySet<string> = set(
  "ripe ready wanted want wants needed need eat eaten use used serve to be it them these i we should ripen ripening keep kept hold held " +
    "maduro madura maduros maduras listo lista listos listas quiero queremos quiera los las lo la que esten este sean comer comerlos comerlas",
);
/** Those of them that by themselves say that a day is meant, so that "on Friday" and “el viernes” are no day of shopping. */
export const tellingLeads: ReadonlySet<string> = set(
  "ripe ready wanted want wants needed need eat eaten use used serve ripen keep kept hold held " +
    "maduro madura maduros maduras listo lista listos listas quiero queremos comer comerlos comerlas",
);
/** Words before a day that speak of when it was bought: no wish. */
export const bought: ReadonlySet<string> = set(
  "bought got picked since desde comprado comprada comprados compradas",
);

/** What stands between lead and day, longest first; `unclear`: a day is meant, but which? `lead`: only behind a telling lead. */
export interface Link {
  readonly words: readonly string[];
  readonly when: WantedWord | "unclear";
  readonly needsLead?: true;
}
const link = (when: Link["when"], ...texts: string[]): Link[] =>
  texts.map((text) => ({ words: text.split(" "), when }));
const leadLink = (when: Link["when"], ...texts: string[]): Link[] =>
  link(when, ...texts).map((one) => ({ ...one, needsLead: true }));

export const links: readonly Link[] = [
  ...link(
    "by",
    "by",
    "no later than",
    "not later than",
    "no mas tarde del",
    "at the latest by",
    "a mas tardar",
    "a mas tardar el",
    "como muy tarde el",
  ),
  ...link("on", "for", "para", "para el"),
  ...leadLink("on", "on", "el"),
  ...link(
    "from",
    "not before",
    "no earlier than",
    "no antes del",
    "no antes de",
    "a partir del",
    "a partir de",
  ),
  ...leadLink("from", "from", "until", "till", "hasta", "hasta el"),
  ...link("after", "after", "later than", "despues del", "despues de"),
  ...link("unclear", "before", "antes del", "antes de", "around", "about", "hacia el"),
].sort((one, other) => other.words.length - one.words.length);

const named = (day: Weekday, words: string): [string, Weekday][] =>
  words.split(" ").map((word) => [word, day]);
export const dayNames: ReadonlyMap<string, Weekday> = new Map([
  ...named("sunday", "sunday sun domingo"),
  ...named("monday", "monday mon lunes"),
  ...named("tuesday", "tuesday tue tues martes"),
  ...named("wednesday", "wednesday wed weds miercoles"),
  ...named("thursday", "thursday thu thur thurs jueves"),
  ...named("friday", "friday fri viernes"),
  ...named("saturday", "saturday sat sabado"),
]);

/** Days by their distance from the first, longest phrase first. */
export const nearDays: readonly [readonly string[], number][] = (
  [
    ["the day after tomorrow", 2],
    ["day after tomorrow", 2],
    ["pasado manana", 2],
    ["tomorrow", 1],
    ["manana", 1],
    ["today", 0],
    ["tonight", 0],
    ["hoy", 0],
    ["esta noche", 0],
  ] as const
).map(([text, day]) => [text.split(" "), day]);

/** Phrases for a time that may be several days: asked about. */
export const vagueDays: readonly (readonly string[])[] = [
  "the weekend",
  "this weekend",
  "weekend",
  "next weekend",
  "next week",
  "the week",
  "this week",
  "the end of the week",
  "el fin de semana",
  "fin de semana",
  "la semana que viene",
  "la proxima semana",
  "esta semana",
]
  .map((text) => text.split(" "))
  .sort((one, other) => other.length - one.length);

/** Before a weekday: these change nothing, those leave it open which week is meant. */
export const thisDay: ReadonlySet<string> = set("this the coming el este");
export const nextDay: ReadonlySet<string> = set("next proximo");
/** Behind a day: the time of it, which nothing is planned by. */
export const timesOfDay: readonly (readonly string[])[] = [
  "que viene",
  "por la noche",
  "por la manana",
  "night",
  "morning",
  "evening",
  "afternoon",
  "lunch",
  "dinner",
  "supper",
].map((text) => text.split(" "));

/** For another day than the rest, which says nothing by itself; and too vague to say anything. */
export const laterPhrases: readonly (readonly string[])[] = [
  "later on",
  "for later",
  "later",
  "mas tarde",
  "luego",
  "despues",
].map((text) => text.split(" "));
export const soonPhrases: readonly (readonly string[])[] = [
  "soon",
  "pronto",
  "as soon as possible",
  "cuanto antes",
].map((text) => text.split(" "));

/** What was said of the day a lot is wanted for: a day, a later one than another part, or something that has to be asked about. */
export type SaidWish = Wanted | "later" | "unclear";
