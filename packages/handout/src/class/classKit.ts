import type { Kitchen, Plan, PlanRequest, TwoWays } from "@keepwright/planner";
import type { MarkedLine } from "../words/markedLine.js";
import type { ClassRequest } from "./classRequest.js";

/** How well a source is known: read, recalled and not checked, told in the trade, or worked out here. */
export const sourceStandings = ["read", "memory", "common practice", "inferred"] as const;
export type SourceStanding = (typeof sourceStandings)[number];

/** Where something in a document comes from, in a line that also says how well it is known. */
export interface KitSource extends MarkedLine {
  readonly standing: SourceStanding;
}

/** One face of a card that is folded in the middle: the question outside, the answer inside. */
export interface CardFace {
  readonly title: string;
  readonly lines: readonly string[];
}

/** A piece of a document. It says what is there, never how it looks: paper and slides set it each in their own way. */
export type Block =
  | { readonly block: "heading"; readonly text: string }
  | { readonly block: "text"; readonly text: string }
  | { readonly block: "list"; readonly mark: "dot" | "tick" | "number"; readonly items: readonly string[] }
  | { readonly block: "pairs"; readonly rows: readonly { readonly name: string; readonly text: string }[] }
  | {
      readonly block: "table";
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly block: "caution"; readonly lines: readonly string[] }
  | {
      readonly block: "cards";
      readonly cards: readonly { readonly front: CardFace; readonly back: CardFace }[];
    }
  | {
      readonly block: "choice";
      readonly number: number;
      readonly question: string;
      readonly choices: readonly string[];
      /** Place of the right choice among them; absent on a sheet for those who are asked. */
      readonly answer?: number | undefined;
      /** The right choice with its letter, told in words as the right one. */
      readonly right?: string | undefined;
      readonly why?: string | undefined;
    }
  /** Where what stands just before comes from; `brief` stands on the page instead, where the host's own paper has the sources in full. */
  | {
      readonly block: "sources";
      readonly sources: readonly KitSource[];
      readonly brief?: readonly MarkedLine[] | undefined;
    }
  /** Empty lines to write on. */
  | { readonly block: "writing"; readonly lines: number }
  /** What follows begins on a new page. */
  | { readonly block: "page" };

export const documentSorts = [
  "answer",
  "places",
  "household",
  "myths",
  "cards",
  "quiz",
  "quiz answers",
  "exercise",
  "exercise answer",
  "comparison",
  "running sheet",
  "sources",
] as const;
export type DocumentSort = (typeof documentSorts)[number];

/** One document of a kit. */
export interface ClassDocument {
  /** Names its file: letters and dashes; the same whenever the kit is made again. */
  readonly id: string;
  readonly sort: DocumentSort;
  /** For the group, or for the host alone. */
  readonly reader: "group" | "host";
  readonly title: string;
  readonly subtitle?: string | undefined;
  readonly blocks: readonly Block[];
  /** Where all that it says comes from. */
  readonly sources: readonly KitSource[];
  /** The few lines that stand on the page instead of all sources, which stand on the host's own paper; absent: all of them stand on the page. */
  readonly brief?: readonly MarkedLine[] | undefined;
  /** Ids of the kinds that it speaks of, in the kit's order. */
  readonly items: readonly string[];
}

/** A kind that the class is about. */
export interface KitItem {
  readonly id: string;
  readonly name: string;
}

/** A whole kit as data: nothing in it depends on a clock, and the same request makes the same kit. */
export interface ClassKit {
  readonly request: ClassRequest;
  readonly title: string;
  /** BCP 47 tag. */
  readonly language: string;
  readonly items: readonly KitItem[];
  /** In a sentence each: words for several kinds, and the kind that each was taken for. */
  readonly taken: readonly string[];
  readonly kitchen: Kitchen;
  /** The worked household: what was asked of the planner, its plan, and the same food unsorted beside it. */
  readonly household: {
    readonly invented: boolean;
    readonly request: PlanRequest;
    readonly plan: Plan;
    readonly twoWays: TwoWays;
  };
  readonly documents: readonly ClassDocument[];
}
