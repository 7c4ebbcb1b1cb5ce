import type { Lot, WorthBuying } from "@keepwright/planner";
import { amountWords } from "../../view/amount.js";
import { kitchenTitle, kitchenWords } from "../../view/ordinaryNames.js";
import { worthBuyingView } from "../../view/worthBuyingView.js";
import type { ClassContext } from "../classContext.js";
import type { Block, ClassDocument } from "../classKit.js";
import { kitSources, namedEvidence } from "../kitSources.js";
import { type ListedThing, listedThing, printedRoom, roomText, sumOf, tenths } from "./portionsAndRoom.js";

const thingRow = (context: ClassContext, { lot, portions, room }: ListedThing): string[] => [
  context.title(lot.commodity),
  amountWords(context.handout, lot.grams, lot.pieces),
  portions === undefined ? context.say("exercise.seasoning") : context.handout.speaker.number(portions),
  roomText(context, room),
];

function tablesOf(context: ClassContext, things: readonly ListedThing[]): Block[] {
  const { say, handout, kitchen } = context;
  return [
    {
      block: "table",
      head: [say("exercise.thing"), say("exercise.amount"), say("exercise.portions"), say("exercise.room")],
      rows: things.map((thing) => thingRow(context, thing)),
    },
    {
      block: "table",
      head: [say("exercise.place"), say("exercise.room")],
      rows: kitchen.places.map(({ name, litres }) => [
        kitchenTitle(handout, name),
        roomText(context, tenths(printedRoom(context, litres))),
      ]),
    },
  ];
}

/** Portions that the household eats until the next shop. */
const eaten = ({ people, portions, days }: ClassContext["request"]["household"]): number =>
  Math.round(people * portions * days);

function answerBlocks(context: ClassContext, things: readonly ListedThing[], told: WorthBuying): Block[] {
  const { say, handout, kitchen, request } = context;
  const { speaker } = handout;
  const sum = sumOf(things);
  const view = worthBuyingView(handout, told, { kitchen });
  const room = tenths(
    kitchen.places.reduce((all, { litres }) => all + tenths(printedRoom(context, litres)), 0),
  );
  const list = (heading: string, items: readonly string[]): Block[] =>
    items.length === 0
      ? []
      : [
          { block: "heading", text: heading },
          { block: "list", mark: "dot", items },
        ];
  return [
    {
      block: "list",
      mark: "number",
      items: [
        say("exercise.answer.portions", {
          sum: sum.portions,
          eaten: eaten(request.household),
        }),
        say("exercise.answer.room", { sum: roomText(context, sum.room), room: roomText(context, room) }),
        say("exercise.answer.cut"),
      ],
    },
    ...list(speaker.say("heading.buy"), view.buy),
    ...list(speaker.say("heading.leaveUnbought"), view.leave),
    ...list(speaker.say("heading.buySaves"), view.saves),
    ...list(speaker.say("heading.buyHow"), [...view.how, say("exercise.starchy"), say("exercise.noPrices")]),
    { block: "caution", lines: [...view.cautions, speaker.say("caution.local")] },
  ];
}

/** Portions and densities that the table is worked out with. */
const sourcesOf = (context: ClassContext, things: readonly ListedThing[]) =>
  kitSources(
    context,
    things.flatMap(({ lot: { commodity } }) => {
      const household = context.catalogue.commodities.get(commodity)?.household;
      return household
        ? [
            namedEvidence(context, context.say("exercise.figure.portion"), household.portion),
            namedEvidence(context, context.say("exercise.figure.room"), household.bulkDensity),
          ]
        : [];
    }),
  );

/** A list to shorten for a household, by portions and by room; and how it comes out. */
export function exerciseDocuments(
  context: ClassContext,
  wished: readonly Lot[],
  told: WorthBuying,
): ClassDocument[] {
  const { say, handout, request, kitchen } = context;
  const things = wished.map((lot) => listedThing(context, lot));
  const items = [...new Set(wished.map(({ commodity }) => commodity))];
  const { people, days } = request.household;
  const intro = say("exercise.intro", { people, days, kitchen: kitchenWords(handout, kitchen.name) });
  const tasks = [
    say("exercise.task.portions", { portions: request.household.portions }),
    say("exercise.task.room"),
    say("exercise.task.cut"),
  ];
  return [
    {
      id: "exercise",
      sort: "exercise",
      reader: "group",
      title: say("exercise.title"),
      subtitle: say("kit.invented"),
      blocks: [
        { block: "text", text: intro },
        ...tablesOf(context, things),
        ...tasks.flatMap((task, index): Block[] => [
          { block: "text", text: say("exercise.task", { number: index + 1, task }) },
          { block: "writing", lines: 2 },
        ]),
      ],
      sources: [],
      items,
    },
    {
      id: "exercise-answer",
      sort: "exercise answer",
      reader: "host",
      title: say("exercise.answer"),
      subtitle: say("kit.host"),
      blocks: answerBlocks(context, things, told),
      sources: sourcesOf(context, things),
      items,
    },
  ];
}
