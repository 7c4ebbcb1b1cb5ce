import type { WrapId } from "@keepwright/catalogue";
import type { StayEnd } from "@keepwright/physics";
import type { VentSetting } from "./kitchen.js";

/** One stay of a part: its place (index into the problem's places), its wrap, and what ends the stay. */
export interface ProgrammeStay {
  readonly place: number;
  readonly wrap: WrapId;
  readonly until: StayEnd;
}

/** What is done with a part: first its preparation, then where it lies and how it is wrapped. */
export interface Programme {
  /** Leaves are twisted off first; only for a lot that came with its leaves. */
  readonly leavesOff: boolean;
  /** Dried first; only for a lot that came washed. */
  readonly dried: boolean;
  readonly stays: readonly ProgrammeStay[];
}

/** Some portions of one lot, and what is done with them. A lot that is not split is one part. */
export interface Part {
  /** Index into the problem's lots. */
  readonly lot: number;
  /** Portions in this part; the parts of a lot add up to its portions. */
  readonly portions: number;
  readonly programme: Programme;
}

/**
 * A part like another, with another programme, and a programme like another, with other stays. Written out without spreads: the engine gives every object
 * made by a spread that is then written over a hidden class of its own, and whatever reads one is slow from then on.
 */
export const partDoing = ({ lot, portions }: Part, programme: Programme): Part => ({
  lot,
  portions,
  programme,
});

/** See `partDoing`. */
export const programmeWith = (
  { leavesOff, dried }: Pick<Programme, "leavesOff" | "dried">,
  stays: readonly ProgrammeStay[],
): Programme => ({ leavesOff, dried, stays });

/** Everything the planner decides except the eating days, which follow from it. */
export interface Choice {
  /** Parts in the order of their lots. */
  readonly parts: readonly Part[];
  /** A setting for each of the problem's vents that can be set. */
  readonly vents: readonly VentSetting[];
}

const keys = new WeakMap<Programme, string>();

/** A text that is equal for equal programmes. Spelled out once for each: a search asks for the same ones at every step. */
export function programmeKey(programme: Programme): string {
  const known = keys.get(programme);
  if (known !== undefined) return known;
  const key = spelledOut(programme);
  keys.set(programme, key);
  return key;
}

const spelledOut = (programme: Programme): string =>
  `${programme.leavesOff ? "off " : ""}${programme.dried ? "dry " : ""}${programme.stays
    .map(
      (stay) => `${stay.place}/${stay.wrap}/${typeof stay.until === "object" ? stay.until.day : stay.until}`,
    )
    .join(" > ")}`;

/** A text that is equal for equal choices. */
export const choiceKey = (choice: Choice): string =>
  `${choice.parts.map((part) => `${part.lot}:${part.portions}:${programmeKey(part.programme)}`).join("; ")} | ${choice.vents.join(",")}`;
