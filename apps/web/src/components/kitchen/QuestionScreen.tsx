import type { HandoutContext } from "@keepwright/handout";
import {
  describedKitchen,
  type KitchenAnswers,
  type KitchenQuestion,
  kitchenQuestions,
} from "@keepwright/planner";
import { useEffect, useId, useRef } from "react";
import type { OwnKitchen } from "../../state/plannerState.js";
import { addressOf } from "../../state/route.js";
import { AskCellar } from "./AskCellar.js";
import { AskWraps } from "./AskWraps.js";
import { ChoiceExtras } from "./ChoiceExtras.js";
import { choosing, chosenOf, isChoice, optionsOf } from "./choices.js";
import { Faults } from "./Faults.js";
import { useKitchenWords } from "./kitchenWords.js";
import { OptionCards } from "./OptionCards.js";
import { TakenFigures } from "./TakenFigures.js";

export interface AskProps {
  readonly answers: KitchenAnswers;
  readonly context: HandoutContext;
  readonly wrong: boolean;
  readonly wrongId: string;
  readonly onAnswer: (changes: KitchenAnswers) => void;
}

interface QuestionScreenProps {
  readonly question: KitchenQuestion;
  readonly own: OwnKitchen;
  readonly context: HandoutContext;
  readonly onAnswer: (changes: KitchenAnswers) => void;
}

/** One question: its answers as pictures, and the ways on. What is answered holds at once. */
export function QuestionScreen({ question, own, context, onAnswer }: QuestionScreenProps) {
  const say = useKitchenWords();
  const wrongId = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  const answers = own.answers ?? {};
  const faults = describedKitchen(answers, own.kitchen.name).faults.filter(
    (each) => each.question === question,
  );
  const number = kitchenQuestions.indexOf(question);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    scrollTo(0, 0);
  }, [question]);
  const ask: AskProps = { answers, context, wrong: faults.length > 0, wrongId, onAnswer };
  return (
    <section className="question-screen" aria-labelledby={`${wrongId}-heading`}>
      <p className="soft step">
        {own.kitchen.name} · {say("step.of", { number: number + 1, all: kitchenQuestions.length })}
      </p>
      <h2 id={`${wrongId}-heading`} ref={heading} tabIndex={-1}>
        {say(`ask.${question}`)}
      </h2>
      <Asked question={question} ask={ask} />
      <Faults id={wrongId} faults={faults} context={context} />
      <WaysOn number={number} />
      <TakenFigures question={question} context={context} />
    </section>
  );
}

function Asked({ question, ask }: { readonly question: KitchenQuestion; readonly ask: AskProps }) {
  const say = useKitchenWords();
  if (question === "wraps") return <AskWraps {...ask} />;
  if (question === "cellar") return <AskCellar {...ask} />;
  if (!isChoice(question)) return null;
  const { answers, onAnswer } = ask;
  return (
    <>
      <OptionCards
        key={question}
        legend={say(`ask.${question}`)}
        options={optionsOf(say, question)}
        chosen={[chosenOf(question, answers)]}
        onChoose={(value) => onAnswer(choosing(question, value, answers))}
      />
      <ChoiceExtras question={question} {...ask} />
    </>
  );
}

/** Back, on, and out: at the same place under every question. */
function WaysOn({ number }: { readonly number: number }) {
  const say = useKitchenWords();
  const before = kitchenQuestions[number - 1];
  const next = kitchenQuestions[number + 1];
  return (
    <nav
      className="ways-on"
      aria-label={say("step.of", { number: number + 1, all: kitchenQuestions.length })}
    >
      <a className="button" href={addressOf("kitchen", before)}>
        {say("step.back")}
      </a>
      {next && (
        <a className="button main-button" href={addressOf("kitchen", next)}>
          {say("step.next")}
        </a>
      )}
      <a className={next ? "button" : "button main-button"} href={addressOf("kitchen")}>
        {say("step.enough")}
      </a>
    </nav>
  );
}
