import type { Kitchen } from "@keepwright/planner";
import { kitchenTitle, kitchenWords } from "../view/ordinaryNames.js";
import { temperatureWords } from "../words/amounts.js";
import { spanWords } from "../words/spans.js";
import { apartGroups } from "./apartGroups.js";
import type { ClassContext } from "./classContext.js";
import type { Block, ClassDocument } from "./classKit.js";

type Place = Kitchen["places"][number];

/** What is told of a kind in a place: how it lies there first, and when it moves on; or that it comes there once it is ripe. */
function placeLines(context: ClassContext, { id: place }: Place, id: string): string[] {
  const { handout, say } = context;
  const { speaker } = handout;
  const { stays, life } = context.answer(id).belongs;
  const name = context.title(id);
  return stays.flatMap((stay, index) => {
    if (stay.place !== place) return [];
    const wrap = speaker.say(`wrap.${stay.wrap}`);
    if (index > 0) return [say("places.ripe", { name, wrap })];
    const span = speaker.capital(spanWords(speaker, life.early, life.late));
    const next = stays[1];
    if (!next) return [say("places.first", { name, wrap, span })];
    return [say("places.ripening", { name, wrap, span, next: kitchenWords(handout, next.name) })];
  });
}

const dotted = (items: readonly string[]): Block[] =>
  items.length > 0 ? [{ block: "list", mark: "dot", items }] : [];

function placeBlocks(context: ClassContext, place: Place): Block[] {
  const { handout, say, items } = context;
  const answers = items.map((id) => context.answer(id).belongs);
  const here = items.filter((_, index) => answers[index]?.stays.some((stay) => stay.place === place.id));
  if (here.length === 0) return [];
  const settings = answers.flatMap(({ vents }) =>
    vents.flatMap((vent) => (vent.place === place.id ? [vent.setting] : [])),
  );
  const groups = apartGroups(context, here);
  const temperature = temperatureWords(handout.speaker, handout.units, place.temperature);
  return [
    {
      block: "heading",
      text: say("places.heading", { place: kitchenTitle(handout, place.name), temperature }),
    },
    ...dotted([...new Set(settings)].map((setting) => handout.speaker.say(`vent.${setting}`))),
    ...groups.flatMap((group, index): Block[] => [
      ...(groups.length > 1
        ? [{ block: "text" as const, text: say("places.group", { number: index + 1 }) }]
        : []),
      ...dotted(group.flatMap((id) => placeLines(context, place, id))),
    ]),
  ];
}

/** All kinds, place by place, as their answer sheets say; what had better not lie side by side stands in groups apart. */
export function placesDocument(context: ClassContext): ClassDocument {
  const { handout, say, items, kitchen } = context;
  return {
    id: "places",
    sort: "places",
    reader: "group",
    title: say("places.title"),
    subtitle: say("places.subtitle"),
    // Cautions first: at the end they might stand alone on a second page, which nobody hangs up.
    blocks: [
      {
        block: "caution",
        lines: [handout.speaker.say("caution.cut-produce"), handout.speaker.say("caution.local")],
      },
      { block: "text", text: `${say("places.alone")} ${say("places.groups")} ${say("answer.range")}` },
      ...kitchen.places.flatMap((place) => placeBlocks(context, place)),
    ],
    sources: [],
    items,
  };
}
