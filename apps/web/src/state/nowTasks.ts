import type { PlaceEntry, PlanView } from "@keepwright/handout";
import type { Kitchen } from "@keepwright/planner";

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
}

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
export function nowTasks({ view, kitchen, lineOf }: TasksFor): readonly NowTask[] {
  const places = coldFirst(kitchen, view.places).filter(used);
  const vents = places.flatMap(({ place, name, setting }): NowTask[] =>
    setting === undefined
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
