import { simulate } from "@keepwright/physics";
import type { Part } from "../problem/programme.js";
import { simulationOf } from "../problem/simulationOf.js";
import { safeDaysLeft } from "../rules/safeTime.js";
import type { Evaluation } from "../search/evaluate.js";
import { longestNamed } from "../search/plannedLots.js";
import type { Prepared } from "../search/prepare.js";
import type { BlamedNeighbour } from "./judgement.js";

/** What the neighbours of a lot do to its middle life [d]. */
export interface NeighboursEffect {
  /** With all neighbours, and with none. */
  readonly here: number;
  readonly alone: number;
  readonly neighbours: readonly BlamedNeighbour[];
  readonly joint: boolean;
}

/** Days lost to a neighbour that are worth naming: this share of the life with no neighbour. Declared. */
const worthNaming = 0.02;

/** What neighbours take one by one adds up to what they take together within this share of it, or this many days. Declared. */
const addsUp = { share: 0.1, days: 0.1 } as const;

const days = (value: number) => ({ value, unit: "d" as const });

/** Simulates an arrangement again with some lots left out, everything else lying as it lies. Nothing is estimated. */
export class NeighbourTrial {
  readonly #prepared: Prepared;
  readonly #now: Evaluation;
  readonly #lives = new Map<string, ReadonlyMap<number, number>>();

  constructor(prepared: Prepared, now: Evaluation) {
    this.#prepared = prepared;
    this.#now = now;
  }

  /** What each neighbour does to a lot, left out by itself and as the only one there. */
  effectOn(lot: number): NeighboursEffect {
    const others = this.#prepared.problem.lots.map(({ index }) => index).filter((index) => index !== lot);
    const here = this.#life(lot, () => true);
    const alone = this.#life(lot, (other) => other === lot);
    const tried = others.map((other) => this.#blamed(lot, other, here, alone));
    const oneByOne = tried.reduce((sum, { daysLost }) => sum + daysLost.value, 0);
    const together = alone - here;
    const harm = ({ daysLost, daysLostBesideItAlone }: BlamedNeighbour): number =>
      Math.max(daysLost.value, daysLostBesideItAlone.value);
    return {
      here,
      alone,
      neighbours: tried.filter((one) => harm(one) > worthNaming * alone).sort((a, b) => harm(b) - harm(a)),
      joint: Math.abs(together - oneByOne) > Math.max(addsUp.days, addsUp.share * Math.abs(together)),
    };
  }

  #blamed(lot: number, other: number, here: number, alone: number): BlamedNeighbour {
    const without = this.#life(lot, (index) => index !== other);
    const besideIt = this.#life(lot, (index) => index === lot || index === other);
    const bound = this.#prepared.problem.lots[other]!;
    return {
      lot: bound.lot.id,
      commodity: bound.commodity.id,
      lifeWithout: days(without),
      daysLost: days(without - here),
      daysLostBesideItAlone: days(alone - besideIt),
    };
  }

  /** Middle life [d] of a lot among those that are kept, of one in parts the mean by portions. */
  #life(lot: number, kept: (lot: number) => boolean): number {
    const parts = this.#now.choice.parts.filter((part) => kept(part.lot));
    const key = [...new Set(parts.map((part) => part.lot))].join(" ");
    const lives = this.#lives.get(key) ?? this.#livesOf(parts);
    this.#lives.set(key, lives);
    return lives.get(lot)!;
  }

  #livesOf(parts: readonly Part[]): ReadonlyMap<number, number> {
    const { problem } = this.#prepared;
    const simulation = simulationOf(problem, { parts, vents: this.#now.choice.vents });
    const outcomes = simulate({ ...simulation, outcome: "ends" }).lots;
    const sums = new Map<number, number>();
    parts.forEach((part, index) => {
      const lot = problem.lots[part.lot]!;
      const { endDay, stayStarts } = outcomes[index]!;
      const safe = Math.max(0, safeDaysLeft(problem, lot, part.programme, stayStarts));
      const life = Math.min(endDay, longestNamed, safe);
      sums.set(part.lot, (sums.get(part.lot) ?? 0) + (life * part.portions) / lot.portions);
    });
    return sums;
  }
}
