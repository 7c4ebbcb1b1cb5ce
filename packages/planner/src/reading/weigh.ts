import type { Commodity } from "@keepwright/catalogue";
import type { Amount } from "./amounts.js";
import type { Assumption } from "./reading.js";
import { isCutBehindName, isShape } from "./shapes.js";
import type { Unit } from "./units.js";

export interface Weighed {
  readonly grams: number;
  readonly pieces?: number;
  readonly sure: number;
  readonly assumed: readonly Assumption[];
  /** True where less than one whole piece is meant. */
  readonly partOfOne: boolean;
  /** True where it is counted in pieces that were cut ("2 wedges"). */
  readonly cut?: true;
  /** Of "1.5": how many are whole, and the share of the amount that they are. */
  readonly broken?: { readonly whole: number; readonly share: number };
}

/** How sure an amount is, by how it was written. Our own scale; it only decides what is asked about. */
const sureOf = {
  mass: 1,
  counted: 0.85,
  household: 0.8,
  likeUnit: 0.55,
  volume: 0.6,
  usual: 0.5,
  /** A package of a size that nobody knows. */
  inPackage: 0.45,
  handful: 0.4,
  doubtful: 0.45,
};
const sureOfExactness = { exact: 1, rough: 0.8, vague: 0.5 };

/** Litres in a handful: about half a cup. Common practice, no source. */
const litresInHandful = 0.12;

/** Units that stand for one another where a kind has only one of them, nearest first. */
const likeUnits: Record<string, readonly string[]> = {
  each: ["head", "bulb", "ear", "root"],
  head: ["bulb", "crown", "each"],
  bulb: ["head", "each"],
  ear: ["each"],
  root: ["each"],
  crown: ["head", "each"],
  knob: ["piece", "each"],
  stalk: ["rib", "each"],
  spear: ["each"],
  sprig: ["stalk"],
  pod: ["each"],
  cluster: ["bunch", "hand"],
  hand: ["bunch", "cluster"],
  punnet: ["clamshell", "box", "basket"],
  clamshell: ["punnet", "box"],
  box: ["clamshell", "punnet"],
  package: ["bag", "clamshell", "punnet"],
  net: ["bag"],
  basket: ["punnet", "clamshell"],
  tray: ["punnet", "clamshell"],
};
/** Units that are one whole piece of produce. */
const wholePieces = new Set(["each", "head", "ear", "bulb", "root", "crown"]);
/** Units that can be counted as pieces. */
const countedPieces = new Set([...wholePieces, "stalk", "clove", "spear", "pod", "knob", "hand"]);
/** A piece this heavy that weighs less than this share of one whole was cut: the safe reading. Inferred. */
const heavyPiece = { grams: 800, share: 0.6 };

/** "A piece of watermelon" is no whole one. */
const isCutFrom = (commodity: Commodity, found: FoundUnit | undefined): boolean =>
  commodity.organ === "melon" && found !== undefined && found.grams >= heavyPiece.grams;

interface FoundUnit {
  readonly name: string;
  readonly grams: number;
  readonly how: "itself" | "like it";
  readonly sized: boolean;
}

const baseOf = (unitName: string) => unitName.replace(/ (?:small|medium|large|baby)\b.*$/, "");

/** "Baby" is a size of the few kinds that are sold so. */
function babyOf({ household: { units } }: Commodity): FoundUnit | undefined {
  const unit = units.find((each) => each.name.endsWith(" baby"));
  return unit && { name: unit.name, grams: unit.grams, how: "itself", sized: true };
}

function unitOf(commodity: Commodity, name: string, size: Amount["size"]): FoundUnit | undefined {
  if (size === "baby") {
    const piece = wholePieces.has(baseOf(name)) ? babyOf(commodity) : undefined;
    return piece ?? unitOf(commodity, name, undefined);
  }
  const { units } = commodity.household;
  const named = (wanted: string) =>
    units.find((unit) => unit.name === wanted) ??
    units.find((unit) => unit.name === `${wanted} medium`) ??
    (size ? undefined : units.find((unit) => unit.name.startsWith(`${wanted} `)));
  const sized = size && units.find((unit) => unit.name === `${baseOf(name)} ${size}`);
  if (sized) return { name: sized.name, grams: sized.grams, how: "itself", sized: true };
  const own = named(name);
  if (own) return { name: own.name, grams: own.grams, how: "itself", sized: false };
  for (const like of likeUnits[name] ?? []) {
    const other = named(like);
    if (other) return { name: other.name, grams: other.grams, how: "like it", sized: false };
  }
  return undefined;
}

/** The unit a bare count or a bare name stands for, in the size told. */
const pieceUnit = (commodity: Commodity, field: "countUnit" | "bareUnit", size: Amount["size"]) =>
  unitOf(commodity, commodity.household[field], size);

/** Is one whole piece of it so heavy that what was cut from it is mostly far less? */
export function isHeavy(commodity: Commodity): boolean {
  const piece = pieceUnit(commodity, "countUnit", undefined);
  return piece !== undefined && wholePieces.has(baseOf(piece.name)) && piece.grams >= heavyPiece.grams;
}

/** A head of garlic is broken into cloves, not cut. */
const breaksApart = (commodity: Commodity) => commodity.household.units.some((unit) => unit.name === "clove");

/** "1.5": whole ones and a part of one. A mean of a range is no such thing. */
const overOne = (amount: Amount | undefined) =>
  amount?.exactness === "exact" && !amount.divided && amount.count > 1 && !Number.isInteger(amount.count);

const brokenOf = (count: number) => ({ whole: Math.floor(count), share: Math.floor(count) / count });

function byPieces(commodity: Commodity, amount: Amount | undefined, unit: FoundUnit): Weighed {
  const count = amount?.count ?? 1;
  const base = baseOf(unit.name);
  const whole = wholePieces.has(base);
  const usual = amount === undefined;
  const base0 = usual
    ? sureOf.usual
    : unit.how === "like it" && base !== "each"
      ? sureOf.likeUnit
      : amount.unit
        ? sureOf.household
        : sureOf.counted;
  const assumed: Assumption[] = usual ? ["usual amount"] : unit.sized ? [] : ["usual size"];
  if (amount && amount.exactness !== "exact")
    assumed.push(amount.exactness === "vague" ? "usual amount" : "rounded amount");
  return {
    grams: count * unit.grams,
    ...(countedPieces.has(base) &&
    !amount?.divided &&
    Number.isInteger(count) &&
    count > 0 &&
    (amount?.counted || whole)
      ? { pieces: count }
      : {}),
    sure: base0 * sureOfExactness[amount?.exactness ?? "exact"],
    assumed,
    ...(isShape(base) ? { cut: true as const } : {}),
    partOfOne: whole && (count < 1 || amount?.divided === true) && !breaksApart(commodity),
    ...(whole && overOne(amount) && !breaksApart(commodity) ? { broken: brokenOf(count) } : {}),
  };
}

function byVolume(commodity: Commodity, amount: Amount, litres: number, sure: number): Weighed {
  const rough: Assumption[] = amount.exactness === "exact" ? [] : ["rounded amount"];
  // kg/m³ and g/L are the same number.
  const grams = amount.count * litres * commodity.household.bulkDensity.value;
  return {
    grams,
    sure: sure * sureOfExactness[amount.exactness],
    assumed: ["weight from volume", ...rough],
    partOfOne: false,
  };
}

function byMass(commodity: Commodity, amount: Amount, unit: Unit & { of: "mass" }): Weighed {
  const grams = amount.count * unit.grams;
  const piece = pieceUnit(commodity, "countUnit", undefined);
  const partOfOne = isHeavy(commodity) && grams < heavyPiece.share * piece!.grams;
  return {
    grams,
    sure: sureOfExactness[amount.exactness] * (amount.doubtful ? sureOf.doubtful : 1),
    assumed: amount.exactness === "exact" ? [] : ["rounded amount"],
    partOfOne,
  };
}

function byPackage(
  commodity: Commodity,
  unit: Unit,
  size: Amount["size"],
  singular: boolean,
): Weighed | "unknown unit" {
  const one: Amount = {
    count: 1,
    counted: false,
    exactness: "exact",
    negative: false,
    unit,
    first: 0,
    next: 0,
  };
  const own = unit.of === "household" ? unitOf(commodity, unit.name, size) : undefined;
  if (own) return byPieces(commodity, one, own);
  const usual = weigh(commodity, undefined, size, singular);
  return usual === "unknown unit" ? usual : { ...usual, sure: Math.min(usual.sure, sureOf.inPackage) };
}

/**
 * Grams of an amount of a kind, by the kind's household units; of a bare name, the kind's usual amount when no amount is
 * given, or of one piece when only one is named (`singular`); of a `package` told without an amount, one of them where the
 * kind has it, and otherwise the usual amount, less surely. "unknown unit" when the kind has no such unit and none that is like it.
 */
export function weigh(
  commodity: Commodity,
  amount: Amount | undefined,
  size?: Amount["size"],
  singular = false,
  inPackage?: Unit,
): Weighed | "unknown unit" {
  const unit = amount?.unit;
  if (!amount && inPackage) return byPackage(commodity, inPackage, size, singular);
  if (!amount || !unit) {
    const piece = pieceUnit(commodity, amount || singular ? "countUnit" : "bareUnit", amount?.size ?? size);
    return piece ? byPieces(commodity, amount, piece) : "unknown unit";
  }
  if (unit.of === "mass") return byMass(commodity, amount, unit);
  if (unit.of === "volume") {
    const own = commodity.household.units.find((entry) => entry.name === unit.name);
    return own
      ? byPieces(commodity, amount, { name: own.name, grams: own.grams, how: "itself", sized: false })
      : byVolume(commodity, amount, unit.litres, sureOf.volume * (amount.doubtful ? sureOf.doubtful : 1));
  }
  const name =
    unit.name === "each" && !commodity.household.units.some((entry) => baseOf(entry.name) === "each")
      ? commodity.household.countUnit
      : unit.name;
  const found = unitOf(commodity, name, amount.size);
  // Three sticks are no three carrots.
  const another = isCutBehindName(unit.word) && (found?.how === "like it" || isCutFrom(commodity, found));
  if (found && !another) return byPieces(commodity, amount, found);
  return unit.name === "handful"
    ? byVolume(commodity, amount, litresInHandful, sureOf.handful)
    : "unknown unit";
}
