import { catalogue } from "@keepwright/catalogue";
import { makeKit } from "@keepwright/handout";
import { InputError } from "@keepwright/planner";
import type { ClassAnswer, ClassAsked } from "./classMessages.js";

const answer = (given: ClassAnswer) => postMessage(given);

/** Makes the pages of a class: the very ones that the command line prints. A script of its own, since it holds every source and both languages. */
addEventListener("message", ({ data }: MessageEvent<ClassAsked>) => {
  try {
    const { title, language, documents, items, taken } = makeKit(data, catalogue());
    const chosen = data.season ? items.map(({ name }) => name) : [];
    const { audience } = data;
    answer({ kind: "pages", title, language, audience, chosen, taken, pages: documents });
  } catch (error) {
    const message =
      error instanceof InputError
        ? error.findings.map(({ value, remedy }) => `${value}. ${remedy}`).join(" ")
        : String(error);
    answer({ kind: "wrong", message });
  }
});
