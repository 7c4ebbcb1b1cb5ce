import type { Element } from "./elements.js";
import type { Unit } from "./units.js";

/** An amount as written: a count of a unit, or of the kind's own pieces when no unit stands there. */
export interface Amount {
  readonly count: number;
  /** Was a number written at all? "bag of carrots" has none. */
  readonly counted: boolean;
  readonly exactness: "exact" | "rough" | "vague";
  readonly negative: boolean;
  readonly unit?: Unit;
  readonly size?: "small" | "medium" | "large";
  /** "3 lb each": the mass of one of the pieces or bags counted elsewhere. */
  readonly ofOne?: boolean;
  /** Pieces of something divided ("two halves"). */
  readonly divided?: boolean;
  readonly first: number;
  readonly next: number;
}

type Mutable<Type> = { -readonly [Key in keyof Type]: Type[Key] };

const startOf = (element: Element & { type: "number" }): Mutable<Amount> => ({
  count: element.number.value,
  counted: true,
  exactness: element.number.exactness,
  negative: element.negative,
  ...(element.number.divided ? { divided: true } : {}),
  first: element.first,
  next: element.next,
});

/** "5 lb bags" after "two": the count of bags times the mass of each. */
function multiplied(outer: Amount, inner: Amount): Amount {
  return {
    ...inner,
    count: outer.count * inner.count,
    negative: outer.negative || inner.negative,
    first: outer.first,
  };
}

const isContainer = (unit: Unit | undefined) => unit?.of === "household" && unit.container;

/**
 * Amounts among the elements of a part of a clause, in order. Descriptors and small words between a number and its unit
 * are passed over; a size goes with the number or unit next to it.
 */
export function amountsOf(elements: readonly Element[]): Amount[] {
  const amounts: Amount[] = [];
  const roughly = elements.some((element) => element.type === "descriptor" && element.roughly);
  let open: Mutable<Amount> | undefined;
  let times = false;
  let size: Amount["size"];
  const close = () => {
    if (open) amounts.push(roughly && open.exactness === "exact" ? { ...open, exactness: "rough" } : open);
    open = undefined;
  };
  for (const element of elements) {
    if (element.type === "number") {
      const joins = times;
      close();
      const outer = amounts.at(-1);
      open = startOf(element);
      if (joins && outer && !outer.unit && outer.next === element.first)
        open = multiplied(amounts.pop()!, open);
      times = element.times;
    } else if (element.type === "unit") {
      const before: Amount | undefined = open ?? amounts.at(-1);
      if (open?.unit?.of === "mass" && element.unit.of === "household" && element.unit.name === "each") {
        open.ofOne = true;
        open.next = element.next;
        continue;
      }
      if (open && !open.unit) {
        Object.assign(open, { unit: element.unit, next: element.next });
        const outer = amounts.at(-1);
        if (outer && !outer.unit && outer.next === open.first && element.unit.of !== "household")
          open = multiplied(amounts.pop()!, open);
      } else if (
        before &&
        before.unit?.of !== "household" &&
        isContainer(element.unit) &&
        before.next === element.first
      ) {
        if (open) open.next = element.next;
      } else {
        close();
        open = {
          count: 1,
          counted: false,
          exactness: "exact",
          negative: false,
          unit: element.unit,
          first: element.first,
          next: element.next,
        };
      }
    } else if (element.type === "size") {
      size = element.size;
      if (open) open.size = size;
    }
    if (open && size) open.size = size;
  }
  close();
  return amounts;
}
