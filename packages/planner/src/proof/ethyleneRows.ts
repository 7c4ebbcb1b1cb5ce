import type { Condition } from "./axis.js";
import type { EthyleneOption } from "./cells.js";
import { leastEmission, mostEmission } from "./given.js";
import type { BoxExchange, KitchenBoxes } from "./kitchenBoxes.js";
import type { LinearModel } from "./linearModel.js";
import { addPlaced, type Placed } from "./placed.js";
import type { Stretch } from "./stretch.js";
import type { Supposition } from "./supposition.js";

/** Columns for the ethylene of each box and the room [µL/L], at the least, by window and then by box; then for all of them together. */
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
  const always = Array.from({ length: size + 1 }, (_, box) =>
    box === size ? model.column(0, room, room) : model.column(0, leastAtMost.at(-1)![box]!),
  );
  return [...byWindow, always];
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
  const always = [0, Number.POSITIVE_INFINITY] as const;
  for (const [which, [from, to]] of [...spans, always].entries()) {
    const columns = ethylene[which]!;
    for (let box = 0; box < size; box++) {
      // Without a limit it holds whatever is given off, but for boxes behind with one.
      if (![...behind[box]!].some((one) => Number.isFinite(model.upper[columns[one]!]!))) continue;
      const row = model.row(Number.NEGATIVE_INFINITY, 0, [
        [columns[box]!, -most[box]!],
        [columns[neighbour[box]!]!, most[box]!],
      ]);
      for (const one of placed) {
        const { column } = one;
        addPlaced(row, one, leastEmission(column, behind[box]!, from, to) / column.way.lot.portions);
      }
    }
  }
}

/** Where the least ethylene of a stretch lies in a cell: what is in it gives off no more, at all times and from the last window on, than its exchange carries away at the cell's most. */
export function ethyleneConditions(
  kitchen: KitchenBoxes,
  { vents }: Supposition,
  windows: readonly number[],
  { box, boxes }: Stretch,
  { always, later, setting }: EthyleneOption,
): Condition[] {
  const { most } = kitchen.exchangeAt(box, vents, setting);
  const condition = (from: number, level: number): Condition => ({
    limit: most * (level - kitchen.problem.kitchen.room.ethylene),
    atLeast: false,
    given: (column) => Math.max(0, leastEmission(column, boxes, from, Number.POSITIVE_INFINITY)),
  });
  return [condition(0, always.most), condition(windows.at(-1)!, later.most)];
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
  const made = ({ column }: Placed, box: number, but: number | undefined, until: number): number => {
    if (column.way.lot.index === but) return 0;
    let ethylene = 0;
    for (let one = box; one < size; one = neighbour[one]!) {
      ethylene += mostEmission(column, behind[one]!, until) / least[one]!;
    }
    return Math.max(0, ethylene) / column.way.lot.portions;
  };
  const groups = new Map<
    string,
    {
      readonly wants: Map<Placed, number>;
      readonly but: number | undefined;
      readonly box: number;
      readonly day: number;
    }
  >();
  for (const one of placed) {
    const { column } = one;
    if (!(column.needs > base * (1 + 1e-6))) continue;
    const box = column.way.boxes[0]!;
    const { lot, apart } = column.way;
    const key = `${lot.index} ${apart} ${box} ${column.readyDay} ${column.needs}`;
    const group = groups.get(key) ?? {
      wants: new Map<Placed, number>(),
      but: apart ? undefined : lot.index,
      box,
      day: column.readyDay,
    };
    groups.set(key, group);
    group.wants.set(one, (column.needs - base) / column.way.lot.portions);
  }
  for (const { wants, box, but, day } of groups.values()) {
    const row = model.row(0, Number.POSITIVE_INFINITY);
    for (const one of placed) addPlaced(row, one, made(one, box, but, day) - (wants.get(one) ?? 0));
  }
}
