import { figureCatalogue } from "@keepwright/catalogue";
import { askedAnswer } from "@keepwright/handout";
import type { AskAnswer, AskRequest, KindAsked } from "./askMessages.js";
import { whatFailed } from "./whatFailed.js";

/** Answers a question about one kind; what goes wrong is said, never thrown. */
export function answerAsk({ asked }: AskRequest): AskAnswer {
  try {
    const { id, kitchen, ...state } = JSON.parse(asked) as KindAsked;
    return { asked, kind: "asked", answer: askedAnswer(figureCatalogue(), id, kitchen, state) };
  } catch (error) {
    return { asked, kind: "problem", ...whatFailed(error) };
  }
}
