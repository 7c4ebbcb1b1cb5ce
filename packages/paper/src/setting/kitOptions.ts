import { type ClassRequest, classSayer } from "@keepwright/handout";
import type { DocumentOptions } from "./setDocument.js";

/** What a class kit says of itself, for the pages that are set of it. */
export interface KitPages {
  readonly audience: Pick<ClassRequest["audience"], "language" | "paper" | "print">;
  /** Title of the kit. */
  readonly title: string;
  /** BCP 47 tag. */
  readonly language: string;
}

/** How the documents of a kit are set, with the words around them. */
export function kitOptions({ audience, title, language }: KitPages): DocumentOptions {
  const say = classSayer(audience.language, language);
  return {
    paper: audience.paper,
    print: audience.print,
    language,
    sourcesHeading: say("kit.sources"),
    kit: say("kit.foot", { title }),
    pageWords: (page, pages) => say("kit.page", { page, pages }),
  };
}
