import { type ReactNode, type RefObject, useId, useRef } from "react";
import { type Desk, useDesk } from "../behaviour/desk.js";
import { useCaret } from "../behaviour/useCaret.js";
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
  // Whoever touches the untouched example to write would else write into the midst of it. A second touch sets the caret as everywhere.
  const came = useRef(false);
  const caret = useCaret(box, text);
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
      onPointerDown={({ currentTarget }) => {
        came.current = document.activeElement !== currentTarget;
      }}
      onClick={({ currentTarget }) => haul.example && came.current && currentTarget.select()}
      onSelect={caret.remember}
      onChange={(event) => {
        caret.remember(event);
        haul.change({ change: "text", text: event.target.value });
      }}
    />
  );
}
