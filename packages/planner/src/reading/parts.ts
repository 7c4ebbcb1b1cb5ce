import { type Amount, amountsOf } from "./amounts.js";
import type { Clause } from "./clauses.js";
import type { Element } from "./elements.js";
import type { StateChange } from "./states.js";

/** An amount of a lot with what is said of it alone. */
export interface Part {
  readonly amount: Amount;
  readonly states: readonly StateChange[];
}

/** What a clause says of its lot: how much in all, its states, and parts in a state of their own ("1 ripe"). */
export interface Said {
  readonly amount?: Amount;
  readonly size?: Amount["size"];
  /** One was named: "onion", not "onions". */
  readonly singular: boolean;
  readonly states: readonly StateChange[];
  readonly parts: readonly Part[];
  /** Further amounts for the whole ("1 bag, 2 lb"): to be compared with the first. */
  readonly restated: readonly Amount[];
}

const statesIn = (elements: readonly Element[]) =>
  elements.flatMap((element) => (element.type === "state" ? [element.change] : []));

/** The elements after a name as groups: each amount with the states that follow it. */
function groupsOf(elements: readonly Element[]): { common: StateChange[]; groups: Part[] } {
  const amounts = amountsOf(elements);
  const firstAmount = amounts[0]?.first ?? Infinity;
  return {
    common: statesIn(elements.filter((element) => element.first < firstAmount)),
    groups: amounts.map((amount, index) => {
      const end = amounts[index + 1]?.first ?? Infinity;
      return {
        amount,
        states: statesIn(elements.filter((element) => element.first >= amount.first && element.first < end)),
      };
    }),
  };
}

/** In "3 garlic cloves" and "2 avocado halves" the unit of the number stands behind the name. */
function withTrailingUnit(clause: Clause): { before: Amount[]; after: readonly Element[] } {
  const before = amountsOf(clause.before);
  const [behind, ...after] = clause.after;
  const [amount] = before;
  if (before.length === 1 && amount && !amount.unit && behind?.type === "number" && behind.number.pieces)
    return {
      before: [{ ...amount, count: amount.count * behind.number.value, divided: true }],
      after,
    };
  if (before.length !== 1 || !amount || amount.unit || behind?.type !== "unit")
    return { before, after: clause.after };
  return { before: [{ ...amount, unit: behind.unit }], after };
}

/** Sorts the amounts and states of a clause into the whole and its parts. */
export function saidIn(clause: Clause): Said {
  const { before, after } = withTrailingUnit(clause);
  const { common, groups } = groupsOf(after);
  const states = [...(clause.name?.name.implied ?? []), ...statesIn(clause.before), ...common];
  const size = [...clause.before, ...clause.after].find((element) => element.type === "size")?.size;
  const sized = { ...(size ? { size } : {}), singular: clause.name?.name.singular ?? false };
  const stated = groups.filter((group) => group.states.length > 0);
  const bare = groups.filter((group) => group.states.length === 0).map((group) => group.amount);
  if (before[0])
    return { amount: before[0], ...sized, states, parts: stated, restated: [...before.slice(1), ...bare] };
  if (groups.length === 1)
    return {
      amount: groups[0]!.amount,
      ...sized,
      states: [...states, ...groups[0]!.states],
      parts: [],
      restated: [],
    };
  if (bare[0]) return { amount: bare[0], ...sized, states, parts: stated, restated: bare.slice(1) };
  return { ...sized, states, parts: stated, restated: [] };
}
