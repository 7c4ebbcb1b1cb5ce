import type { Plan, PlannedLot } from "@keepwright/planner";
import { humidityWords, roomWords, temperatureWords } from "../words/amounts.js";
import { dayWords } from "../words/dates.js";
import { type CountedLots, lotAmount } from "./amount.js";
import type { HandoutContext } from "./context.js";
import { laterStays } from "./laterStays.js";
import { nameOnArrival } from "./names.js";
import { kitchenWords } from "./ordinaryNames.js";
import { isPast } from "./safeTime.js";

/** A lot, or a part of one, as it lies in a place at the start. */
export interface PlaceEntry {
  readonly lot: string;
  readonly name: string;
  readonly amount: string;
  readonly wrap: string;
  /** The whole entry in a line. */
  readonly line: string;
}

export interface PlaceView {
  readonly place: string;
  readonly name: string;
  readonly kind: string;
  /** What to set, where there is a vent. */
  readonly setting: string | undefined;
  readonly air: string;
  readonly room: string;
  /** Name, air, room and setting in a line. */
  readonly line: string;
  /** Share of the room taken on the fullest day; above 1 it does not fit. */
  readonly taken: number;
  readonly entries: readonly PlaceEntry[];
  /** What comes here later, with its date. */
  readonly later: readonly string[];
}

function entry(context: HandoutContext, lot: PlannedLot, named: string, counted?: CountedLots): PlaceEntry {
  const amount = lotAmount(context, lot, counted);
  const wrap = context.speaker.say(`wrap.${lot.stays[0]?.wrap ?? "none"}`);
  const name = context.speaker.capital(named);
  return { lot: lot.id, name, amount, wrap, line: context.speaker.say("entry", { name, amount, wrap }) };
}

function laterLines(
  context: HandoutContext,
  place: string,
  lot: PlannedLot,
  name: string,
  counted?: CountedLots,
): string[] {
  return laterStays(lot)
    .filter(({ before, stay }) => stay.place === place && before.place !== place)
    .map(({ stay, when }) => {
      const values = {
        name: context.speaker.capital(name),
        amount: lotAmount(context, lot, counted),
        date: dayWords(context.speaker, stay.from),
        wrap: context.speaker.say(`wrap.${stay.wrap}`),
      };
      return context.speaker.say(when === "if ripe before" ? "entry.sooner" : "entry.from", values);
    });
}

type Place = Plan["places"][number];

/** The place itself: name, setting, air and room, each alone and all in a line. */
function placeWords(context: HandoutContext, plan: Plan, place: Place) {
  const { speaker, units } = context;
  const vent = plan.vents.find((setting) => setting.place === place.place);
  const name = kitchenWords(context, place.name);
  const air = speaker.say("place.air", {
    temperature: temperatureWords(speaker, units, place.temperature),
    humidity: humidityWords(speaker, place.relativeHumidity),
  });
  const room = speaker.say("place.room", {
    taken: roomWords(speaker, units, place.litresTaken),
    litres: roomWords(speaker, units, place.litres),
  });
  const setting = vent && speaker.say(`vent.${vent.setting}`);
  const line =
    setting === undefined
      ? speaker.say("place.line", { name, air, room })
      : speaker.say("place.lineWithSetting", { name, air, room, setting });
  return { name, kind: speaker.say(`place.kind.${place.placeKind}`), setting, air, room, line };
}

/** A place with the room that is left free when what may no longer be eaten is thrown away. */
const withoutPast =
  ({ lots }: Plan) =>
  (place: Place): Place => {
    const past = lots.filter((lot) => isPast(lot) && lot.stays[0]?.place === place.place);
    const litres = past.reduce((total, lot) => total + lot.litres, 0);
    return litres === 0 ? place : { ...place, litresTaken: Math.max(0, place.litresTaken - litres) };
  };

/** Every place of the plan with its setting, its air, its room and what lies in it, in the kitchen's own order. */
export function placeViews(
  context: HandoutContext,
  plan: Plan,
  names: ReadonlyMap<string, string>,
  counted?: CountedLots,
): PlaceView[] {
  const nameOf = (lot: PlannedLot) => names.get(lot.id) ?? lot.id;
  const kept = plan.lots.filter((lot) => !isPast(lot));
  return plan.places.map(withoutPast(plan)).map((place) => ({
    place: place.place,
    ...placeWords(context, plan, place),
    taken: place.litresTaken / place.litres,
    entries: kept
      .filter((lot) => lot.stays[0]?.place === place.place)
      .map((lot) => entry(context, lot, nameOnArrival(context, plan, lot, nameOf(lot)), counted)),
    later: kept.flatMap((lot) => laterLines(context, place.place, lot, nameOf(lot), counted)),
  }));
}
