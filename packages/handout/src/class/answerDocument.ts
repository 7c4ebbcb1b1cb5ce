import { askedNamedSources } from "../view/askedSources.js";
import { askNames, askView } from "../view/askView.js";
import { kitchenWords } from "../view/ordinaryNames.js";
import type { ClassContext } from "./classContext.js";
import type { Block, ClassDocument } from "./classKit.js";
import { kitSources } from "./kitSources.js";

/** The answer sheet of one kind: the very answer that is given to whoever asks about it. */
export function answerDocument(context: ClassContext, id: string): ClassDocument {
  const { handout, say, catalogue, guidance } = context;
  const view = askView(handout, context.answer(id), guidance.get(id));
  const { title, alsoCalled } = askNames(handout, id);
  const first: Block[] =
    view.first.length > 0
      ? [
          { block: "heading", text: say("answer.first") },
          { block: "list", mark: "tick", items: view.first },
        ]
      : [];
  const sections = view.sections.flatMap(({ part, heading, lines }): Block[] => [
    { block: "heading", text: heading },
    part === "cautions" ? { block: "caution", lines } : { block: "list", mark: "dot", items: lines },
  ]);
  return {
    id: `answer-${id}`,
    sort: "answer",
    reader: "group",
    title,
    subtitle: alsoCalled,
    blocks: [
      {
        block: "pairs",
        rows: [
          { name: say("answer.where"), text: view.where },
          { name: say("answer.how"), text: view.how },
          { name: say("answer.until"), text: view.until },
        ],
      },
      { block: "list", mark: "dot", items: [...view.ends, say("answer.range")] },
      ...first,
      ...sections,
      ...(view.note === undefined ? [] : [{ block: "text" as const, text: view.note }]),
      {
        block: "text",
        text: say("answer.kitchen", { kitchen: kitchenWords(handout, context.kitchen.name) }),
      },
    ],
    sources: kitSources(context, askedNamedSources(handout, catalogue, id, guidance.get(id))),
    items: [id],
  };
}
