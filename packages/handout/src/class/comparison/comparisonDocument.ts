import type { TwoWays } from "@keepwright/planner";
import type { ClassContext } from "../classContext.js";
import type { Block, ClassDocument } from "../classKit.js";
import { comparedThings } from "./comparedThings.js";
import { kitTwoWaysView } from "./layKit.js";

/** The worked household's food laid two ways, on paper: what it comes to, evening by evening, and where the difference lies. */
export function comparisonDocument(context: ClassContext, made: TwoWays): ClassDocument {
  const { say, handout, items } = context;
  const view = kitTwoWaysView(handout, made);
  const { sides, fates } = view;
  const head = (side: string, fate: string): string => say("twoWaysPaper.of", { side, fate });
  const evenings: Block = {
    block: "table",
    head: [
      say("twoWaysPaper.evening"),
      head(sides.unsorted, fates.eaten),
      head(sides.unsorted, fates.lost),
      head(sides.planned, fates.eaten),
      head(sides.planned, fates.lost),
    ],
    rows: view.evenings.map(({ short, unsorted, planned }) => [
      short,
      unsorted.eaten.short,
      unsorted.lost.words,
      planned.eaten.short,
      planned.lost.words,
    ]),
  };
  const things = comparedThings(context, view);
  return {
    id: "two-ways",
    sort: "comparison",
    reader: "group",
    title: view.title,
    subtitle: say("slides.invented"),
    blocks: [
      { block: "text", text: view.sum },
      { block: "heading", text: say("slides.things.title") },
      things.length > 0
        ? { block: "table", head: [view.thing, sides.unsorted, sides.planned], rows: things }
        : { block: "text", text: say("slides.things.none") },
      { block: "heading", text: say("twoWaysPaper.evenings") },
      evenings,
      { block: "heading", text: say("twoWaysPaper.how") },
      { block: "list", mark: "dot", items: view.notes },
      { block: "caution", lines: [handout.speaker.say("caution.local")] },
    ],
    sources: [],
    items,
  };
}
