import { type ReactNode, type RefObject, useId } from "react";
import { useWords } from "../words/words.js";
import { AddByName } from "./unpack/AddByName.js";

interface HaulBoxProps {
  readonly text: string;
  readonly onChange: (text: string) => void;
  readonly box: RefObject<HTMLTextAreaElement | null>;
  readonly children: ReactNode;
}

/** As tall as the text, within reason: what is longer is scrolled, so that the lines understood stay near. */
const fewestRows = 3;
const mostRows = 8;

/** Where the haul is typed, pasted or spoken. A plain text area: Tab leaves it, as everywhere else on the web. */
export function HaulBox({ text, onChange, box, children }: HaulBoxProps) {
  const say = useWords();
  const id = useId();
  const rows = Math.min(mostRows, Math.max(fewestRows, text.split("\n", mostRows).length));
  return (
    <section className="haul-box" aria-labelledby={`${id}-heading`}>
      <h2 id={`${id}-heading`}>{say("haul.heading")}</h2>
      <label htmlFor={id}>{say("haul.label")}</label>
      <textarea
        id={id}
        ref={box}
        value={text}
        rows={rows}
        spellCheck={false}
        autoCapitalize="none"
        placeholder={say("haul.placeholder")}
        onChange={(event) => onChange(event.target.value)}
      />
      <AddByName />
      {children}
    </section>
  );
}
