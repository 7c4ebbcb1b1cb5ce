import type { Plan, PlannedLot } from "@keepwright/planner";
import { temperatureWords } from "../../words/amounts.js";
import { shortDayWords } from "../../words/dates.js";
import { type CountedLots, lotAmount } from "../amount.js";
import type { HandoutContext } from "../context.js";
import { laterStays } from "../laterStays.js";
import { nameOnArrival } from "../names.js";
import { isPast } from "../safeTime.js";
import { listed, sheetWrap } from "./sheetWords.js";
import { readyLine, untilLine } from "./until.js";

type Names = ReadonlyMap<string, string>;
type Place = Plan["places"][number];

/** A part as it is put away: how much, how it is wrapped, until when it is good. */
export interface SheetRow {
  readonly lot: string;
  readonly name: string;
  readonly amount: string;
  readonly wrap: string;
  /** When it is ready, where it came unripe. */
  readonly ready?: string;
  readonly until: string;
}

export interface SheetPlace {
  readonly place: string;
  readonly kind: Place["placeKind"];
  /** Which of how many of its sort the kitchen has, for the drawing: 1 is the first. */
  readonly number: number;
  readonly of: number;
  readonly name: string;
  readonly temperature: string;
  /** How the vent is to stand, where it can be set: in words, and by name for the drawing. */
  readonly vent?: { readonly setting: "open" | "half" | "closed"; readonly words: string };
  readonly rows: readonly SheetRow[];
  /** What comes here later, a day a line. */
  readonly later: readonly string[];
}

/** What surely comes here; what does so only if it is ripe sooner than thought stands among the moves. */
const comesLater = (place: Place, lot: PlannedLot) =>
  laterStays(lot)
    .filter(({ before, stay, when }) => {
      const comes = stay.place === place.place && before.place !== place.place;
      return comes && when !== "if ripe before";
    })
    .map(({ stay }) => ({ from: stay.from, lot: lot.id }));

function laterLines({ speaker }: HandoutContext, place: Place, kept: readonly PlannedLot[], names: Names) {
  const all = kept.flatMap((lot) => comesLater(place, lot));
  const days = [...new Set(all.map(({ from }) => from))].sort();
  return days.map((day) => {
    const coming = all.filter(({ from }) => from === day).map(({ lot }) => names.get(lot) ?? lot);
    return speaker.say("sheet.later", { date: shortDayWords(speaker, day), names: listed(speaker, coming) });
  });
}

function row(context: HandoutContext, plan: Plan, lot: PlannedLot, name: string, counted?: CountedLots) {
  const ready = readyLine(context, plan, lot);
  return {
    lot: lot.id,
    name: context.speaker.capital(nameOnArrival(context, plan, lot, name)),
    amount: lotAmount(context, lot, counted),
    wrap: sheetWrap(context.speaker, lot.stays[0]?.wrap ?? "none"),
    ...(ready !== undefined && { ready }),
    until: untilLine(context, plan, lot),
  };
}

function vent({ speaker }: HandoutContext, plan: Plan, place: Place) {
  const setting = plan.vents.find((one) => one.place === place.place)?.setting;
  return setting && { vent: { setting, words: speaker.say(`sheet.vent.${setting}`) } };
}

/** Places in use, in the kitchen's own order, each with what is put there. */
export function sheetPlaces(
  context: HandoutContext,
  plan: Plan,
  { names, places }: { readonly names: Names; readonly places: Names },
  counted?: CountedLots,
): SheetPlace[] {
  const kept = plan.lots.filter((lot) => !isPast(lot));
  const all = plan.places.map((place): SheetPlace => {
    const alike = plan.places.filter(({ placeKind }) => placeKind === place.placeKind);
    return {
      place: place.place,
      kind: place.placeKind,
      number: alike.indexOf(place) + 1,
      of: alike.length,
      name: places.get(place.place) ?? place.place,
      temperature: temperatureWords(context.speaker, context.units, place.temperature),
      ...vent(context, plan, place),
      rows: kept
        .filter((lot) => lot.stays[0]?.place === place.place)
        .map((lot) => row(context, plan, lot, names.get(lot.id) ?? lot.id, counted)),
      later: laterLines(context, place, kept, names),
    };
  });
  return all.filter(({ rows, later }) => rows.length + later.length > 0);
}
