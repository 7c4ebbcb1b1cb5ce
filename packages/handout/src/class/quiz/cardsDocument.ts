import { askView } from "../../view/askView.js";
import type { ClassContext } from "../classContext.js";
import type { CardFace, ClassDocument } from "../classKit.js";
import type { Question } from "./question.js";

/** A card for one kind: what is asked outside, what the answer sheet says inside. */
function itemCard(context: ClassContext, id: string): { front: CardFace; back: CardFace } {
  const { say } = context;
  const view = askView(context.handout, context.answer(id), undefined);
  const [apart] = view.sections.find(({ part }) => part === "apart")?.lines ?? [];
  return {
    front: { title: context.title(id), lines: [say("cards.ask")] },
    back: {
      title: view.where,
      lines: [
        say("cards.how", { how: view.how }),
        say("cards.until", { until: view.until }),
        ...(apart === undefined ? [] : [say("cards.apart", { apart })]),
      ],
    },
  };
}

const questionCard = (context: ClassContext, { question, choices, answer, why }: Question) => ({
  front: { title: question, lines: choices.map(({ text }) => context.say("cards.choice", { text })) },
  back: { title: choices[answer]?.text ?? "", lines: [why] },
});

/** Cards to cut out and fold: one for each kind, and more questions. */
export function cardsDocument(context: ClassContext, questions: readonly Question[]): ClassDocument {
  const { say, handout, items } = context;
  return {
    id: "cards",
    sort: "cards",
    reader: "group",
    title: say("cards.title"),
    subtitle: say("cards.subtitle"),
    // Cautions first: at the end they might stand alone on a page.
    blocks: [
      { block: "caution", lines: [say("answer.range"), handout.speaker.say("caution.local")] },
      {
        block: "cards",
        cards: [
          ...items.map((id) => itemCard(context, id)),
          ...questions.map((question) => questionCard(context, question)),
        ],
      },
    ],
    sources: [],
    items,
  };
}
