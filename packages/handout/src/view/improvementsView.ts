import type { Improvement, Improvements, Kitchen, Reading } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { massWords, roomWords, temperatureWords, unitsOf } from "../words/amounts.js";
import { dayWords, fullDateWords } from "../words/dates.js";
import { plainText } from "../words/plainText.js";
import { amountWords } from "./amount.js";
import { pressingLines } from "./cautions.js";
import type { HandoutContext } from "./context.js";
import { type NamedLot, stateName } from "./kindNames.js";
import { type KitchenView, kitchenView } from "./kitchenView.js";
import { kitchenWords } from "./ordinaryNames.js";
import { summaryLines } from "./planView.js";
import { type ReadingView, readingView } from "./readingView.js";

/** What one change at a time would save, in rows and words. */
export interface ImprovementsView {
  readonly title: string;
  readonly summary: readonly string[];
  readonly reading: ReadingView | undefined;
  readonly kitchen: KitchenView | undefined;
  /** What is wasted as it is; and, where so, that nothing tried matters. */
  readonly lead: readonly string[];
  /** Changes that matter, the largest saving first. */
  readonly helps: readonly string[];
  /** Changes that save nothing one can be sure of. */
  readonly little: readonly string[];
  readonly how: readonly string[];
  readonly cautions: readonly string[];
}

/** What the improvements are told beside. */
export interface ImproveSurroundings {
  readonly kitchen: Kitchen;
  /** True when no kitchen was given and an ordinary one was taken: it is told too. */
  readonly kitchenAssumed?: boolean;
  /** The lots of the haul, to name them by. */
  readonly lots: readonly (NamedLot & { readonly id: string })[];
  readonly reading?: Reading;
}

/** The same with the first day, from which a second shop is dated. */
interface DatedSurroundings extends ImproveSurroundings {
  readonly from: string;
}

type Told<Name extends Improvement["change"]["name"]> = Extract<Improvement["change"], { name: Name }>;

/** Digits of a thermometer's reading that are told: half a degree Celsius is about one Fahrenheit. */
const digitsOf = (units: HandoutContext["units"]): number => (unitsOf(units).temperature === "us" ? 0 : 1);

function temperatureLine(
  { speaker, units }: HandoutContext,
  { kitchen }: ImproveSurroundings,
  change: Told<"refrigerator colder" | "refrigerator warmer">,
): string {
  const digits = digitsOf(units);
  const to = temperatureWords(speaker, units, change.to, digits);
  const from = temperatureWords(speaker, units, change.from, digits);
  if (kitchen.refrigerators.length === 1) return speaker.say("improve.do.temperature", { to, from });
  return speaker.say("improve.do.temperatureOf", { name: plainText(change.refrigerator), to, from });
}

function drawerLine(
  { speaker, units }: HandoutContext,
  { kitchen }: ImproveSurroundings,
  change: Told<"vented drawer more">,
): string {
  const litres = roomWords(speaker, units, change.litres);
  if (kitchen.refrigerators.length === 1) return speaker.say("improve.do.drawer", { litres });
  return speaker.say("improve.do.drawerOf", { name: plainText(change.refrigerator), litres });
}

function twiceLine(context: HandoutContext, from: string, change: Told<"shopping twice">): string {
  const { speaker, units } = context;
  const names = change.lots.map((lot) => {
    const name = stateName(context, lot);
    return lot.pieces === undefined
      ? speaker.say("improve.do.twice.mass", { name, mass: massWords(speaker, units, lot.grams) })
      : speaker.say("improve.do.twice.pieces", { name, pieces: lot.pieces });
  });
  const date = dayWords(speaker, addDays(from, change.day));
  return speaker.say("improve.do.twice", { date, names: speaker.list(names) });
}

/** A change as it is asked for: "Set the refrigerator to 3.4 °C instead of 4.4 °C". */
function changeWords(context: HandoutContext, around: DatedSurroundings, change: Improvement["change"]) {
  const { speaker } = context;
  switch (change.name) {
    case "refrigerator colder":
    case "refrigerator warmer":
      return temperatureLine(context, around, change);
    case "vent turned": {
      const place = around.kitchen.places.find(({ id }) => id === change.place);
      return speaker.say(`improve.do.vent.${change.to}`, {
        place: kitchenWords(context, place?.name ?? change.place),
      });
    }
    case "lidded boxes at hand":
    case "paper bags at hand":
      return speaker.say(`improve.do.${change.name}`);
    case "vented drawer more":
      return drawerLine(context, around, change);
    case "bunches topped": {
      const bunches = around.lots.filter(({ id }) => change.lots.includes(id));
      const names = bunches.map((lot) => stateName(context, { ...lot, tops: false }));
      return speaker.say("improve.do.topped", { names: speaker.list(names) });
    }
    case "portion more a day":
      return speaker.say("improve.do.portion", { from: change.from, to: change.to });
    case "shopping twice":
      return twiceLine(context, around.from, change);
    case "lot fewer": {
      const { lot } = change;
      const amount = amountWords(context, lot.grams, lot.pieces);
      return speaker.say("improve.do.lot", { name: stateName(context, lot), amount });
    }
  }
}

function gainLine(context: HandoutContext, around: DatedSurroundings, one: Improvement): string {
  const { speaker, units } = context;
  const mass = (grams: number): string => massWords(speaker, units, grams);
  const change = changeWords(context, around, one.change);
  const { value, low, high } = one.gain;
  const gain = mass(value);
  const eaten = one.eatenLess?.value ?? 0;
  if (eaten >= tooLittleToTell) {
    const least = mass(Math.max(0, low));
    return speaker.say("improve.gainFewer", {
      change,
      gain,
      low: least,
      high: mass(high),
      eaten: mass(eaten),
    });
  }
  // A low end of a bite or less is not told as a figure: it would claim a precision nobody has.
  return low < tooLittleToTell
    ? speaker.say("improve.gainUpTo", { change, gain, high: mass(high) })
    : speaker.say("improve.gain", { change, gain, low: mass(low), high: mass(high) });
}

/** Smallest saving told as a figure of its own [g]: a bite. Declared, no source. */
const tooLittleToTell = 10;

/** A change that does not count: by name, with what it may save where that is more than next to nothing, or what it costs where that is sure. */
function littleLine(
  context: HandoutContext,
  around: DatedSurroundings,
  one: Improvement,
  least: number,
): string {
  const { speaker, units } = context;
  const change = changeWords(context, around, one.change);
  const { value, high } = one.gain;
  const mass = massWords(speaker, units, Math.abs(value));
  const eaten = one.eatenLess?.value ?? 0;
  if (value >= least && eaten > value) {
    return speaker.say("improve.worthBuying", {
      change,
      gain: mass,
      eaten: massWords(speaker, units, eaten),
    });
  }
  if (one.eatenLess && Math.abs(value) < least) return speaker.say("improve.nothingToLeave");
  if (value <= -least && high < 0) return speaker.say("improve.worse", { change, loss: mass });
  if (value < least) return speaker.say("improve.noGain", { change });
  return speaker.say("improve.mayGain", { change, gain: mass });
}

/** How the figures were come by, and the rule by which a change counts. */
function howLines({ speaker, units }: HandoutContext, { rule, changes }: Improvements): string[] {
  const mass = (grams: number): string => massWords(speaker, units, grams);
  return [
    speaker.say("improve.how.one"),
    speaker.say("improve.how.range", { noise: mass(Math.max(1, Math.ceil(rule.plannerNoise))) }),
    speaker.say("improve.how.rule", { least: mass(rule.leastGain) }),
    ...(changes.some(({ change, eatenLess }) => change.name === "lot fewer" && eatenLess !== undefined)
      ? [speaker.say("improve.how.fewer")]
      : []),
    ...(changes.some(({ change }) => change.name === "shopping twice")
      ? [speaker.say("improve.how.twice")]
      : []),
  ];
}

/** What one change at a time would save, as rows and words. */
export function improvementsView(
  context: HandoutContext,
  improvements: Improvements,
  around: ImproveSurroundings,
): ImprovementsView {
  const { speaker, units } = context;
  const { from, days, rule, changes, expectedWaste } = improvements;
  const mass = (grams: number): string => massWords(speaker, units, grams);
  const date = (day: number): string => fullDateWords(speaker, addDays(from, day));
  const dated = { ...around, from };
  const assumed = around.kitchenAssumed === true;
  const least = mass(rule.leastGain);
  const helps = changes.filter(({ matters }) => matters);
  const lead =
    changes.length === 0
      ? [speaker.say("improve.littleWasted", { least })]
      : [
          speaker.say("improve.asItIs", { waste: mass(expectedWaste.value) }),
          ...(helps.length === 0 ? [speaker.say("improve.noneMatters")] : []),
        ];
  return {
    title: speaker.say("improve.title", { from: date(0), to: date(days - 1) }),
    summary: summaryLines(context, improvements, assumed),
    reading: around.reading && readingView(context, around.reading),
    kitchen: assumed ? kitchenView(context, around.kitchen) : undefined,
    lead,
    helps: helps.map((one) => gainLine(context, dated, one)),
    little: changes
      .filter(({ matters }) => !matters)
      .map((one) => littleLine(context, dated, one, rule.leastGain)),
    how: changes.length === 0 ? [] : howLines(context, improvements),
    cautions: pressingLines(context, improvements.cautions),
  };
}
