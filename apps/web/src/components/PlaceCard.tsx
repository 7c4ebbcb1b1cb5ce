import type { PlaceView } from "@keepwright/handout";
import type { Plan } from "@keepwright/planner";
import { PlaceDrawing } from "./PlaceDrawing.js";
import { Swatch, swatchCount } from "./Swatch.js";

interface PlaceCardProps {
  readonly place: PlaceView;
  readonly plan: Plan;
  /** Litres of the largest place: all drawings share one scale. */
  readonly largest: number;
}

/** One place: its drawing to scale, its setting, and what goes in, each with the pattern it has in the drawing. */
export function PlaceCard({ place, plan, largest }: PlaceCardProps) {
  const litresOf = (id: string) => plan.lots.find((lot) => lot.id === id)?.litres ?? 0;
  const total = plan.places.find((each) => each.place === place.place)?.litres ?? 1;
  const blocks = place.entries.map((entry, index) => ({
    litres: litresOf(entry.lot),
    pattern: index % swatchCount,
  }));
  return (
    <article className="place" aria-labelledby={`place-${place.place}`}>
      <PlaceDrawing litres={total} largest={largest} blocks={blocks} words={`${place.name}: ${place.room}`} />
      <div className="place-words">
        <h4 id={`place-${place.place}`}>{place.name}</h4>
        <p className="place-air">{place.air}</p>
        <p className="place-room">{place.room}</p>
        {place.setting && <p className="setting">{place.setting}</p>}
        {place.entries.length === 0 ? (
          <p className="nothing">Nothing now.</p>
        ) : (
          <ul className="entries">
            {place.entries.map((entry, index) => (
              <li key={entry.lot}>
                <Swatch pattern={index % swatchCount} />
                <span>
                  <strong>{entry.name}</strong>, {entry.amount}
                  <span className="entry-wrap">{entry.wrap}</span>
                </span>
              </li>
            ))}
          </ul>
        )}
        {place.later.length > 0 && (
          <>
            <p className="later">Later:</p>
            <ul className="entries">
              {place.later.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </>
        )}
      </div>
    </article>
  );
}
