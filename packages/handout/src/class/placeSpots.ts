import { commodityOf } from "@keepwright/catalogue";
import { type Kitchen, mustBreathe, type VentSetting } from "@keepwright/planner";
import { apartGroups } from "./apartGroups.js";
import type { ClassContext } from "./classContext.js";

type Place = Kitchen["places"][number];

/** Parts of a place that people tell apart, the farthest from each other first. What has none is one spot. Ordinary furniture: common practice, no source. */
const partsOf = {
  "refrigerator shelf": ["upper shelf", "lower shelf", "middle shelf"],
  "refrigerator door": ["upper rack", "lower rack"],
  "crisper drawer": [],
  counter: ["left end", "right end"],
  "cool dark cupboard": ["left side", "right side"],
  cellar: ["left side", "right side"],
} as const satisfies Readonly<Record<Place["kind"], readonly string[]>>;

export type PlacePart = (typeof partsOf)[keyof typeof partsOf][number];

/** Where a group of kinds lies: a place, a part of it, or a box in it where all parts are taken. */
export interface Spot {
  readonly place: Place;
  readonly part?: PlacePart;
  /** Which box, counted from 1. */
  readonly box?: number;
  readonly vent: VentSetting | undefined;
  readonly kinds: readonly string[];
}

/** Places in which anything keeps alike: of one sort, equally warm, in the same air, with the same vents. */
const sortOf = ({ kind, temperature, refrigerator, airChangesPerHour, vent }: Place): string =>
  JSON.stringify([kind, temperature, refrigerator, airChangesPerHour, vent]);

type Groups = readonly { readonly vent: VentSetting | undefined; readonly kinds: readonly string[] }[];

/** Kinds that have their best in places of one sort, in groups that may lie side by side under one setting of the vent. */
function groupsIn(context: ClassContext, places: readonly Place[]): Groups {
  const isHere = (id: string) => places.some((place) => place.id === id);
  const here = context.items.filter((id) =>
    context.answer(id).belongs.stays.some(({ place }) => isHere(place)),
  );
  const ventOf = (id: string) => context.answer(id).belongs.vents.find(({ place }) => isHere(place))?.setting;
  const settings = [...new Set(here.map(ventOf))];
  const groups = settings.flatMap((vent) =>
    apartGroups(
      context,
      here.filter((id) => ventOf(id) === vent),
    ).map((kinds) => ({ vent, kinds })),
  );
  // What must breathe gets a spot before any other: a box whose lid is on is not for it.
  const breathes = ({ kinds }: Groups[number]): boolean =>
    kinds.some((id) => mustBreathe(commodityOf(context.catalogue, id)));
  return [...groups.filter(breathes), ...groups.filter((group) => !breathes(group))];
}

/** How many groups each place takes, one more to each in turn as long as it has parts for them. */
function sharesOf(places: readonly Place[], groups: number): number[] {
  const most = places.map(({ kind }) => Math.max(1, partsOf[kind].length));
  const shares = places.map(() => 0);
  for (let left = groups; left > 0; ) {
    const before = left;
    shares.forEach((share, index) => {
      if (left === 0 || share >= most[index]!) return;
      shares[index] = share + 1;
      left -= 1;
    });
    if (left === before) break;
  }
  return shares;
}

/** In which order parts are told: from the top, from the left. */
const told: readonly PlacePart[] = [
  "upper shelf",
  "middle shelf",
  "lower shelf",
  "upper rack",
  "lower rack",
  "left end",
  "right end",
  "left side",
  "right side",
];

function spotsIn(context: ClassContext, places: readonly Place[]): Spot[] {
  const groups = groupsIn(context, places);
  const shares = sharesOf(places, groups.length);
  const spots = places.flatMap((place, index) => {
    const parts: readonly PlacePart[] = partsOf[place.kind].slice(0, shares[index]!);
    if (shares[index] === 0) return [];
    if (shares[index] === 1) return [{ place }];
    return told.filter((part) => parts.includes(part)).map((part) => ({ place, part }));
  });
  return groups.map((group, index) => {
    const spot = spots[index] ?? { place: places.at(-1)!, box: index - spots.length + 1 };
    return { ...group, ...spot };
  });
}

/** Every spot in which something of a kit lies, in the kitchen's order: what had better not lie side by side has spots of its own. */
export function placeSpots(context: ClassContext): Spot[] {
  const { places } = context.kitchen;
  const sorts = [...new Set(places.map(sortOf))];
  return sorts.flatMap((sort) =>
    spotsIn(
      context,
      places.filter((place) => sortOf(place) === sort),
    ),
  );
}
