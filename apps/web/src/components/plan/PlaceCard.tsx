import type { PlaceView } from "@keepwright/handout";
import { useCarried } from "../../behaviour/useCarrying.js";
import type { Box } from "../../drawing/kitchenScale.js";
import { whyAddress } from "../../state/route.js";
import { useWords } from "../../words/words.js";
import { Swatch } from "../Swatch.js";
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
  const used = place.entries.length > 0 || place.later.length > 0;
  return (
    <article
      className={`place place-${sort}${over ? " drop-here" : ""}`}
      aria-labelledby={`place-${place.place}`}
      data-place={place.place}
    >
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

function PlaceWords({ place, lots }: Pick<PlaceCardProps, "place"> & { readonly lots: readonly DrawnLot[] }) {
  const say = useWords();
  return (
    <div className="place-words">
      {place.entries.length === 0 && <p className="soft">{say("place.nothing")}</p>}
      {place.entries.length > 0 && (
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
      )}
      {place.later.length > 0 && (
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
