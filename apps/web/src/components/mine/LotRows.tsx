import type { WrapId } from "@keepwright/catalogue";
import { amountWords, type HandoutContext } from "@keepwright/handout";
import { wrapIds } from "@keepwright/planner";
import type { Lying, PlannerChange } from "../../state/plannerState.js";
import { useWords } from "../../words/words.js";
import { Swatch } from "../Swatch.js";
import type { LaidLot, Mine } from "./useMine.js";

interface LotRowsProps {
  readonly mine: Mine;
  readonly context: HandoutContext;
  readonly onChange: (change: PlannerChange) => void;
}

/** Every thing with a list of places and one of wraps: the same as touching the drawing, thing by thing. */
export function LotRows({ mine, ...rest }: LotRowsProps) {
  const say = useWords();
  return (
    <>
      <p className="soft">{say("mine.lists.letters")}</p>
      <ul className="lot-rows">
        {mine.lots.map((lot, index) => (
          <li key={lot.key}>
            <LotRow lot={lot} index={index} mine={mine} {...rest} />
          </li>
        ))}
      </ul>
    </>
  );
}

/** Values of the list of places that are no places; ids of places never begin with a space. */
const unsaid = " unsaid";
const planned = " planned";

const choiceOf = (said: Lying | undefined): string =>
  said === undefined ? unsaid : said === "as planned" ? planned : said.place;

function lyingFrom(value: string, before: Lying | undefined): Lying | undefined {
  if (value === unsaid) return undefined;
  if (value === planned) return "as planned";
  const wrap = before === undefined || before === "as planned" ? "none" : before.wrap;
  return { place: value, wrap };
}

function LotRow({
  lot,
  index,
  mine,
  context,
  onChange,
}: LotRowsProps & { readonly lot: LaidLot; readonly index: number }) {
  const say = useWords();
  const { key, name, letter, said } = lot;
  const lies = (at: Lying | undefined) => onChange({ change: "lying", key, at });
  const somewhere = said === undefined || said === "as planned" ? undefined : said;
  return (
    <div className="lot-row">
      <p>
        <Swatch index={index} letter={letter} /> <strong>{name}</strong>{" "}
        <span className="soft">{amountWords(context, lot.lot.grams, lot.lot.pieces)}</span>
      </p>
      <select
        aria-label={say("mine.row.place", { name })}
        value={choiceOf(said)}
        onChange={(event) => lies(lyingFrom(event.target.value, said))}
      >
        <option value={unsaid}>{say("mine.place.unsaid")}</option>
        <option value={planned}>{say("mine.place.planned")}</option>
        {[...mine.places].map(([id, place]) => (
          <option key={id} value={id}>
            {place}
          </option>
        ))}
      </select>
      {somewhere && (
        <select
          aria-label={say("mine.row.wrap", { name })}
          value={somewhere.wrap}
          onChange={(event) => lies({ ...somewhere, wrap: event.target.value as WrapId })}
        >
          {wrapIds.map((id) => (
            <option key={id} value={id}>
              {context.speaker.say(`wrap.${id}`)}
            </option>
          ))}
        </select>
      )}
    </div>
  );
}
