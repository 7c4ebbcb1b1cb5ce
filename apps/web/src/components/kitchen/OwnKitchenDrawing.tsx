import {
  type HandoutContext,
  humidityWords,
  kitchenWords,
  roomWords,
  temperatureWords,
} from "@keepwright/handout";
import type { Kitchen, Plan } from "@keepwright/planner";
import { boxOf, unitsPerLitre } from "../../drawing/kitchenScale.js";
import { useKitchenWords } from "./kitchenWords.js";

type Place = Kitchen["places"][number];

interface OwnKitchenDrawingProps {
  readonly kitchen: Kitchen;
  readonly context: HandoutContext;
  /** Places of a plan made for this kitchen: only they tell how damp each place gets. */
  readonly planned: Plan["places"] | undefined;
}

/** The kitchen drawn from its own litres, every place to one scale, with how cold and damp it is and whether it has a slide. */
export function OwnKitchenDrawing({ kitchen, context, planned }: OwnKitchenDrawingProps) {
  const say = useKitchenWords();
  const { speaker, units } = context;
  const drawn = kitchen.places.map((place) => ({ placeKind: place.kind, litres: place.litres }));
  const perLitre = unitsPerLitre(drawn);
  const inside = kitchen.places.filter((place) => place.refrigerator !== undefined);
  const outside = kitchen.places.filter((place) => place.refrigerator === undefined);
  const place = (each: Place) => (
    <DrawnPlace key={each.id} place={each} perLitre={perLitre} context={context} planned={planned} />
  );
  return (
    <section className="where" aria-labelledby="drawn-heading">
      <h3 id="drawn-heading">{say("own.drawing")}</h3>
      <p className="soft">
        {say("drawn.room", {
          temperature: temperatureWords(speaker, units, kitchen.room.temperature),
          humidity: humidityWords(speaker, kitchen.room.relativeHumidity),
        })}
      </p>
      <div className="kitchen-drawing own-drawing">
        {inside.length > 0 && (
          <div className="group refrigerator">
            <h4>{say("drawn.refrigerator")}</h4>
            <ul className="drawn-places">{inside.map(place)}</ul>
          </div>
        )}
        {outside.length > 0 && (
          <div className="group room">
            <h4>{say("drawn.outside")}</h4>
            <ul className="drawn-places">{outside.map(place)}</ul>
          </div>
        )}
      </div>
    </section>
  );
}

interface DrawnPlaceProps extends Pick<OwnKitchenDrawingProps, "context" | "planned"> {
  readonly place: Place;
  readonly perLitre: number;
}

const rim = 2;

function DrawnPlace({ place, perLitre, context, planned }: DrawnPlaceProps) {
  const say = useKitchenWords();
  const { speaker, units } = context;
  const { width, height } = boxOf({ placeKind: place.kind, litres: place.litres }, perLitre);
  const damp = planned?.find((each) => each.place === place.id)?.relativeHumidity;
  const drawer = place.kind === "crisper drawer";
  return (
    <li>
      <p>
        <strong>{kitchenWords(context, place.name)}</strong>{" "}
        <span className="soft">
          {temperatureWords(speaker, units, place.temperature)}, {roomWords(speaker, units, place.litres)}
        </span>
      </p>
      <svg
        className="drawing"
        viewBox={`${-rim} ${-rim} ${width + 2 * rim} ${height + 2 * rim}`}
        style={{ width: `calc(${width + 2 * rim} * var(--unit))` }}
        aria-hidden="true"
      >
        <rect width={width} height={height} className="inside" />
        {place.vent && (
          <path className="rim slide" d={`M${width / 2 - 22} 8H${width / 2 + 22}M${width / 2 - 6} 3V13`} />
        )}
        <rect width={width} height={height} className="rim" />
      </svg>
      <p className="soft">
        {damp === undefined
          ? say("drawn.humidityLater")
          : say("drawn.humidity", { humidity: humidityWords(speaker, damp) })}
        {drawer && <span className="below">{say(place.vent ? "drawn.vent" : "drawn.noVent")}</span>}
      </p>
    </li>
  );
}
