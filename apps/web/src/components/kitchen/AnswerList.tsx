import { type KitchenAnswers, type KitchenQuestion, kitchenQuestions } from "@keepwright/planner";
import { addressOf } from "../../state/route.js";
import { chosenOf, isChoice, optionsOf } from "./choices.js";
import { type KitchenSay, useKitchenWords } from "./kitchenWords.js";

/** Every question with what was answered, each a way straight to it. */
export function AnswerList({ answers }: { readonly answers: KitchenAnswers }) {
  const say = useKitchenWords();
  return (
    <section aria-labelledby="answers-heading">
      <h3 id="answers-heading">{say("own.answers")}</h3>
      <ul className="answers">
        {kitchenQuestions.map((question) => {
          const answer = answerWords(say, question, answers);
          return (
            <li key={question}>
              <a
                href={addressOf("kitchen", question)}
                aria-label={say("own.answerNamed", { question: say(`ask.${question}`), answer })}
              >
                <span>{say(`ask.${question}`)}</span> <strong>{answer}</strong>
              </a>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** An answer in few words; a reading as it was typed. */
export function answerWords(say: KitchenSay, question: KitchenQuestion, answers: KitchenAnswers): string {
  if (question === "wraps") return wrapWords(say, answers.wraps);
  if (question === "cellar") return cellarWords(say, answers);
  if (!isChoice(question)) return "";
  const chosen = chosenOf(question, answers);
  if (question === "refrigerator" && chosen === "litres")
    return say("answer.litres", { typed: answers.litres?.trim() || "…" });
  if (chosen === "reading") return readingWords(say, question, answers);
  return (
    optionsOf(say, question).find(({ value }) => value === chosen && value !== "unknown")?.words ??
    say("answer.unknown")
  );
}

function wrapWords(say: KitchenSay, wraps: KitchenAnswers["wraps"]): string {
  if (!wraps) return say("answer.unknown");
  return wraps.length === 0 ? say("option.wraps.none") : say("wraps.count", { count: wraps.length });
}

function readingWords(say: KitchenSay, question: KitchenQuestion, answers: KitchenAnswers): string {
  if (question === "air") return say("answer.reading", { typed: answers.airReading || "…", unit: "%" });
  const reading = question === "cold" ? answers.coldReading : answers.roomReading;
  return say("answer.reading", { typed: reading?.typed || "…", unit: reading?.unit ?? "" });
}

function cellarWords(say: KitchenSay, { cellar, balcony }: KitchenAnswers): string {
  if (cellar === undefined && balcony === undefined) return say("answer.unknown");
  const places = [
    ...(cellar ? [say("option.cellar.cellar")] : []),
    ...(balcony ? [say("option.cellar.balcony")] : []),
  ];
  return places.length === 0 ? say("option.cellar.neither") : places.join("; ");
}
