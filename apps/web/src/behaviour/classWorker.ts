import { catalogue } from "@keepwright/catalogue";
import { ClassError, makeKit } from "@keepwright/handout";
import type { ClassAnswer, ClassAsked } from "./classMessages.js";

/** What is wrong with what was asked, in the language of the class; empty for anything else, which is for whoever mends the page. */
function wordsOf(error: unknown): string {
  if (error instanceof ClassError)
    return error.findings.map(({ value, remedy }) => `${value}. ${remedy}`).join(" ");
  console.error(error);
  return "";
}

const answer = (given: ClassAnswer) => postMessage(given);

/** Makes the pages of a class: the very ones that the command line prints. A script of its own, since it holds every source and both languages. */
addEventListener("message", ({ data }: MessageEvent<ClassAsked>) => {
  try {
    const { title, language, documents, items, taken } = makeKit(data, catalogue());
    const chosen = data.season ? items.map(({ name }) => name) : [];
    const { audience } = data;
    answer({ kind: "pages", title, language, audience, chosen, taken, pages: documents });
  } catch (error) {
    answer({ kind: "wrong", message: wordsOf(error) });
  }
});
