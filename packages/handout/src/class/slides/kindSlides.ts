import { commodityOf, type Evidence } from "@keepwright/catalogue";
import { askView } from "../../view/askView.js";
import { effectWords } from "../../view/itemView.js";
import type { ClassContext } from "../classContext.js";
import type { ClassDocument, KitSource } from "../classKit.js";
import { kitSources, namedEvidence } from "../kitSources.js";
import type { DeckSlide } from "./deck.js";
import { type Lives, livesChart } from "./livesChart.js";

/** Where the reasons against other places come from: the answer sheet does not name these. */
function reasonSources(context: ClassContext, id: string, rests: Lives["rests"] | undefined): KitSource[] {
  const { say, catalogue } = context;
  const { eatingEffects = [], dryOutOfRefrigerator } = commodityOf(catalogue, id);
  const named = (figure: string, all: readonly (Evidence | undefined)[]) =>
    all.flatMap((one) => (one ? [namedEvidence(context, figure, one)] : []));
  const sources = [
    ...(rests?.onEffects ? named(say("slides.figure.effects"), eatingEffects) : []),
    ...(rests?.onDamp ? named(say("slides.figure.damp"), [dryOutOfRefrigerator]) : []),
  ];
  return kitSources(context, sources);
}

/** A star stays with the word before it. */
const starred = (line: string): string => line.replace(/ \*$/u, "\u{a0}*");

/** One kind on one slide: where, how, until when and why, with its lives in other places beside it; the rest is in the notes. */
export function kindSlide(context: ClassContext, printed: ClassDocument): DeckSlide {
  const { handout, say, guidance } = context;
  const id = printed.items[0]!;
  const answer = context.answer(id);
  const view = askView(handout, answer, guidance.get(id));
  const lives = livesChart(context, id, view.where);
  const price = effectWords(handout, answer.belongs);
  const why = [
    ...view.ends,
    ...(price ? [handout.speaker.say("item.belongsSpoilt", { effects: price })] : []),
  ];
  const reasons = lives?.reasons ?? [];
  const ownSources = reasonSources(context, id, lives?.rests);
  return {
    id: printed.id,
    sort: "plain",
    title: printed.title,
    parts: [
      {
        part: "pairs",
        rows: [
          { name: say("answer.where"), text: view.where },
          { name: say("answer.how"), text: view.how },
          { name: say("answer.until"), text: view.until },
          { name: say("slides.why"), text: why.join(" ") },
          ...(reasons.length > 0 ? [{ name: say("slides.elsewhere"), text: reasons.join("\n") }] : []),
          ...(view.first.length > 0
            ? [{ name: say("answer.first"), text: view.first.map(starred).join("\n") }]
            : []),
        ],
      },
    ],
    chart: lives?.chart,
    notes: [
      say("slides.kind.notes"),
      say("answer.range"),
      ...view.sections.flatMap(({ heading, lines }) => [heading, ...lines]),
    ],
    // Stars stand at what is common practice.
    remarks: view.note === undefined ? [] : [view.note],
    sources: [...printed.sources, ...ownSources].map(({ text }) => text),
    ownSources,
  };
}
