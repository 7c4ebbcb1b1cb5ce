import { saysEach } from "./amountOfEach.js";
import { type Amount, amountsOf } from "./amounts.js";
import type { Clause } from "./clauses.js";
import { contrasted } from "./contrast.js";
import { type Element, statesOf } from "./elements.js";
import type { StateChange } from "./stateWords.js";
import type { Unit } from "./units.js";

/** An amount of a lot with what is said of it alone. */
export interface Part {
  readonly amount: Amount;
  readonly states: readonly StateChange[];
  /** Does it stand before the name? */
  readonly before?: boolean;
}

/** What a clause says of its lot: how much at first, its states, and further amounts in a state of their own ("1 ripe"). */
export interface Said {
  readonly amount?: Amount;
  readonly size?: Amount["size"];
  /** One was named: "onion", not "onions". */
  readonly singular: boolean;
  /** Several were: "onions", not "onion" nor "garlic". */
  readonly plural: boolean;
  readonly states: readonly StateChange[];
  readonly parts: readonly Part[];
  /** Further amounts for the whole ("1 bag, 2 lb"): to be compared with the first. */
  readonly restated: readonly Amount[];
  /** Does an amount behind it speak of it, or of what comes next? */
  readonly doubtful: boolean;
  /** "Half ripe" may mean half of them. */
  readonly orHalf: boolean;
  /** In what it came, where that was told. */
  readonly inPackage?: Unit;
}

/** Between separators, which stand only behind the name. */
function segmentsOf(elements: readonly Element[]): Element[][] {
  const segments: Element[][] = [[]];
  for (const element of elements) {
    if (element.type === "separator") segments.push([]);
    else segments.at(-1)!.push(element);
  }
  return segments;
}

/** First tokens of states that speak of the amount behind them: "ripe 3, hard 2". */
function statesAhead(elements: readonly Element[], amounts: readonly Amount[]): ReadonlySet<number> {
  const ahead = new Set<number>();
  for (const segment of segmentsOf(elements)) {
    const states = segment.filter(({ type }) => type === "state");
    const end = segment.at(-1)?.next ?? 0;
    const isAhead = (state: Element) => amounts.some(({ first }) => first > state.first && first < end);
    const firstAmount = amounts.find(({ first }) => first >= (segment[0]?.first ?? Infinity));
    const leads = states[0] !== undefined && states[0].first < (firstAmount?.first ?? 0);
    if (leads && states.every(isAhead)) for (const state of states) ahead.add(state.first);
  }
  return ahead;
}

interface Groups {
  readonly common: readonly StateChange[];
  readonly groups: readonly Part[];
}

/** The elements as groups: each amount with the states that follow it, or in whose part of the line it stands last. */
function groupsOf(elements: readonly Element[]): Groups {
  const amounts = amountsOf(elements);
  const ahead = statesAhead(elements, amounts);
  const common: StateChange[] = [];
  const states: StateChange[][] = amounts.map(() => []);
  for (const element of elements) {
    if (element.type !== "state") continue;
    const next = amounts.findIndex(({ first }) => first > element.first);
    const last = next < 0 ? amounts.length - 1 : next - 1;
    const owner = ahead.has(element.first) ? next : last;
    (states[owner] ?? common).push(element.change);
  }
  return { common, groups: amounts.map((amount, index) => ({ amount, states: states[index]! })) };
}

/** In "3 garlic cloves" and "2 avocado halves" the unit of the number stands behind the name. */
function withTrailingUnit(
  groups: Groups,
  after: readonly Element[],
): { before: Groups; after: readonly Element[] } {
  const [behind, ...rest] = after;
  const [only, more] = groups.groups;
  if (!only || more || only.amount.unit) return { before: groups, after };
  const { amount } = only;
  const changed = (changes: Partial<Amount>) => ({
    before: { ...groups, groups: [{ ...only, amount: { ...amount, ...changes } }] },
    after: rest,
  });
  if (behind?.type === "number" && behind.number.pieces)
    return changed({ count: amount.count * behind.number.value, divided: true });
  return behind?.type === "unit" ? changed({ unit: behind.unit }) : { before: groups, after };
}

const tells = ({ amount, states }: Part) => states.length > 0 || amount.size !== undefined;
const countsPieces = ({ amount }: Part) => amount.unit?.of !== "household" || !amount.unit.container;

/**
 * "2 ripe and 1 hard avocados": several amounts before the name, each in a state of its own; what the name itself tells
 * ("1 red and 1 green pepper") belongs to the last. Undefined where there are no such amounts.
 */
function severalBefore(
  groups: readonly Part[],
  implied: readonly StateChange[],
): readonly [Part, ...Part[]] | undefined {
  const [first, ...more] = groups;
  const last = more.pop();
  if (!first || !last) return undefined;
  const all = [first, ...more, { ...last, states: [...last.states, ...implied] }] as const;
  return all.every((group) => tells(group) && countsPieces(group)) ? all : undefined;
}

/** "2 each: red and green apples": two of both, or two in all? */
const isEachOfStates = (clause: Clause, states: readonly StateChange[]) =>
  saysEach(clause.before) && states.some((one) => contrasted([one], states));

/** Sorts the amounts and states of a clause into the first of them and its parts or neighbours. */
export function saidIn(clause: Clause): Said {
  const { before, after } = withTrailingUnit(
    groupsOf([...(clause.lent ?? []), ...clause.before]),
    clause.after,
  );
  const { common, groups } = groupsOf(after);
  const firstAfter = groups[0]?.amount.first ?? Infinity;
  const size = [...clause.before, ...after.filter(({ first }) => first < firstAfter)].find(
    (element) => element.type === "size",
  )?.size;
  const implied = clause.name?.name.implied ?? [];
  const young = clause.name?.name.baby ? "baby" : undefined;
  const inPackage = [...clause.before, ...after].find((element) => element.type === "package");
  const told = {
    ...((size ?? young) ? { size: size ?? young } : {}),
    singular: clause.name?.name.singular ?? false,
    plural: clause.name?.name.plural ?? false,
    doubtful:
      clause.doubtful === true ||
      [...clause.before, ...after].some((word) => word.type === "connective" && word.or) ||
      isEachOfStates(clause, [...statesOf(clause.before), ...implied]),
    orHalf: statesOf(after).some(({ orHalf }) => orHalf),
    ...(inPackage ? { inPackage: inPackage.unit } : {}),
  };
  const stated = groups.filter(tells);
  const bare = groups.filter((group) => !tells(group)).map(({ amount }) => amount);
  const several = severalBefore(before.groups, implied);
  if (several) {
    const [{ amount, states }, ...others] = several;
    const parts = [...others.map((part) => ({ ...part, before: true })), ...stated];
    return { amount, ...told, states: [...before.common, ...states, ...common], parts, restated: bare };
  }
  const general = [...implied, ...before.common];
  const [first, ...more] = before.groups;
  if (first) {
    const states = [...general, ...before.groups.flatMap((part) => part.states), ...common];
    const restated = [...more.map(({ amount }) => amount), ...bare];
    return { amount: first.amount, ...told, states, parts: stated, restated };
  }
  const states = [...general, ...common];
  const [only] = groups;
  if (only && groups.length === 1 && !only.amount.ofThem)
    return { amount: only.amount, ...told, states: [...states, ...only.states], parts: [], restated: [] };
  if (bare[0]) return { amount: bare[0], ...told, states, parts: stated, restated: bare.slice(1) };
  return { ...told, states, parts: stated, restated: [] };
}
