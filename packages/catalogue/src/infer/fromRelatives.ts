import type { CommodityFile } from "../fileSchema.js";
import { nearnesses } from "./nearness.js";
import { type Inferred, offScale, onScale, type Quantity, quantities, type Stated } from "./quantity.js";

/** The source that inferred figures name: data/sources/reference.json. */
export const relativesSource = "keepwright-relatives";

/** At least so many relatives: one alone says nothing about how kinds differ. */
const fewestRelatives = 2;
/** Share of kinds that the range must hold: the model's ranges are 80 % ranges throughout. */
const shareHeld = 0.8;
/** A spread measured on fewer kinds than this is not trusted; the next wider nearness is asked as well. */
const fewestTried = 8;

interface Relative extends Stated {
  readonly kind: CommodityFile;
}

const mean = (numbers: readonly number[]) => numbers.reduce((sum, each) => sum + each, 0) / numbers.length;

/** Measured and recommended figures come first; where too few relatives have one, any figure their files state. */
function firm(relatives: readonly Relative[]): readonly Relative[] {
  const published = relatives.filter(
    ({ evidence }) => evidence.kind === "measured" || evidence.kind === "recommended",
  );
  return published.length >= fewestRelatives ? published : relatives;
}

/** Relatives in groups: those that ripen alike and are as near as a degree asks of each other, by what they have in common. */
type Groups = ReadonlyMap<string, readonly Relative[]>;

const groupOf = (kind: CommodityFile, degree: number): string =>
  `${kind.climacteric}|${nearnesses[degree]!.common(kind)}`;

function grouped(stated: readonly Relative[], degree: number): Groups {
  const groups = new Map<string, Relative[]>();
  for (const each of stated) {
    const key = groupOf(each.kind, degree);
    const group = groups.get(key);
    if (group) group.push(each);
    else groups.set(key, [each]);
  }
  return groups;
}

/** Kinds with a figure of their own, and their groups at every degree. */
interface Stating {
  readonly all: readonly Relative[];
  readonly groups: readonly Groups[];
}

function relativesAt(kind: CommodityFile, { groups }: Stating, degree: number): readonly Relative[] {
  const group = groups[degree]!.get(groupOf(kind, degree)) ?? [];
  return firm(group.filter((each) => each.kind.id !== kind.id));
}

function allStated(kinds: readonly CommodityFile[], quantity: Quantity): Stating {
  const all = kinds.flatMap((kind) => {
    const found = quantity.read(kind);
    // Written out: objects made by a spread and added to share no hidden class, and these are read a hundred thousand times.
    return found ? [{ value: found.value, evidence: found.evidence, kind }] : [];
  });
  return { all, groups: nearnesses.map((_, degree) => grouped(all, degree)) };
}

/** Errors of the rule, at one nearness, on kinds that have a figure of their own: each is left out in turn. */
function errorsAt(stated: Stating, quantity: Quantity, degree: number): number[] {
  return stated.all.flatMap((each) => {
    const relatives = relativesAt(each.kind, stated, degree);
    if (relatives.length < fewestRelatives) return [];
    const guess = mean(relatives.map(({ value }) => onScale(quantity, value)));
    return [guess - onScale(quantity, each.value)];
  });
}

const quantile = (numbers: readonly number[], share: number) =>
  [...numbers].sort((one, other) => one - other)[Math.ceil(share * numbers.length) - 1] ?? 0;

/**
 * How far the rule errs at a nearness for four kinds in five, measured by leaving each kind with a figure of its own out
 * in turn; a nearness tried on few kinds is taken to be no better than the next wider one.
 */
function spreadAt(stated: Stating, quantity: Quantity, degree: number): { spread: number; tried: number } {
  const errors = errorsAt(stated, quantity, degree).map(Math.abs);
  const own = { spread: quantile(errors, shareHeld), tried: errors.length };
  if (errors.length >= fewestTried || degree + 1 >= nearnesses.length) return own;
  const wider = spreadAt(stated, quantity, degree + 1);
  return wider.spread > own.spread ? wider : own;
}

const round = (value: number) => Number(value.toPrecision(3));
const listed = (relatives: readonly Relative[]) => {
  const ids = relatives.map(({ kind }) => kind.id);
  return ids.length <= 6 ? ids.join(", ") : `${ids.slice(0, 5).join(", ")} and ${ids.length - 5} more`;
};

/** The figure of a kind that states none; undefined where fewer than two kinds have one. */
export type Infer = (kind: CommodityFile, quantity: Quantity) => Inferred | undefined;

function evidenceOf(
  relatives: readonly Relative[],
  degree: number,
  width: string,
  tried: number,
): Inferred["evidence"] {
  return {
    source: relativesSource,
    place: `Mean of ${relatives.length} kinds (${nearnesses[degree]!.words}): ${listed(relatives)}; the rule errs by up to ${width} for 80 % of ${tried} kinds with a figure of their own`,
    kind: "inferred",
    fromMemory: relatives.some(({ evidence }) => evidence.fromMemory),
  };
}

/** Keeps what was worked out under a name, so that each thing is worked out once. */
function once<Value>(workOut: (name: string) => Value): (name: string) => Value {
  const known = new Map<string, Value>();
  return (name) => {
    if (!known.has(name)) known.set(name, workOut(name));
    return known.get(name)!;
  };
}

/**
 * The rule of relatives over a catalogue: a figure for a kind that states none is the mean over its nearest relatives (on
 * a logarithmic scale for rates and coefficients), from the nearest degree at which at least two kinds have one. The
 * range holds 80 % of kinds, as measured by leaving out in turn each kind that has a figure of its own.
 */
export function inferAmong(all: readonly CommodityFile[]): Infer {
  // Sums are taken in one order whatever the order of kinds, so that they round alike.
  const kinds = [...all].sort((one, other) => (one.id < other.id ? -1 : 1));
  const byName = new Map(quantities.map((quantity) => [quantity.name, quantity]));
  const statedOf = once((name) => allStated(kinds, byName.get(name)!));
  const spreadOf = once((key) => {
    const [name, degree] = key.split("|") as [string, string];
    return spreadAt(statedOf(name), byName.get(name)!, Number(degree));
  });
  return (kind, quantity) => {
    const stated = statedOf(quantity.name);
    const degree = nearnesses.findIndex(
      (_, index) => relativesAt(kind, stated, index).length >= fewestRelatives,
    );
    if (degree < 0) return undefined;
    const relatives = relativesAt(kind, stated, degree);
    const { spread, tried } = spreadOf(`${quantity.name}|${degree}`);
    const middle = mean(relatives.map(({ value }) => onScale(quantity, value)));
    const at = (shift: number) =>
      round(Math.min(quantity.most, Math.max(quantity.least, offScale(quantity, middle + shift))));
    const width = quantity.scale === "factor" ? `a factor of ${round(Math.exp(spread))}` : `${round(spread)}`;
    return {
      value: at(0),
      low: at(-spread),
      high: at(spread),
      evidence: evidenceOf(relatives, degree, width, tried),
    };
  };
}
