import type { Token } from "./tokens.js";
import { type Unit, unitNamed } from "./units.js";

/** A package in which something came, told beside its name: "bagged", "in a clamshell", “en bolsa”. */
export interface Package {
  readonly unit: Unit & { readonly of: "household" };
  /** Does it speak of the name before it ("in a bag"), rather than of the one next to it ("bagged")? */
  readonly behind: boolean;
  readonly next: number;
}

/** Words that say by themselves in what it came, with the unit they stand for. */
const packed: readonly (readonly [string, string])[] = [
  ["bag", "bagged embolsado embolsada embolsados embolsadas"],
  ["box", "boxed"],
  [
    "package",
    "packaged packed prepacked prepackaged empaquetado empaquetada empaquetados empaquetadas envasado envasada envasados envasadas",
  ],
];
const unitOfPacked = new Map(packed.flatMap(([unit, words]) => words.split(" ").map((word) => [word, unit])));
/** Packages that no kind has a weight for. */
const others = new Set("container containers envase envases recipiente recipientes".split(" "));
/** Words between "in" and the package. */
const between = new Set(
  "a an the their its one un una el la los las su sus plastic paper cardboard small large big sealed closed open plastico carton papel".split(
    " ",
  ),
);
const mostBetween = 3;

function containerNamed(word: string): Package["unit"] | undefined {
  if (others.has(word)) return { of: "household", name: "container", container: true, word };
  const unit = unitNamed(word, false);
  return unit?.of === "household" && unit.container ? unit : undefined;
}

/** The words for a package that begin at a token; with a number in them ("in 2 bags") they are an amount instead. */
export function packageAt(tokens: readonly Token[], at: number): Package | undefined {
  const word = tokens[at]!.folded;
  const one = unitOfPacked.get(word);
  if (one !== undefined)
    return { unit: { of: "household", name: one, container: true, word }, behind: false, next: at + 1 };
  if (word !== "in" && word !== "en") return undefined;
  for (let index = at + 1; index <= at + 1 + mostBetween; index++) {
    const token = tokens[index];
    if (token?.kind !== "word") return undefined;
    const unit = containerNamed(token.folded);
    if (unit) return { unit, behind: true, next: index + 1 };
    if (!between.has(token.folded)) return undefined;
  }
  return undefined;
}
