import type { PlaceView } from "@keepwright/handout";
import { type ReactNode, useContext, useMemo } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { useCarried } from "../../behaviour/useCarrying.js";
import type { Box } from "../../drawing/kitchenScale.js";
import { isDone, type NowTask } from "../../state/nowTasks.js";
import { whyAddress } from "../../state/route.js";
import { useWords } from "../../words/words.js";
import { Swatch } from "../Swatch.js";
import { ByWrap } from "./ByWrap.js";
import { FoldedPlaces, isFolded } from "./foldedPlaces.js";
import { MoveButton } from "./MoveButton.js";
import { type DrawnLot, PlaceDrawing } from "./PlaceDrawing.js";

interface PlaceCardProps {
  readonly place: PlaceView;
  readonly box: Box;
  readonly perLitre: number;
  readonly drawn: ReadonlyMap<string, Omit<DrawnLot, "name">>;
  readonly sort: string;
}

/** One place: its drawing to scale, its setting, and what goes in, each with the letter and pattern of the drawing. */
export function PlaceCard({ place, box, perLitre, drawn, sort }: PlaceCardProps) {
  const say = useWords();
  const lots = place.entries.flatMap(({ lot, name }) => {
    const found = drawn.get(lot);
    return found ? [{ ...found, name }] : [];
  });
  const over = useCarried()?.carried?.over === place.place;
  const folded = useContext(FoldedPlaces);
  const toPutAway = folded?.find(({ keys: [key] }) => key?.startsWith(`in|${place.place}|`));
  const used = place.entries.length > 0 || place.later.length > 0;
  return (
    <article
      className={`place place-${sort}${over ? " drop-here" : ""}${folded ? " folded-place" : ""}${place.entries.length === 0 ? " empty" : ""}`}
      aria-labelledby={`place-${place.place}`}
      data-place={place.place}
    >
      {toPutAway && <PutAway task={toPutAway} />}
      <h5 id={`place-${place.place}`}>{place.name}</h5>
      <p className="place-air">
        {place.air}; {place.room}
      </p>
      {used && place.setting && <p className="setting">{place.setting}</p>}
      <div className="place-inside">
        <PlaceDrawing
          box={box}
          perLitre={perLitre}
          lots={lots}
          words={say("place.picture", { place: place.name, room: place.room })}
        />
        <PlaceWords place={place} lots={lots} />
      </div>
    </article>
  );
}

/** What is put there told once, by what is around it; why each lies there, and moving it, one touch away. */
function Folded({ place, lots, children }: PlaceLots & { readonly children: ReactNode }) {
  const say = useWords();
  const marks = useMemo(() => new Map(lots.map((each) => [each.lot, each])), [lots]);
  return (
    <>
      <ByWrap entries={place.entries} marks={(lot) => marks.get(lot) ?? { index: 0, letter: "" }} />
      <details className="fold">
        <summary>{say("place.fold")}</summary>
        {children}
      </details>
    </>
  );
}

/** The tick for a place, where it is drawn. */
function PutAway({ task }: { readonly task: NowTask }) {
  const say = useWords();
  const { haul } = useDesk();
  const done = isDone(task, new Set(haul.state.done));
  return (
    <label className="put-here">
      <input
        type="checkbox"
        checked={done}
        aria-label={say("now.putAway", { place: task.what })}
        onChange={({ target }) => haul.change({ change: "done", tasks: task.keys, done: target.checked })}
      />
      <span aria-hidden="true">{say("now.putHere")}</span>
    </label>
  );
}

type PlaceLots = Pick<PlaceCardProps, "place"> & { readonly lots: readonly DrawnLot[] };

function Entries({ place, lots }: PlaceLots) {
  return (
    <ul className="entries">
      {place.entries.map((entry, index) => (
        <li key={entry.lot}>
          <Swatch index={lots[index]?.index ?? index} letter={lots[index]?.letter ?? ""} />
          <a className="lot-link" href={whyAddress(entry.lot)}>
            <strong>{entry.name}</strong>, {entry.amount}
            <span className="soft below">{entry.wrap}</span>
          </a>
          <MoveButton part={entry.lot} name={entry.name} />
        </li>
      ))}
    </ul>
  );
}

function PlaceWords({ place, lots }: PlaceLots) {
  const say = useWords();
  const folded = useContext(FoldedPlaces);
  const entries = <Entries place={place} lots={lots} />;
  const many = folded !== undefined && place.entries.length > 0 && isFolded(place.entries.length);
  return (
    <div className="place-words">
      {place.entries.length === 0 && <p className="soft">{say("place.nothing")}</p>}
      {place.entries.length > 0 &&
        (many ? (
          <Folded place={place} lots={lots}>
            {entries}
          </Folded>
        ) : (
          entries
        ))}
      {place.later.length > 0 && !folded && (
        <>
          <p className="later">{say("place.later")}</p>
          <ul className="entries">
            {place.later.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
