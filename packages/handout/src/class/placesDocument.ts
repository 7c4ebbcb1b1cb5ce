import { kitchenTitle, kitchenWords } from "../view/ordinaryNames.js";
import { temperatureWords } from "../words/amounts.js";
import { spanWords } from "../words/spans.js";
import type { ClassContext } from "./classContext.js";
import type { Block, ClassDocument } from "./classKit.js";

/** One kind in a line: how it lies in its first place, where it goes when ripe, and how long it lasts. */
function placeLine(context: ClassContext, id: string): string {
  const { handout, say } = context;
  const { speaker } = handout;
  const { stays, life } = context.answer(id).belongs;
  const [stay, later] = stays;
  const values = {
    name: context.title(id),
    wrap: speaker.say(`wrap.${stay?.wrap ?? "none"}`),
    span: speaker.capital(spanWords(speaker, life.early, life.late)),
  };
  if (!later) return say("places.first", values);
  return say("places.ripening", {
    ...values,
    next: kitchenWords(handout, later.name),
    nextWrap: speaker.say(`wrap.${later.wrap}`),
  });
}

/** All kinds on one page, place by place, as their answer sheets say. */
export function placesDocument(context: ClassContext): ClassDocument {
  const { handout, say, items, kitchen } = context;
  const units = handout.units;
  const blocks = kitchen.places.flatMap((place): Block[] => {
    const here = items.filter((id) => context.answer(id).belongs.stays[0]?.place === place.id);
    if (here.length === 0) return [];
    const settings = here.flatMap((id) =>
      context.answer(id).belongs.vents.flatMap((vent) => (vent.place === place.id ? [vent.setting] : [])),
    );
    const temperature = temperatureWords(handout.speaker, units, place.temperature);
    return [
      {
        block: "heading",
        text: say("places.heading", { place: kitchenTitle(handout, place.name), temperature }),
      },
      {
        block: "list",
        mark: "dot",
        items: [
          ...[...new Set(settings)].map((setting) => handout.speaker.say(`vent.${setting}`)),
          ...here.map((id) => placeLine(context, id)),
        ],
      },
    ];
  });
  return {
    id: "places",
    sort: "places",
    reader: "group",
    title: say("places.title"),
    subtitle: say("places.subtitle"),
    blocks: [
      ...blocks,
      { block: "text", text: `${say("places.alone")} ${say("answer.range")}` },
      {
        block: "caution",
        lines: [handout.speaker.say("caution.cut-produce"), handout.speaker.say("caution.local")],
      },
    ],
    sources: [],
    items,
  };
}
