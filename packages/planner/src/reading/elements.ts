import type { Mark, NotKept } from "./notKept.js";
import type { ReadNumber } from "./numbers.js";
import type { Size } from "./plainWords.js";
import type { StateChange } from "./stateWords.js";
import type { Unit } from "./units.js";

interface Placed {
  /** First token, and the token after the last. */
  readonly first: number;
  readonly next: number;
}

/** A name of produce as found: the kinds it may mean and how sure that is. */
export interface FoundName {
  readonly kinds: readonly string[];
  readonly sure: number;
  readonly misspelt: boolean;
  /** Too far from any name to be taken; the kinds are only worth asking about. */
  readonly unsure?: boolean;
  /** Singular and not also plural: "apple", which may be the first half of "apple juice". */
  readonly singular: boolean;
  /** Several are named: "onions". */
  readonly plural: boolean;
  /** "Baby artichokes". */
  readonly baby?: true;
  /** Of several kinds, the one most people mean. */
  readonly usual?: string;
  /** The name of something that is not kept as fresh produce here ("bean sprouts"); no kinds then. */
  readonly notKept?: NotKept;
  /** Surely the name of something that is no kind of the catalogue ("olives", "taro leaves"); no kinds then. */
  readonly noKind?: true;
  /** States that the name itself tells: "washed salad leaves". */
  readonly implied: readonly StateChange[];
}

/** Tokens gathered into parts that mean something. */
export type Element = Placed &
  (
    | {
        readonly type: "number";
        readonly number: ReadNumber;
        readonly negative: boolean;
        readonly times: boolean;
      }
    | { readonly type: "unit"; readonly unit: Unit }
    | { readonly type: "name"; readonly name: FoundName }
    | { readonly type: "state"; readonly change: StateChange }
    /** In what it came ("bagged", "in a clamshell"). `behind`: it speaks of the name before it. */
    | { readonly type: "package"; readonly unit: Unit; readonly behind: boolean }
    | { readonly type: "size"; readonly size: Size }
    | { readonly type: "descriptor"; readonly roughly: boolean }
    | {
        readonly type: "not fresh";
        readonly mark: Mark;
        /** Does it speak of the name beside it ("rotten"), rather than name a food itself ("juice")? */
        readonly remark: boolean;
      }
    /** `or`: what it joins may be one or the other. */
    | { readonly type: "connective"; readonly or?: boolean }
    /** Denies the name that follows: "not", "without". */
    | { readonly type: "negation" }
    | {
        readonly type: "separator";
        readonly mark: "soft" | "hyphen" | "hard" | "open" | "close";
        /** A joining word: "and". */
        readonly word?: true;
      }
    /** `markUp`: a tag, or a script with its tags; it parts nothing. */
    | { readonly type: "unknown"; readonly markUp?: boolean }
  );

export type ElementOf<Type extends Element["type"]> = Extract<Element, { type: Type }>;

export const isType =
  <Type extends Element["type"]>(type: Type) =>
  (element: Element): element is ElementOf<Type> =>
    element.type === type;

/** What the states among some elements say, in order. */
export const statesOf = (elements: readonly Element[]): StateChange[] =>
  elements.flatMap((element) => (element.type === "state" ? [element.change] : []));
