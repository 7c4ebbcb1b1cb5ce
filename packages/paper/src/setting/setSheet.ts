import type { SheetView } from "@keepwright/handout";
import { numbered, type PageWords, type SetPages } from "./numbered.js";
import { type PaperSize, typstPapers } from "./paperSizes.js";
import { mustBePrintable } from "./printable.js";
import type { Typeset, Typesetter } from "./typesetter.js";

export interface SheetOptions {
  readonly paper: PaperSize;
  /** Large print: never below 18 pt, on as many pages as that takes. */
  readonly large: boolean;
  readonly pageWords: PageWords;
}

export interface SheetPdf extends SetPages {
  /** Size of ordinary text [pt]. */
  readonly textSize: number;
}

/** Sizes of ordinary text [pt]. Declared preferences, no source: docs/decisions on the page for the refrigerator door. */
const largest = 15;
const smallest = 9;
const step = 0.5;
const largePrint = 18;
const triedAbove = 2;

const sizes: readonly number[] = Array.from(
  { length: (largest - smallest) / step + 1 },
  (_, index) => largest - index * step,
);

interface Setting {
  readonly size: number;
  readonly columns: number;
  /** Pages that room is left for at the foot: several where it is more than one. */
  readonly pages: number;
}

type Set = (setting: Setting, feet: readonly string[]) => Typeset;

const setter =
  (typesetter: Typesetter, view: SheetView, paper: PaperSize): Set =>
  ({ size, columns }, feet) =>
    typesetter.set("sheet.typ", {
      sheet: JSON.stringify(view),
      paper: typstPapers[paper],
      size: String(size),
      columns: String(columns),
      feet: JSON.stringify(feet),
    });

/** One page set in many sizes to find the best, each size once. */
class Trials {
  readonly #set = new Map<string, Typeset>();

  constructor(private readonly set: Set) {}

  of(setting: Setting): Typeset {
    const key = JSON.stringify(setting);
    const known = this.#set.get(key) ?? this.set(setting, feetOf(setting.pages));
    this.#set.set(key, known);
    return known;
  }

  /** The largest text that needs no more than so many pages, by halving; undefined where even the smallest needs more. */
  largestWithin(pages: number): Setting | undefined {
    const setting = (size: number): Setting => ({ size, columns: 2, pages });
    const fits = (size: number): boolean => this.of(setting(size)).pages <= pages;
    let [low, high] = [0, sizes.length];
    while (low < high) {
      const middle = Math.floor((low + high) / 2);
      if (fits(sizes[middle]!)) high = middle;
      else low = middle + 1;
    }
    // A box that moves on whole can let a larger size fit where a smaller did not: a few sizes above are tried too.
    const above = sizes.slice(Math.max(0, low - triedAbove), low).find(fits) ?? sizes[low];
    return above === undefined ? undefined : setting(above);
  }
}

/** Empty words at the foot, so that room is left for them before the number of pages is known. */
const feetOf = (pages: number): string[] => Array.from({ length: pages }, () => "");

/** One page if it can be read, else two; more only where even the smallest text does not fit on two. */
const settingFor = (trials: Trials, large: boolean): Setting =>
  large
    ? { size: largePrint, columns: 1, pages: 2 }
    : (trials.largestWithin(1) ?? trials.largestWithin(2) ?? { size: smallest, columns: 2, pages: 2 });

/** The page for the refrigerator door as PDF/UA-1. Throws PaperError where a character cannot be printed, or for any warning of the typesetter. */
export function setSheet(typesetter: Typesetter, view: SheetView, options: SheetOptions): SheetPdf {
  mustBePrintable(typesetter.letters, view);
  const set = setter(typesetter, view, options.paper);
  const trials = new Trials(set);
  const setting = settingFor(trials, options.large);
  const made = numbered(trials.of(setting), options.pageWords, (feet) => set(setting, feet));
  return { ...made, textSize: setting.size };
}
