import type { Amount } from "./amounts.js";
import type { StateChange } from "./stateWords.js";

/** What is said of an amount, by what it is said about. */
export type Marks = Readonly<Record<string, unknown>>;

/** Those among the marks that are states, so that a lot in one of them is told from the same kind in another. */
const states: ReadonlySet<string> = new Set([
  "ripeness",
  "form",
  "tops",
  "washed",
  "extraDays",
  "since",
  "wanted",
]);

/** The marks of some states and a size. `greenIsUnripe`: in kinds where it is not, green is only a colour. */
export function marksOf(changes: readonly StateChange[], size?: Amount["size"], greenIsUnripe = true): Marks {
  const told = changes.map(({ byColour, orHalf: _, ripeness, wanted, ...rest }) => ({
    ...rest,
    ...(wanted !== undefined ? { wanted: JSON.stringify(wanted) } : {}),
    ...(ripeness !== undefined && (greenIsUnripe || !byColour) ? { ripeness } : {}),
  }));
  return Object.assign({}, ...told, size ? { size } : {});
}

const shared = (one: Marks, other: Marks) => Object.keys(one).filter((key) => key in other);

/** Do two groups of words say different things of the same matter: "ripe" and "hard", "red" and "green"? */
export const contrasted = (one: readonly StateChange[], other: readonly StateChange[]): boolean => {
  const [first, second] = [marksOf(one), marksOf(other)];
  return shared(first, second).some((key) => first[key] !== second[key]);
};

/**
 * Is a later amount part of the first ("3 avocados, 1 ripe") or beside it ("2 ripe avocados and 1 hard")? It is part of what
 * names no state, and beside what names another; where the first names a state that the later says nothing of, or the
 * same one, it may be either. Sizes and colours tell amounts apart in the same way, but leave no doubt by themselves.
 */
export function relation(first: Marks, later: Marks): "part" | "beside" | "either" {
  const both = shared(first, later);
  if (both.some((key) => first[key] !== later[key])) return "beside";
  if (both.length > 0) return "either";
  // "3 hard avocados, 1 by Friday": of a day alone nobody says that it is of others.
  if (Object.keys(later).every((key) => key === "wanted") && "wanted" in later) return "part";
  return Object.keys(first).some((key) => states.has(key)) ? "either" : "part";
}

const isRipe = (word: unknown) => word === "ripe" || word === "very ripe";

/** Do the states of one lot exclude each other ("ripe and hard")? Nearby ripenesses do not. */
export function conflicting(changes: readonly StateChange[], greenIsUnripe: boolean): boolean {
  const told = changes.map((change) => marksOf([change], undefined, greenIsUnripe));
  const differ = (key: string, as = (value: unknown) => value) =>
    new Set(told.filter((marks) => key in marks).map((marks) => as(marks[key]))).size > 1;
  return differ("ripeness", isRipe) || differ("form") || differ("washed") || differ("tops");
}

/** Kinds in which green means unripe; in others (green apples, green grapes) it is only a colour. Common practice. */
export const greenIsUnripe = new Set([
  "banana",
  "plantain",
  "mango",
  "papaya",
  "tomato",
  "cherry-tomato",
  "apricot",
  "peach",
  "nectarine",
  "guava",
]);
