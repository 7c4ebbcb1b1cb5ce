import type { MarkedLine, Passage } from "../../words/markedLine.js";
import type { PartName } from "../running/parts.js";

/** A row of names and texts, a line of a list, a paragraph, a caution, or a table: what stands on a slide, never how it looks. */
export type SlidePart =
  | { readonly part: "pairs"; readonly rows: readonly { readonly name: string; readonly text: string }[] }
  | { readonly part: "list"; readonly mark: "dot" | "letter"; readonly items: readonly string[] }
  | { readonly part: "text"; readonly text: string }
  | { readonly part: "heading"; readonly text: string }
  | { readonly part: "caution"; readonly lines: readonly string[] }
  | {
      readonly part: "table";
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
    };

/** A chart as data. Series are told apart by their names, fills and dashes, never by colour alone. */
export interface SlideChart {
  /** Bars side by side, one bar in parts, or a line from point to point. */
  readonly chart: "bars" | "parts" | "lines";
  readonly categories: readonly string[];
  /** A value for each category; null where the series has none there, as where bars of one kind have a series of their own. */
  readonly series: readonly {
    readonly name: string;
    readonly values: readonly (number | null)[];
    /** How its bars are filled; left out: full, hatched, empty, in order. */
    readonly fill?: "full" | "hatched" | "empty";
  }[];
  /** What the values are, with their unit. */
  readonly axis: string;
  /** Digits after the decimal point where values are written. */
  readonly digits: number;
  /** The same in words, for whoever does not see it. */
  readonly alt: string;
}

/** One slide. */
export interface DeckSlide {
  /** Names it: letters, digits and dashes; the same whenever the deck is made again. */
  readonly id: string;
  readonly sort: "opening" | "section" | "plain";
  readonly title: string;
  readonly subtitle?: string | undefined;
  readonly parts: readonly SlidePart[];
  readonly chart?: SlideChart | undefined;
  /** What to say, a paragraph each. */
  readonly notes: readonly string[];
  /** What signs on the slide stand for: at its foot, before the sources. */
  readonly remarks?: readonly string[] | undefined;
  /** Where what it says comes from, a line each. */
  readonly sources: readonly string[];
  /** Those of them that stand on no paper, with their passages in another language. */
  readonly ownSources?: readonly MarkedLine[] | undefined;
}

/** The slides of one part of a class. */
export interface DeckPart {
  readonly name: PartName;
  /** Minutes of the class from which to which it is held. */
  readonly from: number;
  readonly to: number;
  /** Numbers of its first and last slide in the file, counted from 1. */
  readonly first: number;
  readonly last: number;
}

/** Slides to be shown to a class. */
export interface Deck {
  readonly title: string;
  /** BCP 47 tag. */
  readonly language: string;
  readonly slides: readonly DeckSlide[];
  /** Passages of lines of sources that are in another language than the deck, by the line. */
  readonly passages?: ReadonlyMap<string, readonly Passage[]>;
  /** In the order in which they are held; together all slides. */
  readonly parts: readonly DeckPart[];
  readonly words: {
    readonly sources: string;
    /** Stands where there is no room for all sources. */
    readonly moreSources: string;
    /** Title of a slide that goes on: holds {title}, {number} and {of}. */
    readonly goesOn: (title: string, number: number, of: number) => string;
  };
}

/** Sources of a slide that stand on no paper, each once. */
export function sourced(lines: readonly MarkedLine[]): Pick<DeckSlide, "sources" | "ownSources"> {
  const sources = [...new Set(lines.map(({ text }) => text))];
  return { sources, ownSources: lines };
}
