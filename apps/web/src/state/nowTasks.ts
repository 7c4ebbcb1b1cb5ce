import type { PlaceEntry, PlanView } from "@keepwright/handout";
import type { Haul, Kitchen, Lot, Plan } from "@keepwright/planner";

/** Something to do while unpacking. It stays ticked as long as all its keys are: a lot that joins it later asks for it again. */
export interface NowTask {
  readonly keys: readonly string[];
  readonly kind: "vent" | "prepare" | "put away";
  /** The place it is about; undefined where it is about lots wherever they go. */
  readonly place: string | undefined;
  readonly what: string;
  readonly why: string | undefined;
  /** What goes into the place. */
  readonly entries: readonly PlaceEntry[];
}

interface TasksFor {
  readonly view: Pick<PlanView, "places" | "preparation">;
  readonly kitchen: Kitchen;
  /** The person's own line for a lot or a part of one, which stays the same when lines are added around it. */
  readonly lineOf: (lot: string) => string;
  /** What needs not be done, since it is so already: a lot that lies where it is to lie, a vent that stands so. */
  readonly done?: AlreadySo;
}

interface AlreadySo {
  readonly lies: (part: string) => boolean;
  readonly stands: (place: string) => boolean;
}

/** What of a plan that was carried on is so already. */
export function liesAlready({ lots, vents }: Pick<Plan, "lots" | "vents">, asked: AskedCarried): AlreadySo {
  const carried = new Map(asked.lots.flatMap(({ id, carried: lay }) => (lay ? [[id, lay] as const] : [])));
  const lying = new Set(
    lots.flatMap(({ id, lot, stays: [first] }) => {
      const lay = carried.get(lot);
      return lay && first && lay.place === first.place && lay.wrap === first.wrap ? [id] : [];
    }),
  );
  const standing = new Map(asked.standing?.vents.map(({ place, setting }) => [place, setting]));
  const turned = new Map(vents.map(({ place, setting }) => [place, setting]));
  return {
    lies: (part) => lying.has(part),
    stands: (place) => standing.has(place) && standing.get(place) === turned.get(place),
  };
}

type AskedCarried = { readonly lots: readonly Lot[]; readonly standing?: Haul["standing"] };
const nothingYet: AlreadySo = { lies: () => false, stands: () => false };

/** The refrigerator first: what is cut and what warms up waits least. */
const coldFirst = (kitchen: Kitchen, places: PlanView["places"]): PlanView["places"] => {
  const cold = new Set(
    kitchen.places.filter(({ refrigerator }) => refrigerator !== undefined).map(({ id }) => id),
  );
  return [
    ...places.filter(({ place }) => cold.has(place)),
    ...places.filter(({ place }) => !cold.has(place)),
  ];
};

const used = ({ entries, later }: PlanView["places"][number]): boolean =>
  entries.length > 0 || later.length > 0;

/** What to do now, in order: vents, what is done to things before, and last the putting away, place by place. */
export function nowTasks({ view, kitchen, lineOf, done = nothingYet }: TasksFor): readonly NowTask[] {
  const places = coldFirst(kitchen, view.places).filter(used);
  const vents = places.flatMap(({ place, name, setting }): NowTask[] =>
    setting === undefined || done.stands(place)
      ? []
      : [
          {
            keys: [`vent|${place}|${setting}`],
            kind: "vent",
            place: name,
            what: setting,
            why: undefined,
            entries: [],
          },
        ],
  );
  const before = view.preparation
    .filter(({ now }) => now)
    .map(
      ({ task, lots, what, why }): NowTask => ({
        keys: lots.map((lot) => `${task}|${lineOf(lot)}`),
        kind: "prepare",
        place: undefined,
        what,
        why,
        entries: [],
      }),
    );
  const away = places
    .map((place) => ({ ...place, entries: place.entries.filter(({ lot }) => !done.lies(lot)) }))
    .filter(({ entries }) => entries.length > 0)
    .map(
      ({ place, name, entries }): NowTask => ({
        keys: entries.map(({ lot }) => `in|${place}|${lineOf(lot)}`),
        kind: "put away",
        place: name,
        what: name,
        why: undefined,
        entries,
      }),
    );
  return [...vents, ...before, ...away];
}

export const isDone = ({ keys }: NowTask, done: ReadonlySet<string>): boolean =>
  keys.every((key) => done.has(key));
