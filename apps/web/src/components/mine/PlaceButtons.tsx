import type { Place } from "@keepwright/planner";
import { boxOf, unitsPerLitre } from "../../drawing/kitchenScale.js";
import { packBlocks } from "../../drawing/packBlocks.js";
import { useWords } from "../../words/words.js";
import { patternFor } from "../Swatch.js";
import type { LaidLot, Mine } from "./useMine.js";

interface PlaceButtonsProps {
  readonly mine: Mine;
  /** The thing that a touch places. */
  readonly now: LaidLot;
  readonly onPut: (place: string) => void;
}

/** The kitchen as one stands before it: each refrigerator with its door beside it, and the room. Every place is a button. */
export function PlaceButtons({ mine, now, onPut }: PlaceButtonsProps) {
  const say = useWords();
  const { kitchen } = mine;
  const groups = [
    ...kitchen.refrigerators.map(({ id }, index) => ({
      id,
      name:
        kitchen.refrigerators.length === 1
          ? say("place.refrigerator")
          : say("place.refrigeratorNumbered", { number: index + 1 }),
      places: kitchen.places.filter(({ refrigerator }) => refrigerator === id),
    })),
    {
      id: "",
      name: say("place.room"),
      places: kitchen.places.filter(({ refrigerator }) => refrigerator === undefined),
    },
  ];
  return (
    <div className="touch-kitchen">
      {groups
        .filter(({ places }) => places.length > 0)
        .map(({ id, name, places }) => (
          <div key={id} className={id === "" ? "touch-group" : "touch-group touch-cold"}>
            <p className="touch-group-name">{name}</p>
            <div className="touch-places">
              {places.map((place) => (
                <PlaceButton key={place.id} place={place} mine={mine} now={now} onPut={onPut} />
              ))}
            </div>
          </div>
        ))}
    </div>
  );
}

/** Room for the rim of the box [drawing units]. */
const rim = 2;

function PlaceButton({ place, mine, now, onPut }: PlaceButtonsProps & { readonly place: Place }) {
  const say = useWords();
  const own = mine.plan.places.find((each) => each.place === place.id);
  const name = mine.places.get(place.id) ?? place.name;
  const inside = mine.lots.filter(({ at }) => at === place.id);
  const here = now.at === place.id;
  return (
    <button
      type="button"
      className={`touch-place touch-${place.kind.replaceAll(" ", "-")}`}
      aria-pressed={here}
      aria-label={say("mine.touch.put", { name: now.name, place: name })}
      onClick={() => onPut(place.id)}
    >
      <span className="touch-name">{name}</span>
      {own && <Contents lots={inside} place={own} mine={mine} />}
    </button>
  );
}

interface ContentsProps {
  readonly lots: readonly LaidLot[];
  readonly place: Mine["plan"]["places"][number];
  readonly mine: Mine;
}

/** What lies in a place, to the scale of the kitchen, each with its letter. */
function Contents({ lots, place, mine }: ContentsProps) {
  const perLitre = unitsPerLitre(mine.plan.places);
  const box = boxOf(place, perLitre);
  const blocks = packBlocks(
    lots.map(({ litres }) => litres),
    box,
    perLitre,
  );
  const order = mine.lots.map(({ key }) => key);
  return (
    <svg
      className="drawing"
      viewBox={`${-rim} ${-rim} ${box.width + 2 * rim} ${box.height + 2 * rim}`}
      style={{ width: `calc(${box.width + 2 * rim} * var(--unit))` }}
      aria-hidden="true"
    >
      <rect width={box.width} height={box.height} className="inside" />
      {lots.map(({ key, letter }, index) => {
        const block = blocks[index]!;
        return (
          <g key={key}>
            <rect {...block} fill={patternFor(order.indexOf(key))} className="block" />
            <text
              x={block.x + block.width / 2}
              y={block.y + block.height / 2}
              textAnchor="middle"
              dominantBaseline="central"
              className="lettering"
            >
              {letter}
            </text>
          </g>
        );
      })}
      <rect width={box.width} height={box.height} className="rim" />
    </svg>
  );
}
