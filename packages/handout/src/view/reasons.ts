import type { Commodity } from "@keepwright/catalogue";
import { type Produce, produceFromCommodity, respirationRate } from "@keepwright/physics";
import type { Plan, PlannedLot } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { givesMuchEthylene, harmedByEthylene } from "../answer/apart.js";
import { humidityWords, percentWords, temperatureWords } from "../words/amounts.js";
import { dayWords } from "../words/dates.js";
import { isCold } from "./coldPlaces.js";
import { commodityIn, type HandoutContext } from "./context.js";
import { endsGreen } from "./endingWords.js";
import { kitchenWords } from "./ordinaryNames.js";

type PlanPlace = Plan["places"][number];
type Stay = PlannedLot["stays"][number];

/** What a reason is made from: computed amounts of this plan and published figures of the kind. */
interface Grounds {
  readonly context: HandoutContext;
  readonly plan: Plan;
  readonly lot: PlannedLot;
  readonly commodity: Commodity;
  readonly produce: Produce;
  /** The stay that lasts longest, and its place. */
  readonly stay: Stay;
  readonly place: PlanPlace;
}

/** The stay it spends the most days of its life in. */
function longestStay(lot: PlannedLot): Stay {
  const lengths = lot.stays.map(
    (stay) => (stay.toDay ?? Math.max(lot.life.middle, stay.fromDay)) - stay.fromDay,
  );
  return lot.stays[lengths.indexOf(Math.max(...lengths))] ?? lot.stays[0]!;
}

/** The conditions that its life is worked out for. */
export function lastsLine({ speaker, units }: HandoutContext, lot: PlannedLot): string {
  return speaker.say("reason.lasts", {
    temperature: temperatureWords(speaker, units, lot.conditions.temperature),
    humidity: humidityWords(speaker, lot.conditions.relativeHumidity),
  });
}

/** What ends it first, with the figure that goes with it. */
export function endsLine(
  context: HandoutContext,
  lot: Pick<PlannedLot, "commodity" | "form" | "endedBy" | "conditions" | "ripeness">,
): string {
  const { speaker, units } = context;
  const commodity = commodityIn(context, lot.commodity);
  const ending = lot.endedBy;
  if (ending === "water" && commodity) {
    return speaker.say("reason.ends.water", {
      loss: percentWords(speaker, commodity.water.maximumLoss.value),
    });
  }
  if (ending === "chilling" && commodity?.chilling) {
    return speaker.say("reason.ends.chilling", {
      threshold: temperatureWords(speaker, units, safeLimit(commodity, lot.ripeness)),
    });
  }
  if (ending === "water" || ending === "chilling") {
    return speaker.say("reason.ends.other", { ending: speaker.say(`ending.${ending}`) });
  }
  if (endsGreen(context, lot, ending)) return speaker.say("reason.ends.greening");
  return speaker.say(`reason.ends.${ending}`);
}

/** Lowest safe temperature [°C] of a chilling-sensitive kind at its ripeness; −Infinity for the rest. */
function safeLimit(commodity: Commodity, ripeness: number): number {
  const { chilling } = commodity;
  if (!chilling) return -Infinity;
  return (ripeness >= 1 ? chilling.thresholdWhenRipe : undefined)?.value ?? chilling.threshold.value;
}

/** Kept out of a refrigerator that is colder than is safe for it. */
function tooCold({ context, plan, lot, commodity, place }: Grounds): string[] {
  const limit = safeLimit(commodity, lot.ripeness);
  const cold = plan.places.find((other) => isCold(other) && other.temperature < limit);
  if (!cold || isCold(place) || place.temperature < cold.temperature) return [];
  const { speaker, units } = context;
  return [
    speaker.say("reason.tooCold", {
      threshold: temperatureWords(speaker, units, limit),
      place: kitchenWords(context, cold.name),
      temperature: temperatureWords(speaker, units, cold.temperature),
    }),
  ];
}

/** It lies somewhere warmer than a refrigerator until it is ripe. */
function ripensInWarmth(plan: Plan, [first, second]: PlannedLot["stays"]): boolean {
  const place = plan.places.find((one) => one.place === first?.place);
  return first?.moveWhen === "ripe" && second !== undefined && place !== undefined && !isCold(place);
}

/** Ripened in the warmth, then slowed by the cold; or ripened slowly in the cold already. */
function ripensFirst({ context, plan, lot }: Grounds): string[] {
  const [first, second] = lot.stays;
  if (first?.moveWhen !== "ripe" || lot.readyOnDay === null) return [];
  const temperatureOf = (stay: Stay) => plan.places.find(({ place }) => place === stay.place);
  const [warm, cold] = [temperatureOf(first), second && temperatureOf(second)];
  if (!warm) return [];
  const { speaker, units } = context;
  const values = {
    temperature: temperatureWords(speaker, units, warm.temperature),
    date: dayWords(speaker, first.to ?? addDays(plan.from, lot.readyOnDay)),
  };
  if (!ripensInWarmth(plan, lot.stays)) return [speaker.say("reason.ripensInCold", values)];
  const ripens = speaker.say("reason.ripensFirst", values);
  if (!cold || cold.temperature >= warm.temperature) return [ripens];
  const after = {
    temperature: temperatureWords(speaker, units, cold.temperature),
    place: kitchenWords(context, cold.name),
  };
  return [ripens, speaker.say("reason.thenCold", after)];
}

/** Least slowing worth a sentence. */
const worthSaying = 1.5;

/** How many times slower it ages here than in the warmest place: the ratio of its rates of respiration. */
function slower({ context, plan, lot, produce, place }: Grounds): string[] {
  // Said already where it ripens in the warmth first.
  if (ripensInWarmth(plan, lot.stays)) return [];
  const warmest = Math.max(...plan.places.map((other) => other.temperature));
  const rate = (celsius: number) => respirationRate(produce.respiration, celsius);
  const times = rate(warmest) / rate(place.temperature);
  if (!(times >= worthSaying)) return [];
  const { speaker, units } = context;
  return [
    speaker.say("reason.slower", {
      temperature: temperatureWords(speaker, units, place.temperature),
      times: speaker.number(
        times,
        times < 3 ? { maximumSignificantDigits: 2 } : { maximumFractionDigits: 0 },
      ),
      room: temperatureWords(speaker, units, warmest),
    }),
  ];
}

/** Ethylene acts by its logarithm: a difference counts from about threefold. */
const ethyleneContrast = 3;

/** Kept away from ethylene: much less here than in another place at about this temperature. */
function lessEthylene({ context, plan, commodity, place, lot }: Grounds): string[] {
  if (!harmedByEthylene(commodity)) return [];
  const here = Math.max(lot.conditions.ethylene, place.ethylene);
  const others = plan.places.filter(
    (other) => isCold(other) === isCold(place) && other.place !== place.place,
  );
  const worst = others.sort((one, other) => other.ethylene - one.ethylene)[0];
  if (!worst || worst.ethylene < ethyleneContrast * Math.max(here, 0.005)) return [];
  const { speaker } = context;
  return [speaker.say("reason.lessEthylene", { place: kitchenWords(context, worst.name) })];
}

/** Percentage points of humidity that make a difference worth a sentence. */
const humidityContrast = 10;

const holdsDamp: readonly Stay["wrap"][] = [
  "perforated bag",
  "closed film bag",
  "damp towel",
  "beeswax cloth",
  "foil",
  "lidded box",
];
/** Humidity [%] of a place above which a wrap is not needed to keep the air damp. */
const dampEnough = 90;

/** Kept damp by its wrap in a place that is drier. */
function dampInWrap({ context, commodity, place, stay }: Grounds): string[] {
  if (commodity.storage.relativeHumidity.low < dampLover) return [];
  if (!holdsDamp.includes(stay.wrap) || place.relativeHumidity >= dampEnough) return [];
  const there = humidityWords(context.speaker, place.relativeHumidity);
  return [context.speaker.say("reason.wrapDamp", { place: kitchenWords(context, place.name), there })];
}

/** Ripening in a bag that holds in its own ethylene. */
function bagRipens({ context, lot, commodity }: Grounds): string[] {
  const [first] = lot.stays;
  const bagged = first?.wrap === "paper bag" || first?.wrap === "closed film bag";
  return bagged && first.moveWhen === "ripe" && commodity.ripening
    ? [context.speaker.say("reason.bagRipens")]
    : [];
}

/** Recommended humidity [%] from which damp air is good for a kind: onions and their like are to be kept drier. */
const dampLover = 85;

/** Kept in damp air: the air around it against the driest place as cold. */
function damp({ context, plan, lot, commodity, place, stay }: Grounds): string[] {
  if (commodity.storage.relativeHumidity.low < dampLover) return [];
  const others = plan.places.filter(
    (other) => isCold(other) === isCold(place) && other.place !== place.place,
  );
  const driest = others.sort((one, other) => one.relativeHumidity - other.relativeHumidity)[0];
  const here = lot.conditions.relativeHumidity;
  if (!driest || stay.wrap !== "none" || here < 85 || here - driest.relativeHumidity < humidityContrast)
    return [];
  const { speaker } = context;
  const values = {
    here: humidityWords(speaker, here),
    there: humidityWords(speaker, driest.relativeHumidity),
  };
  return [speaker.say("reason.damp", { ...values, place: kitchenWords(context, driest.name) })];
}

function givesEthylene({ context, commodity }: Grounds): string[] {
  return givesMuchEthylene(commodity) ? [context.speaker.say("reason.gives")] : [];
}

const sweetOrgans = ["fruit", "berry", "citrus", "melon"];

/** Bought unripe though it never ripens: waiting is in vain. */
function neverRipens({ context, commodity, lot }: Grounds): string[] {
  const vain = !commodity.climacteric && sweetOrgans.includes(commodity.organ) && lot.ripeness < 0.75;
  return vain ? [context.speaker.say("reason.neverRipens")] : [];
}

/** Why a lot lies where it does and how long, in whole sentences made from computed amounts. */
export function reasonLines(context: HandoutContext, plan: Plan, lot: PlannedLot): string[] {
  const lead = [lastsLine(context, lot), endsLine(context, lot)];
  const commodity = commodityIn(context, lot.commodity);
  const stay = longestStay(lot);
  const place = plan.places.find((one) => one.place === stay.place);
  if (!commodity || !place) return lead;
  const produce = produceFromCommodity(commodity);
  const grounds: Grounds = { context, plan, lot, commodity, produce, stay, place };
  const why = [
    tooCold,
    ripensFirst,
    bagRipens,
    slower,
    lessEthylene,
    dampInWrap,
    damp,
    givesEthylene,
    neverRipens,
  ];
  return [...lead, ...why.flatMap((reason) => reason(grounds))];
}
