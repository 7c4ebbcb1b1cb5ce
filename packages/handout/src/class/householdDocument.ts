import { commodityOf } from "@keepwright/catalogue";
import type { Plan, PlannedLot } from "@keepwright/planner";
import { calendarDate, daysBetween } from "@keepwright/quantities";
import { type CountedLots, lotAmount } from "../view/amount.js";
import { cautionLines } from "../view/cautions.js";
import { leftWhole } from "../view/eating.js";
import { laterStays } from "../view/laterStays.js";
import { lotNames, placeNames } from "../view/names.js";
import { kitchenWords } from "../view/ordinaryNames.js";
import { isPast } from "../view/safeTime.js";
import { wasteLine } from "../view/waste.js";
import { temperatureWords } from "../words/amounts.js";
import type { ClassContext } from "./classContext.js";
import type { Block, ClassDocument } from "./classKit.js";
import { isAgainst, reasonsPassed } from "./slides/passedOver.js";

/** A household's plan with what is known of its haul. */
export interface WorkedPlan {
  readonly plan: Plan;
  readonly counted: CountedLots;
  readonly invented: boolean;
}

type Names = ReadonlyMap<string, string>;

const moveKeys = {
  day: "household.move.day",
  ripe: "household.move.ripe",
  "if ripe before": "household.move.sooner",
} as const;

/** "Potatoes, about 2 kg: loose, no wrap. Move when ripe, about day 3, to “Left drawer”." */
function lotLines(
  context: ClassContext,
  { plan, counted }: WorkedPlan,
  lot: PlannedLot,
  names: Names,
): string {
  const { handout, say } = context;
  const { speaker } = handout;
  const [first] = lot.stays;
  const lies = say("household.lot", {
    name: speaker.capital(names.get(lot.id) ?? lot.id),
    amount: lotAmount(handout, lot, counted),
    wrap: speaker.say(`wrap.${first?.wrap ?? "none"}`),
  });
  const places = placeNames(handout, plan);
  const moves = laterStays(lot).map(({ stay, when }) =>
    say(moveKeys[when], {
      // By the calendar, as meals are counted: fromDay counts from an hour of the first day, not from midnight.
      day: daysBetween(calendarDate(plan.from), calendarDate(stay.from)) + 1,
      place: places.get(stay.place) ?? stay.place,
      wrap: speaker.say(`wrap.${stay.wrap}`),
    }),
  );
  return [lies, ...moves].join(" ");
}

function placeBlocks(context: ClassContext, worked: WorkedPlan, names: Names): Block[] {
  const { handout, say } = context;
  const { speaker, units } = handout;
  const { plan } = worked;
  const places = placeNames(handout, plan);
  return plan.places.flatMap((place): Block[] => {
    const here = plan.lots.filter((lot) => !isPast(lot) && lot.stays[0]?.place === place.place);
    if (here.length === 0) return [];
    const setting = plan.vents.find((vent) => vent.place === place.place)?.setting;
    return [
      {
        block: "heading",
        text: say("places.heading", {
          place: speaker.capital(places.get(place.place) ?? place.place),
          temperature: temperatureWords(speaker, units, place.temperature),
        }),
      },
      {
        block: "list",
        mark: "tick",
        items: [
          ...(setting === undefined ? [] : [speaker.say(`vent.${setting}`)]),
          ...here.map((lot) => lotLines(context, worked, lot, names)),
        ],
      },
    ];
  });
}

/** Things that lie where their own sheets do not advise it: a plan for many weighs waste against taste and against what is told of bulbs. */
function againstSheets(context: ClassContext, plan: Plan, names: Names): Block[] {
  const { handout, say, catalogue } = context;
  const against = plan.lots.filter((lot) => {
    if (isPast(lot) || lot.form !== "whole") return false;
    const { belongs } = context.answer(lot.commodity);
    return lot.stays.some((stay, index) => {
      const there = context
        .elsewhere(lot.commodity)
        .find((one) => one.stays[0]!.placeKind === stay.placeKind);
      const reasons = there ? reasonsPassed(commodityOf(catalogue, lot.commodity), belongs, there) : [];
      // What is ripe already has no need to ripen there.
      return isAgainst(index > 0 ? reasons.filter((one) => one !== "unripe") : reasons);
    });
  });
  if (against.length === 0) return [];
  const list = handout.speaker.list(against.map(({ id }) => names.get(id) ?? id));
  return [{ block: "text", text: say("household.against", { names: list }) }];
}

/** By which day each thing is eaten up, days counted from 1; then what is left over. */
function eatingLines({ handout, say }: ClassContext, plan: Plan, names: Names): string[] {
  const nameOf = ({ id }: PlannedLot) => names.get(id) ?? id;
  const kept = plan.lots.filter((lot) => !isPast(lot));
  const lastDay = (lot: PlannedLot) => lot.eatOn.findLast(({ portions }) => portions > 0)?.day;
  const upTo = Array.from({ length: plan.days }, (_, day) => {
    const lots = kept.filter((lot) => leftWhole(lot) === 0 && lastDay(lot) === day);
    if (lots.length === 0) return [];
    return [say("household.eat", { day: day + 1, names: handout.speaker.list(lots.map(nameOf)) })];
  }).flat();
  const left = kept.filter((lot) => leftWhole(lot) > 0).map(nameOf);
  return left.length > 0 ? [...upTo, say("household.left", { names: handout.speaker.list(left) })] : upTo;
}

/** One household worked through: what came home, where it went in a full kitchen, what is eaten first. */
export function householdDocument(context: ClassContext, worked: WorkedPlan): ClassDocument {
  const { handout, say, kitchen } = context;
  const { speaker } = handout;
  const { plan, invented } = worked;
  const names = lotNames(handout, plan);
  const { people, portionsPerPersonPerDay } = plan.household;
  const about = new Set(plan.lots.map(({ commodity }) => commodity));
  return {
    id: "household",
    sort: "household",
    reader: "group",
    title: say("household.title"),
    subtitle: say(invented ? "kit.invented" : "household.told"),
    blocks: [
      {
        block: "text",
        text: speaker.say("plan.household", {
          count: people,
          portions: speaker.number(portionsPerPersonPerDay),
        }),
      },
      { block: "text", text: say("answer.kitchen", { kitchen: kitchenWords(handout, kitchen.name) }) },
      { block: "text", text: say("household.together") },
      ...placeBlocks(context, worked, names),
      ...againstSheets(context, plan, names),
      { block: "heading", text: speaker.say("heading.eat") },
      { block: "list", mark: "dot", items: eatingLines(context, plan, names) },
      { block: "heading", text: speaker.say("heading.waste") },
      { block: "text", text: wasteLine(handout, plan) },
      { block: "text", text: speaker.say("waste.note") },
      { block: "caution", lines: cautionLines(handout, plan, placeNames(handout, plan), names) },
    ],
    sources: [{ text: say("household.source"), standing: "inferred" }],
    items: [...new Set([...context.items.filter((id) => about.has(id)), ...about])],
  };
}
