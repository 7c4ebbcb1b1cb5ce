import { shortText } from "@keepwright/handout";
import { type RefObject, useEffect, useRef } from "react";
import type { Correction } from "../../state/corrections.js";
import { leftOutAlways, type WordMeant } from "../../state/meant.js";
import type { ReadLine } from "../../state/readLots.js";
import { isLeftOutByWord, rememberedWord } from "../../state/wordAsked.js";
import { useWords } from "../../words/words.js";
import type { LineChanges } from "../LotLine.js";

interface LineActs {
  /** For the element of the line. */
  readonly ref: RefObject<HTMLDivElement | null>;
  readonly correct: (correction: Correction) => void;
  readonly asRead: () => void;
}

/** What an answer to the line says of its word in every list; nothing where it is about this line alone. */
function meantBy({ item, lot }: ReadLine, correction: Correction): WordMeant | undefined {
  const word = rememberedWord(item);
  const isRight = Object.keys(correction).length === 0;
  const kind = isRight ? lot?.commodity : correction.commodity;
  const means = kind ?? (correction.leftOut && isLeftOutByWord(item) ? leftOutAlways : undefined);
  return word === undefined || means === undefined ? undefined : { word, means };
}

/** The word that is asked about again where the line is put back as read. */
const wordAgain = ({ item, correction, recalled }: ReadLine): string | undefined =>
  recalled !== undefined ||
  correction?.commodity !== undefined ||
  correction?.leftOut ||
  (correction && Object.keys(correction).length === 0)
    ? rememberedWord(item)
    : undefined;

/** What is done to a line, said aloud where its button goes with it; the focus then stays in the line. */
export function useLineActs(line: ReadLine, { onCorrect, onAsRead, onSaid }: LineChanges): LineActs {
  const say = useWords();
  const ref = useRef<HTMLDivElement>(null);
  const due = useRef(false);
  const { key, item } = line;
  useEffect(() => {
    if (!due.current) return;
    due.current = false;
    if (document.activeElement !== document.body) return;
    const buttons = ref.current?.querySelectorAll<HTMLElement>(".line-buttons button");
    // The last is the one to change the line; the one before it would take back at once what was just done.
    const stays = buttons?.[buttons.length - 1] ?? ref.current;
    stays?.focus({ preventScroll: true });
  }, [line]);
  const done = (words: "line.saidLeftOut" | "line.saidRight" | "line.saidAsRead") => {
    due.current = true;
    onSaid(say(words, { typed: shortText(item.typed) }));
  };
  return {
    ref,
    correct(correction) {
      if (correction.leftOut) done("line.saidLeftOut");
      else if (Object.keys(correction).length === 0) done("line.saidRight");
      onCorrect(key, correction, meantBy(line, correction));
    },
    asRead() {
      done("line.saidAsRead");
      onAsRead(key, wordAgain(line));
    },
  };
}
