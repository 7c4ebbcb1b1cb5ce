import { sayer } from "@keepwright/handout";
import {
  kitOptions,
  PaperError,
  type SetPages,
  setDocument,
  setLabels,
  setSheet,
  type Typesetter,
} from "@keepwright/paper/browser";
import { beginTypesetter, UnreachableError } from "./beginTypesetter.js";
import type { PaperAnswer, PaperAsked, PaperQuestion } from "./paperMessages.js";

/** Begun when something is first to be set, and again where that failed. */
let typesetter: Promise<Typesetter> | undefined;

function begun(files: PaperQuestion["files"]): Promise<Typesetter> {
  typesetter ??= beginTypesetter(files).catch((error: unknown) => {
    typesetter = undefined;
    throw error;
  });
  return typesetter;
}

function setPages(own: Typesetter, asked: PaperAsked): SetPages {
  switch (asked.sort) {
    case "sheet": {
      const { view, foot } = asked;
      const say = sayer<{ foot: "{page} {pages}" }>(view.language, { foot });
      const pageWords = (page: number, pages: number) => say("foot", { page, pages });
      return setSheet(own, view, { ...asked, pageWords });
    }
    case "labels":
      return setLabels(own, asked.rows, asked);
    case "document":
      return setDocument(own, asked.document, kitOptions(asked.kit));
  }
}

function answerFor(number: number, error: unknown): PaperAnswer {
  if (error instanceof UnreachableError) return { number, kind: "unreachable" };
  if (error instanceof PaperError && error.characters.length > 0)
    return { number, kind: "unprintable", characters: error.characters };
  return { number, kind: "wrong", message: error instanceof Error ? error.message : String(error) };
}

/** Sets pages as PDF: the very ones that the command line writes. */
addEventListener("message", async ({ data }: MessageEvent<PaperQuestion>) => {
  const { number, asked, files } = data;
  try {
    const { bytes, pages } = setPages(await begun(files), asked);
    const answer: PaperAnswer = { number, kind: "set", bytes: new Uint8Array(bytes), pages };
    postMessage(answer);
  } catch (error) {
    postMessage(answerFor(number, error));
  }
});
