import type { Element, ElementOf } from "./elements.js";
import type { ReadNumber } from "./numbers.js";
import type { Size } from "./plainWords.js";
import { type Unit, unitNamed } from "./units.js";

/** An amount as written: a count of a unit, or of the kind's own pieces when no unit stands there. */
export interface Amount
  extends Pick<
    ReadNumber,
    "decimals" | "grouped" | "definite" | "share" | "ofThem" | "unclear" | "rest" | "article" | "ofKilo"
  > {
  readonly count: number;
  /** Was a number written at all? "bag of carrots" has none. */
  readonly counted: boolean;
  readonly exactness: "exact" | "rough" | "vague";
  readonly negative: boolean;
  readonly unit?: Unit;
  readonly size?: Size;
  /** "3 lb each": the mass of one of the pieces or bags counted elsewhere. */
  readonly ofOne?: boolean;
  /** Pieces of something divided ("two halves"). */
  readonly divided?: boolean;
  /** "1.500 g": thousands by all likelihood, but a point is usually none. */
  readonly doubtful?: boolean;
  readonly first: number;
  readonly next: number;
}

type Mutable<Type> = { -readonly [Key in keyof Type]: Type[Key] };

function startOf(element: ElementOf<"number">): Mutable<Amount> {
  const { value, exactness, pieces: _, next: __, ...told } = element.number;
  const { negative, first, next } = element;
  return { count: value, counted: true, exactness, negative, ...told, first, next };
}

/** "5 lb bags" after "two": the count of bags times the mass of each. */
function multiplied(outer: Amount, inner: Amount): Amount {
  return {
    ...inner,
    count: outer.count * inner.count,
    negative: outer.negative || inner.negative,
    ...(outer.unclear || inner.unclear ? { unclear: true } : {}),
    first: outer.first,
  };
}

const isContainer = (unit: Unit | undefined) => unit?.of === "household" && unit.container;
/** Told for each of several names or pieces. */
export const isEach = (unit: Unit) => unit.of === "household" && (unit.word === "each" || unit.word === "ea");

/** Metric units, small (g, ml) and large (kg, l); undefined for all other units. */
function metric(unit: Unit): "small" | "large" | undefined {
  if (unit.of === "mass") return unit.grams === 1 ? "small" : unit.grams === 1000 ? "large" : undefined;
  if (unit.of === "volume") return unit.litres === 0.001 ? "small" : unit.litres === 1 ? "large" : undefined;
  return undefined;
}

/**
 * What one mark with three digits behind it means before a unit. Nobody writes thousandths of a gram, so before g and ml it
 * parts thousands; thousands of kilograms are in no kitchen, so before kg and l it is a decimal comma, unless the three
 * digits are noughts ("1,000 kg"). Before any other unit it is as English has it. Inferred from what a household can hold.
 */
function withUnit(amount: Amount, unit: Unit): Amount {
  const size = amount.grouped && metric(unit);
  if (size === "small" && amount.grouped === "point")
    return { ...amount, unit, count: amount.count * 1000, doubtful: true };
  if (size === "large" && amount.grouped === "comma" && amount.count % 1000 !== 0)
    return { ...amount, unit, count: amount.count / 1000 };
  return { ...amount, unit };
}

/** Gathers amounts, the last of them open to what follows it. */
class Amounts {
  readonly done: Amount[] = [];
  open: Mutable<Amount> | undefined;
  private times = false;
  private size: Amount["size"];

  constructor(private readonly roughly: boolean) {}

  close() {
    const { open } = this;
    if (open)
      this.done.push(this.roughly && open.exactness === "exact" ? { ...open, exactness: "rough" } : open);
    this.open = undefined;
  }

  number(element: ElementOf<"number">, next: Element | undefined) {
    const { open } = this;
    // "Garlic cloves 3".
    const countsUnit = open?.unit?.of === "household" && !open.unit.container && !open.counted;
    if (countsUnit && open.next === element.first && next?.type !== "unit") {
      this.open = { ...startOf(element), unit: open.unit!, first: open.first };
      return;
    }
    const joins = this.times;
    this.close();
    const outer = this.done.at(-1);
    this.open = startOf(element);
    if (joins && outer && !outer.unit && outer.next === element.first)
      this.open = multiplied(this.done.pop()!, this.open);
    this.times = element.times;
    if (this.size) this.open.size = this.size;
  }

  unit({ unit, first, next }: ElementOf<"unit">) {
    const { open } = this;
    const before = open ?? this.done.at(-1);
    if (open?.unit && isEach(unit)) {
      if (open.unit.of === "mass") open.ofOne = true;
      open.next = next;
    } else if (!open && isEach(unit)) {
      // Without a number it tells no amount; see `sharedOut`.
    } else if (open && !open.unit) {
      this.open = { ...withUnit(open, unit), next };
      const outer = this.done.at(-1);
      // "3 a kilo" is a price; "two one-pound bags" is not.
      const bags = outer && !outer.unit && Number.isInteger(outer.count) && !open.article;
      if (bags && outer.next === open.first && unit.of !== "household")
        this.open = multiplied(this.done.pop()!, this.open);
    } else if (before && before.unit?.of !== "household" && isContainer(unit) && before.next === first) {
      if (open) open.next = next;
    } else {
      this.close();
      this.open = { count: 1, counted: false, exactness: "exact", negative: false, unit, first, next };
    }
    if (this.open && this.size) this.open.size = this.size;
  }

  /** A comma or bracket ends an amount, and a size does not reach beyond it. */
  part() {
    this.close();
    this.size = undefined;
    this.times = false;
  }

  sized(size: Amount["size"]) {
    this.size = size;
    if (this.open && size) this.open.size = size;
  }
}

/**
 * Amounts among the elements of a part of a clause, in order. Descriptors and small words between a number and its unit
 * are passed over; a size goes with the number or unit next to it.
 */
export function amountsOf(elements: readonly Element[]): Amount[] {
  const roughly = elements.some((element) => element.type === "descriptor" && element.roughly);
  const amounts = new Amounts(roughly);
  for (const [index, element] of elements.entries()) {
    if (element.type === "number") amounts.number(element, elements[index + 1]);
    else if (element.type === "unit") amounts.unit(element);
    else if (element.type === "size") amounts.sized(element.size);
    else if (element.type === "separator") amounts.part();
    else if (element.type === "unknown") amounts.close();
  }
  amounts.close();
  return amounts.done;
}

/** “Un cuarto de champiñones” is a quarter of a kilogram by all likelihood, where pounds are not used. Common practice, no source. */
export function inKilos(amount: Amount | undefined, plural: boolean): Amount | undefined {
  const kilo = amount?.ofKilo && plural && !amount.unit ? unitNamed("kilo", true) : undefined;
  return amount && kilo ? { ...amount, unit: kilo, doubtful: true } : amount;
}
