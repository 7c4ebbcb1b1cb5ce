import { type Message, sayer } from "@keepwright/handout";
import { useMemo } from "react";
import { useDesk } from "../behaviour/desk.js";
import { paperEnglish } from "./english/paper.js";
import { paperSpanish } from "./spanish/paper.js";

/** The words of what is printed and taken along, which come when somebody asks for it: a message for every key of the English ones. */
export type PaperWords = { readonly [key in keyof typeof paperEnglish]: Message };

const languages = { en: paperEnglish, es: paperSpanish } as const;

const paperSayer = (tag: string, messages: PaperWords) => sayer<typeof paperEnglish>(tag, messages);
export type SayPaper = ReturnType<typeof paperSayer>;

/** The words of printing in the language the page is shown in. */
export function usePaperWords(): SayPaper {
  const { language, tag } = useDesk();
  return useMemo(() => paperSayer(tag, languages[language]), [language, tag]);
}
