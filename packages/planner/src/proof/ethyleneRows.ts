import { leastEmission, mostEmission } from "./given.js";
import type { BoxExchange, KitchenBoxes } from "./kitchenBoxes.js";
import type { Entry, LinearModel } from "./linearModel.js";
import type { Placed } from "./placed.js";
import type { Supposition } from "./supposition.js";

/** Columns for the ethylene of each box and the room [µL/L], at the least, by window and then by box; then for all windows but the first together, and for all of them. */
export function ethyleneColumns(
  model: LinearModel,
  { size, problem }: KitchenBoxes,
  { leastEthylene, leastAtMost }: Supposition,
): number[][] {
  const room = problem.kitchen.room.ethylene;
  const byWindow = leastEthylene.map((least, window) =>
    Array.from({ length: size + 1 }, (_, box) =>
      box === size ? model.column(0, room, room) : model.column(0, leastAtMost[window]![box]!, least[box]!),
    ),
  );
  const laterMost = (box: number): number =>
    Math.min(...leastAtMost.slice(1, -1).map((levels) => levels[box]!));
  const together = (most: (box: number) => number): number[] =>
    Array.from({ length: size + 1 }, (_, box) =>
      box === size ? model.column(0, room, room) : model.column(0, most(box)),
    );
  return [...byWindow, together(laterMost), together((box) => leastAtMost.at(-1)![box]!)];
}

/** In each span of time: exchange · (ethylene of a box − that of its neighbour) ≥ what is given off in it and behind it all that time. */
export function emissionRows(
  model: LinearModel,
  { size, neighbour, behind }: KitchenBoxes,
  { most }: BoxExchange,
  windows: readonly number[],
  ethylene: readonly (readonly number[])[],
  placed: readonly Placed[],
): void {
  const spans = windows.map(
    (from, window) => [from, windows[window + 1] ?? Number.POSITIVE_INFINITY] as const,
  );
  const later = [windows[1] ?? 0, Number.POSITIVE_INFINITY] as const;
  const always = [0, Number.POSITIVE_INFINITY] as const;
  for (const [which, [from, to]] of [...spans, later, always].entries()) {
    const columns = ethylene[which]!;
    for (let box = 0; box < size; box++) {
      const given = placed.flatMap(({ column, portions }): Entry[] => {
        const emission = leastEmission(column, behind[box]!, from, to);
        return emission > 0 ? [[portions, emission / column.way.lot.portions]] : [];
      });
      model.row(Number.NEGATIVE_INFINITY, 0, [
        [columns[box]!, -most[box]!],
        [columns[neighbour[box]!]!, most[box]!],
        ...given,
      ]);
    }
  }
}

/**
 * Fruit that is to be ripe sooner than the room's ethylene makes it needs that of others: what ever lies in its box, and in those that breathe with it, must be able to give as much
 * off, at the most and in the stillest air. Others of a part are those of its own lot, too.
 */
export function hasteRows(
  model: LinearModel,
  { size, neighbour, behind, problem }: KitchenBoxes,
  { least }: BoxExchange,
  placed: readonly Placed[],
): void {
  const base = problem.kitchen.room.ethylene;
  const madeIn = (box: number, but: number | undefined, until: number): Entry[] =>
    placed.flatMap(({ column, portions }): Entry[] => {
      if (column.way.lot.index === but) return [];
      let ethylene = 0;
      for (let one = box; one < size; one = neighbour[one]!) {
        ethylene += mostEmission(column, behind[one]!, until) / least[one]!;
      }
      return ethylene > 0 ? [[portions, ethylene / column.way.lot.portions]] : [];
    });
  const groups = new Map<
    string,
    { readonly wants: Entry[]; readonly but: number | undefined; readonly box: number; readonly day: number }
  >();
  for (const { column, portions } of placed) {
    if (!(column.needs > base * (1 + 1e-6))) continue;
    const box = column.way.boxes[0]!;
    const { lot, apart } = column.way;
    const key = `${lot.index} ${apart} ${box} ${column.readyDay} ${column.needs}`;
    const group = groups.get(key) ?? {
      wants: [],
      but: apart ? undefined : lot.index,
      box,
      day: column.readyDay,
    };
    groups.set(key, group);
    group.wants.push([portions, -(column.needs - base) / column.way.lot.portions]);
  }
  for (const { wants, box, but, day } of groups.values()) {
    model.row(0, Number.POSITIVE_INFINITY, added([...madeIn(box, but, day), ...wants]));
  }
}

/** One entry a column: what a part's own lot makes and what the part wants are of the same. */
function added(entries: readonly Entry[]): Entry[] {
  const values = new Map<number, number>();
  for (const [column, value] of entries) values.set(column, (values.get(column) ?? 0) + value);
  return [...values];
}
