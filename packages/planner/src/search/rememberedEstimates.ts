import type { LotOutcome } from "@keepwright/physics";
import type { Part, Programme } from "../problem/programme.js";
import type { PartCosts } from "../schedule/partCosts.js";
import type { Evaluation } from "./evaluate.js";
import type { PartChange } from "./judge.js";
import type { Prepared } from "./prepare.js";

/** What a change was once estimated to do, in a form that other days at the table and other room do not make wrong. */
export interface RememberedEstimate {
  /** Of each changed part that stays, in the order of the changes: what becomes of it, and what it costs. */
  readonly outcomes: readonly LotOutcome[];
  readonly costs: readonly PartCosts[];
  /** Change of the objective [g] beyond the changed parts' own prices: what they do to others. */
  readonly toOthers: number;
  /** The air it was estimated in. */
  readonly air: Evaluation["trajectory"]["inner"]["air"];
}

/** Shares by which ethylene, and vapour of what is missing to saturation, may differ on any day for an old estimate still to hold. */
const sameEthylene = 0.05;
const sameVapour = 0.02;

/**
 * Estimates of a search, by what is changed and by what lies in the boxes it leaves and goes to. Most of what is estimated is no gain, and much of
 * it is asked again after something elsewhere has changed.
 */
export class RememberedEstimates {
  readonly #prepared: Prepared;
  readonly #known = new Map<string, RememberedEstimate>();
  readonly #names = new Map<Programme, number>();
  readonly #contents = new WeakMap<Evaluation, Map<number, string>>();

  constructor(prepared: Prepared) {
    this.#prepared = prepared;
  }

  /** A text that is equal for equal changes among equal neighbours. */
  key(current: Evaluation, changes: readonly PartChange[]): string {
    const named = changes.map(({ part, like, to }) => {
      const before = current.choice.parts[like]!;
      return `${part === "new" ? "new " : ""}${this.#named(before)}>${to ? this.#named(to) : ""}`;
    });
    const contents = this.#contentsOf(current);
    const boxes = [...this.#boxes(current, changes)].map((box) => contents.get(box) ?? "");
    return `${named.join(";")}|${boxes.join("|")}`;
  }

  find(key: string, current: Evaluation, changes: readonly PartChange[]): RememberedEstimate | undefined {
    const known = this.#known.get(key);
    if (!known) return undefined;
    for (const box of this.#boxes(current, changes)) if (!sameAir(known, current, box)) return undefined;
    return known;
  }

  keep(key: string, estimate: RememberedEstimate): void {
    this.#known.set(key, estimate);
  }

  #named({ lot, portions, programme }: Part): string {
    const name = this.#names.get(programme) ?? this.#names.size;
    this.#names.set(programme, name);
    return `${lot}:${portions}:${name}`;
  }

  /** Boxes of air the changed parts lie in, before and after; nothing gathers in the open room. */
  #boxes({ choice }: Evaluation, changes: readonly PartChange[]): Set<number> {
    const { places } = this.#prepared.problem;
    const boxes = new Set<number>();
    for (const { like, to } of changes) {
      for (const { programme } of to ? [choice.parts[like]!, to] : [choice.parts[like]!]) {
        for (const { place } of programme.stays) {
          const { box } = places[place]!;
          if (box !== "room") boxes.add(box);
        }
      }
    }
    return boxes;
  }

  /** What lies in each box of air, and how its vent is set. */
  #contentsOf(current: Evaluation): Map<number, string> {
    const known = this.#contents.get(current);
    if (known) return known;
    const { places } = this.#prepared.problem;
    const contents = new Map<number, string>();
    for (const { box, vent } of places) {
      if (box !== "room") contents.set(box, vent === undefined ? "" : `${current.choice.vents[vent]}`);
    }
    for (const part of current.choice.parts) {
      const boxes = new Set(part.programme.stays.map(({ place }) => places[place]!.box));
      for (const box of boxes) {
        if (box !== "room") contents.set(box, `${contents.get(box)} ${this.#named(part)}`);
      }
    }
    this.#contents.set(current, contents);
    return contents;
  }
}

/** Whether a box has, on every day, nearly the air that was there when something was found out. */
export function sameAir(
  { air: was }: Pick<RememberedEstimate, "air">,
  { trajectory }: Evaluation,
  box: number,
): boolean {
  const { air: is, tree } = trajectory.inner;
  for (let entry = box; entry < is.density.length; entry += is.width) {
    const missing = Math.max(tree.saturationDensity[box]! - is.density[entry]!, 0.01 * is.density[entry]!);
    if (Math.abs(is.density[entry]! - was.density[entry]!) > sameVapour * missing) return false;
    if (Math.abs(is.ethylene[entry]! - was.ethylene[entry]!) > sameEthylene * is.ethylene[entry]!)
      return false;
  }
  return true;
}
