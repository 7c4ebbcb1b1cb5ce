import type { HandoutContext, PlaceView } from "@keepwright/handout";
import { roomWords } from "@keepwright/handout";
import type { Kitchen, Plan } from "@keepwright/planner";
import { memo, useContext, useMemo } from "react";
import { boxOf, unitsPerLitre } from "../../drawing/kitchenScale.js";
import { useWords } from "../../words/words.js";
import { FoldedPlaces, isFolded } from "./foldedPlaces.js";
import type { Marks } from "./marks.js";
import { PlaceCard } from "./PlaceCard.js";

interface KitchenDrawingProps {
  readonly heading: string;
  readonly lots: Plan["lots"];
  /** The places as the plan has them, with their room. */
  readonly drawn: Plan["places"];
  readonly kitchen: Kitchen;
  readonly places: readonly PlaceView[];
  readonly context: HandoutContext;
  readonly marks: Marks;
}

type Sort = "shelf" | "door" | "drawer" | "open";
const sorts: Readonly<Record<Plan["places"][number]["placeKind"], Sort>> = {
  "refrigerator shelf": "shelf",
  "refrigerator door": "door",
  "crisper drawer": "drawer",
  counter: "open",
  "cool dark cupboard": "open",
  cellar: "open",
};

/** The kitchen as one sees it standing in it: each refrigerator with its shelves, door and drawers, and the room beside. */
export const KitchenDrawing = memo(function KitchenDrawing({
  heading,
  lots,
  drawn,
  kitchen,
  places,
  context,
  marks,
}: KitchenDrawingProps) {
  const say = useWords();
  const perLitre = useMemo(() => unitsPerLitre(drawn), [drawn]);
  const refrigeratorOf = (place: PlaceView) =>
    kitchen.places.find(({ id }) => id === place.place)?.refrigerator;
  const inRoom = places.filter((place) => refrigeratorOf(place) === undefined);
  const groups = kitchen.refrigerators.map(({ id }, index) => ({
    name:
      kitchen.refrigerators.length === 1
        ? say("place.refrigerator")
        : say("place.refrigeratorNumbered", { number: index + 1 }),
    cold: true,
    places: places.filter((place) => refrigeratorOf(place) === id),
  }));
  // Names to touch, and moving, stand open nowhere then.
  const allFolded =
    useContext(FoldedPlaces) !== undefined && places.every(({ entries }) => isFolded(entries.length));
  if (inRoom.length > 0) groups.push({ name: say("place.room"), cold: false, places: inRoom });
  return (
    <section className="where" aria-labelledby="places-heading">
      <h3 id="places-heading">{heading}</h3>
      <ScaleNote context={context} perLitre={perLitre} />
      <p className="move-note soft">
        {allFolded ? say("move.noteFolded", { fold: say("place.fold") }) : say("move.note")}
      </p>
      <div className="kitchen-drawing">
        {groups
          .filter((group) => group.places.length > 0)
          .map((group) => (
            <div key={group.name} className={group.cold ? "group refrigerator" : "group room"}>
              <h4>{group.name}</h4>
              <PlaceGroup lots={lots} drawn={drawn} places={group.places} perLitre={perLitre} marks={marks} />
            </div>
          ))}
      </div>
    </section>
  );
});

type PlaceGroupProps = Pick<KitchenDrawingProps, "lots" | "drawn" | "places" | "marks"> & {
  readonly perLitre: number;
};

/** Shelves above drawers, and the door beside them where there is one. */
function PlaceGroup({ lots, drawn, places, perLitre, marks }: PlaceGroupProps) {
  const marked = useMemo(
    () => new Map(lots.map(({ id, litres }) => [id, { lot: id, ...marks(id), litres }])),
    [lots, marks],
  );
  const cards = places.flatMap((place) => {
    const own = drawn.find((each) => each.place === place.place);
    return own ? [{ place, sort: sorts[own.placeKind], box: boxOf(own, perLitre) }] : [];
  });
  const card = ({ place, sort, box }: (typeof cards)[number]) => (
    <PlaceCard key={place.place} place={place} box={box} perLitre={perLitre} drawn={marked} sort={sort} />
  );
  const doors = cards.filter(({ sort }) => sort === "door");
  return (
    <div className={doors.length > 0 ? "group-places with-door" : "group-places"}>
      <div className="body">{cards.filter(({ sort }) => sort !== "door").map(card)}</div>
      {doors.length > 0 && <div className="doors">{doors.map(card)}</div>}
    </div>
  );
}

/** A US liquid quart [L]: by definition 57.75 cubic inches of 2.54 cm (NIST Handbook 44, appendix C; from memory). */
const litresPerQuart = 57.75 * 0.254 ** 3;

/** The scale, said and shown: a square of one litre, or of ten where a litre would be too small to see. */
function ScaleNote({ context, perLitre }: { readonly context: HandoutContext; readonly perLitre: number }) {
  const say = useWords();
  const one = context.units.mass === "us" ? litresPerQuart : 1;
  const litres = perLitre >= 150 ? one : 10 * one;
  const side = Math.sqrt(litres * perLitre);
  const amount = roomWords(context.speaker, context.units, litres);
  return (
    <p className="scale soft">
      <span>
        {say("place.scale", { amount })}{" "}
        <svg
          className="drawing scale-square"
          viewBox={`-1 -1 ${side + 2} ${side + 2}`}
          style={{ width: `calc(${side + 2} * var(--unit))` }}
          aria-hidden="true"
        >
          <rect width={side} height={side} className="rim" />
        </svg>
      </span>{" "}
      <span>{say("place.scaleNote")}</span>
    </p>
  );
}
