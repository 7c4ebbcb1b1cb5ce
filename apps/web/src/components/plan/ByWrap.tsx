import type { PlaceEntry } from "@keepwright/handout";
import { useWords } from "../../words/words.js";
import { Swatch } from "../Swatch.js";
import type { Marks } from "./marks.js";

interface ByWrapProps {
  readonly entries: readonly PlaceEntry[];
  readonly marks: Marks;
}

/** What goes into a place: what is around it told once, then the things that it is around in a row. */
export function ByWrap({ entries, marks }: ByWrapProps) {
  const say = useWords();
  const wraps = [...new Set(entries.map(({ wrap }) => wrap))];
  return wraps.map((each) => (
    <span key={each} className="put">
      <span className="put-wrap">{say("now.wrapped", { wrap: each })}</span>{" "}
      {entries
        .filter(({ wrap }) => wrap === each)
        .map(({ lot, name, amount }) => (
          <span key={lot} className="put-thing">
            <Swatch {...marks(lot)} /> {name}, {amount}
          </span>
        ))}
    </span>
  ));
}
