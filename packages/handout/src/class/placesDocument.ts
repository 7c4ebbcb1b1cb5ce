import { commodityOf } from "@keepwright/catalogue";
import { mustBreathe } from "@keepwright/planner";
import { kitchenTitle, kitchenWords } from "../view/ordinaryNames.js";
import { sheetWrap } from "../view/sheet/sheetWords.js";
import { temperatureWords } from "../words/amounts.js";
import { spanWords } from "../words/spans.js";
import type { ClassContext } from "./classContext.js";
import type { Block, ClassDocument } from "./classKit.js";
import { placeSpots, type Spot } from "./placeSpots.js";

/** What is told of a kind in a spot: how it lies there first, and when it moves on; or that it comes there once it is ripe. */
function kindLines(context: ClassContext, { place }: Spot, id: string): string[] {
  const { handout, say, kitchen } = context;
  const { speaker } = handout;
  const { stays, life } = context.answer(id).belongs;
  const name = context.title(id);
  const kindOf = (of: string) => kitchen.places.find((one) => one.id === of)?.kind;
  return stays.flatMap((stay, index) => {
    if (kindOf(stay.place) !== place.kind) return [];
    const wrap = sheetWrap(speaker, stay.wrap);
    if (index > 0) return [say("places.ripe", { name, wrap })];
    const span = spanWords(speaker, life.early, life.late);
    const next = stays[1];
    if (!next) return [say("places.first", { name, wrap, span })];
    return [say("places.ripening", { name, wrap, span, next: kitchenWords(handout, next.name) })];
  });
}

function spotTitle({ handout, say }: ClassContext, { place, part, box }: Spot): string {
  const temperature = temperatureWords(handout.speaker, handout.units, place.temperature);
  const name = kitchenTitle(handout, place.name);
  if (box !== undefined) return say("places.box", { place: name, number: box, temperature });
  return part === undefined
    ? say("places.heading", { place: name, temperature })
    : say("places.part", { place: name, part: say(`places.part.${part}`), temperature });
}

function spotBlocks(context: ClassContext, spot: Spot): Block[] {
  const vent = spot.vent === undefined ? [] : [context.handout.speaker.say(`sheet.vent.${spot.vent}`)];
  return [
    { block: "heading", text: spotTitle(context, spot) },
    {
      block: "list",
      mark: "dot",
      items: [...vent, ...spot.kinds.flatMap((id) => kindLines(context, spot, id))],
    },
  ];
}

/** What to do where there are more groups than spots; nothing where there are not. A lid that is on is not for what must breathe. */
function boxLines({ say, catalogue, handout, name }: ClassContext, spots: readonly Spot[]): string[] {
  const boxed = spots.flatMap(({ box, kinds }) => (box === undefined ? [] : kinds));
  if (boxed.length === 0) return [];
  const breathing = boxed.filter((id) => mustBreathe(commodityOf(catalogue, id))).map(name);
  return breathing.length > 0
    ? [say("places.boxes"), say("places.ajar", { names: handout.speaker.list(breathing) })]
    : [say("places.boxes")];
}

/** All kinds, spot by spot; what had better not lie side by side has a spot of its own. */
export function placesDocument(context: ClassContext): ClassDocument {
  const { handout, say, items } = context;
  const spots = placeSpots(context);
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
      { block: "text", text: [say("places.intro"), ...boxLines(context, spots)].join(" ") },
      ...spots.flatMap((spot) => spotBlocks(context, spot)),
    ],
    sources: [],
    brief: [{ text: say("places.source") }],
    items,
  };
}
