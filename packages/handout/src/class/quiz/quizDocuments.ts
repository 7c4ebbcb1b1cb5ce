import { plainText } from "../../words/plainText.js";
import type { ClassContext } from "../classContext.js";
import type { Block, ClassDocument } from "../classKit.js";
import { kitSources } from "../kitSources.js";
import { choiceLetters, type Question } from "./question.js";

const itemsOf = ({ items }: ClassContext, questions: readonly Question[]): string[] => {
  const about = new Set(
    questions.flatMap(({ subject, choices }) => [subject, ...choices.map(({ key }) => key)]),
  );
  return items.filter((id) => about.has(id));
};

const choiceBlock = ({ question, choices }: Question, index: number): Block => ({
  block: "choice",
  number: index + 1,
  question,
  choices: choices.map(({ text }) => text),
});

/** A question with its answer: told in words, since an arrow and bold letters say nothing to whoever hears them. */
const answeredBlock = ({ say }: ClassContext, asked: Question, index: number): Block => ({
  ...(choiceBlock(asked, index) as Extract<Block, { block: "choice" }>),
  answer: asked.answer,
  right: say("quiz.right", {
    letter: choiceLetters[asked.answer] ?? "",
    choice: asked.choices[asked.answer]?.text ?? "",
  }),
  why: asked.why,
});

/** Sources of questions, each told by the number of its question. */
const sourcesOf = (context: ClassContext, questions: readonly Question[]) =>
  kitSources(
    context,
    questions.flatMap(({ evidence }, index) =>
      evidence.map(({ source, place, kind, fromMemory }) => ({
        figure: context.say("quiz.figure", { number: index + 1 }),
        source,
        citation: plainText(context.catalogue.sources.get(source)?.citation ?? source),
        place,
        kind,
        fromMemory,
      })),
    ),
  );

/** The questions for the group, and the same with answers for the host. */
export function quizDocuments(context: ClassContext, questions: readonly Question[]): ClassDocument[] {
  const { say, handout } = context;
  const items = itemsOf(context, questions);
  // First: at the end it might stand alone on a page.
  const care: Block = { block: "caution", lines: [handout.speaker.say("caution.local")] };
  return [
    {
      id: "quiz",
      sort: "quiz",
      reader: "group",
      title: say("quiz.title"),
      subtitle: say("quiz.subtitle"),
      blocks: [care, ...questions.map(choiceBlock)],
      sources: [],
      items,
    },
    {
      id: "quiz-answers",
      sort: "quiz answers",
      reader: "host",
      title: say("quiz.answers"),
      subtitle: say("kit.host"),
      blocks: [
        { block: "text", text: say("answer.range") },
        care,
        ...questions.map((question, index) => answeredBlock(context, question, index)),
      ],
      sources: sourcesOf(context, questions),
      items,
    },
  ];
}
