import type { Plan } from "@keepwright/planner";

/** What a place is drawn from. */
export type DrawnPlace = Pick<Plan["places"][number], "placeKind" | "litres">;
type Place = DrawnPlace;

/** A box in drawing units, which are the same for every place on the page. */
export interface Box {
  readonly width: number;
  readonly height: number;
}

/** How wide each sort of place is drawn. Its height follows from its litres, so that areas compare. */
const widths: Readonly<Record<Place["placeKind"], number>> = {
  "refrigerator shelf": 280,
  "refrigerator door": 84,
  "crisper drawer": 136,
  counter: 280,
  "cool dark cupboard": 280,
  cellar: 280,
};

const tallest = 170;
const tallestCellar = 300;
const most = (place: Place): number => (place.placeKind === "cellar" ? tallestCellar : tallest);

/** Square drawing units for a litre: as many as let the largest place of the kitchen be drawn whole. */
export const unitsPerLitre = (places: readonly Place[]): number =>
  Math.min(...places.map((place) => (most(place) * widths[place.placeKind]) / place.litres));

/** The box of a place: its area is its litres on the scale. */
export function boxOf(place: Place, perLitre: number): Box {
  const width = widths[place.placeKind];
  return { width, height: (place.litres * perLitre) / width };
}
