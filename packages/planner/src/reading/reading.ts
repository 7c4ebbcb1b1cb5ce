import type { CalendarDate } from "@keepwright/quantities";
import type { Lot } from "../problem/lot.js";
import type { Weekday } from "../problem/wanted.js";
import type { NotKept } from "./notKept.js";

/** One thing found in what was typed: a lot, with how sure each part of it is. */
export interface UnderstoodLot {
  readonly kind: "lot";
  /** The words it came from, and where they stand in the text (UTF-16 offsets). */
  readonly typed: string;
  readonly from: number;
  readonly to: number;
  readonly lot: Omit<Lot, "id">;
  /** 0…1: how sure the kind and the amount are. Below `askBelow` a question is asked and the lot still stands. */
  readonly sure: { readonly commodity: number; readonly amount: number };
  /** What was taken for granted, by name, so that it can be shown and corrected. */
  readonly assumed: readonly Assumption[];
  readonly questions: readonly Question[];
}

/** Words that could not be understood. Never dropped: they come back as a question. */
export interface NotUnderstood {
  readonly kind: "question";
  readonly typed: string;
  readonly from: number;
  readonly to: number;
  readonly questions: readonly Question[];
}

export type Assumption =
  | "usual amount"
  | "usual size"
  | "usual ripeness"
  | "whole"
  | "spelling"
  | "cut, because half of one"
  | "cut today"
  | "rounded amount"
  | "weight from volume";

export type Question =
  | { readonly ask: "which commodity"; readonly word: string; readonly candidates: readonly string[] }
  | {
      readonly ask: "how much";
      /** "no amount": none, or one that cannot be taken as it stands (a price, a share of nothing told, far too little). */
      readonly reason: "no amount" | "zero" | "negative" | "too large" | "unknown unit" | "contradictory";
      readonly word: string;
      /** Units the kind has a weight for, when the unit typed is not among them. */
      readonly units?: readonly string[];
    }
  | {
      /** Unsafe, spoilt, or not kept as fresh produce here: told with a caution, never planned by itself. */
      readonly ask: "unsafe or other";
      readonly reason: NotKept;
      readonly word: string;
      /** Kinds that what is left may be planned as, once it was looked at; empty where nothing may be. */
      readonly candidates: readonly string[];
    }
  /** A day it is wanted for was told, but not which one, or not of what. */
  | { readonly ask: "when wanted"; readonly word: string }
  /** How long ago it was bought, or cut, was told, but not so that it can be taken: what is cut is not planned until it is known. */
  | { readonly ask: "how old"; readonly word: string; readonly since?: Weekday | CalendarDate }
  | { readonly ask: "what is this"; readonly word: string }
  | { readonly ask: "too many lots"; readonly word: string };

/** Below this, `sure` of a part of a lot calls for a question beside it. Our own scale: see `UnderstoodLot.sure`. */
export const askBelow = 0.5;
/** Most lots in one reading; what comes after is asked about as a whole. */
export const mostLots = 60;

export interface Reading {
  readonly items: readonly (UnderstoodLot | NotUnderstood)[];
}
