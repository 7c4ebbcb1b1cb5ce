import { type ReactNode, type RefObject, useId } from "react";
import { type Desk, useDesk } from "../behaviour/desk.js";
import { useTyped } from "../behaviour/useHaul.js";
import { useWords } from "../words/words.js";
import { AddByName } from "./unpack/AddByName.js";

interface HaulBoxProps {
  readonly box: RefObject<HTMLTextAreaElement | null>;
  readonly children: ReactNode;
}

/** As tall as the text, within reason: what is longer is scrolled, so that the lines understood stay near. */
const fewestRows = 3;
const mostRows = 8;

/** Where the haul is typed, pasted or spoken. A plain text area: Tab leaves it, as everywhere else on the web. */
export function HaulBox({ box, children }: HaulBoxProps) {
  const say = useWords();
  const { haul } = useDesk();
  const id = useId();
  return (
    <section className="haul-box" aria-labelledby={`${id}-heading`}>
      <h2 id={`${id}-heading`}>{say("haul.heading")}</h2>
      <label htmlFor={id}>{say("haul.label")}</label>
      <TypedText id={id} box={box} haul={haul} />
      <AddByName />
      {children}
    </section>
  );
}

interface TypedTextProps extends Pick<HaulBoxProps, "box"> {
  readonly id: string;
  readonly haul: Desk["haul"];
}

/** The box alone is drawn with every letter. */
function TypedText({ id, box, haul }: TypedTextProps) {
  const say = useWords();
  const text = useTyped(haul.keeper);
  const rows = Math.min(mostRows, Math.max(fewestRows, text.split("\n", mostRows).length));
  return (
    <textarea
      id={id}
      ref={box}
      value={text}
      rows={rows}
      spellCheck={false}
      autoCapitalize="none"
      placeholder={say("haul.placeholder")}
      onChange={(event) => haul.change({ change: "text", text: event.target.value })}
    />
  );
}
