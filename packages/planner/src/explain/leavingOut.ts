import { simulate } from "@keepwright/physics";
import type { Choice } from "../problem/programme.js";
import { simulationOf } from "../problem/simulationOf.js";
import { lifeLeft } from "../rules/lifeLeft.js";
import { safeDaysLeft } from "../rules/safeTime.js";
import { longestNamed } from "../search/plannedLots.js";
import type { Prepared } from "../search/prepare.js";
import type { Neighbour, Neighbourhood } from "./neighbourhood.js";

/** Days lost to a neighbour that are worth naming: this share of the life here or, where that is longer, alone. Declared: decision 0107. */
export const worthNaming = 0.02;

/** Parts add up to a whole within this share of it, or this many days. Declared: decision 0107. */
export const addsUp = { share: 0.1, days: 0.1 } as const;

/** Whether parts do not add up to the whole [d]. */
const isJoint = (whole: number, parts: number): boolean =>
  Math.abs(whole - parts) > Math.max(addsUp.days, addsUp.share * Math.abs(whole));

const days = (value: number) => ({ value, unit: "d" as const });

/** What is left out of a simulation: whole parts, or what some parts give to the air. All by their place in the list of parts. */
interface LeftOut {
  readonly gone?: readonly number[];
  readonly ethylene?: readonly number[];
  readonly vapour?: readonly number[];
}

/** Parts of one lot, as neighbours of something. */
interface Group {
  readonly lot: number;
  readonly parts: readonly number[];
}

/** The most that a neighbour can be said to take [d]. */
const most = ({ daysLost, daysLostBesideItAlone, byEthylene, byVapour }: Neighbour): number =>
  Math.max(daysLost.value, daysLostBesideItAlone.value, byEthylene.value, byVapour.value);

const sum = (neighbours: readonly Neighbour[]): number =>
  neighbours.reduce((total, { daysLost }) => total + daysLost.value, 0);

/** Simulates a choice again with something left out, all else lying as it lies. Nothing is estimated; what was simulated is remembered. */
export class LeavingOut {
  readonly #prepared: Prepared;
  readonly #choice: Choice;
  readonly #lives = new Map<string, ReadonlyMap<number, number>>();

  constructor(prepared: Prepared, choice: Choice) {
    this.#prepared = prepared;
    this.#choice = choice;
  }

  /** Middle life [d] of some parts of one lot, the mean by portions, with something left out. */
  life(subject: readonly number[], leftOut: LeftOut = {}): number {
    const key = JSON.stringify(leftOut);
    const lives = this.#lives.get(key) ?? this.#simulated(leftOut);
    this.#lives.set(key, lives);
    const portions = (part: number): number => this.#choice.parts[part]!.portions;
    const all = subject.reduce((total, part) => total + portions(part), 0);
    return subject.reduce((total, part) => total + lives.get(part)! * portions(part), 0) / all;
  }

  /** The same with no neighbour at all. */
  lifeAlone(subject: readonly number[]): number {
    return this.life(subject, { gone: this.#others(subject) });
  }

  /** What each neighbour does to some parts of one lot: left out by itself, its ethylene and its vapour left out, and as the only one there. */
  neighbourhood(subject: readonly number[]): Neighbourhood {
    const here = this.life(subject);
    const others = this.#others(subject);
    const alone = this.lifeAlone(subject);
    const tried = this.#groups(others).map((group) => this.#neighbour(subject, group, here, alone));
    const worth = worthNaming * Math.max(alone, here);
    const helpers = tried
      .filter(({ daysLost }) => daysLost.value < -worth)
      .sort((a, b) => a.daysLost.value - b.daysLost.value);
    const neighbours = tried
      .filter((one) => most(one) > worth && !helpers.includes(one))
      .sort((a, b) => most(b) - most(a));
    const rest = tried.filter((one) => !helpers.includes(one) && !neighbours.includes(one));
    return {
      lifeAlone: days(alone),
      lostToNeighbours: days(alone - here),
      lostByEthylene: days(this.life(subject, { ethylene: others }) - here),
      lostByVapour: days(this.life(subject, { vapour: others }) - here),
      neighbours,
      helpers,
      lostToRest: days(sum(rest)),
      joint: isJoint(alone - here, sum(tried)),
    };
  }

  #neighbour(subject: readonly number[], { lot, parts }: Group, here: number, alone: number): Neighbour {
    const without = this.life(subject, { gone: parts });
    const byEthylene = this.life(subject, { ethylene: parts }) - here;
    const byVapour = this.life(subject, { vapour: parts }) - here;
    const besideIt = this.life(subject, {
      gone: this.#others(subject).filter((part) => !parts.includes(part)),
    });
    const bound = this.#prepared.problem.lots[lot]!;
    return {
      lot: bound.lot.id,
      commodity: bound.commodity.id,
      lifeWithout: days(without),
      daysLost: days(without - here),
      byEthylene: days(byEthylene),
      byVapour: days(byVapour),
      jointMeans: isJoint(without - here, byEthylene + byVapour),
      daysLostBesideItAlone: days(alone - besideIt),
    };
  }

  #others(subject: readonly number[]): number[] {
    return this.#choice.parts.flatMap((_, part) => (subject.includes(part) ? [] : [part]));
  }

  /** Neighbours lot by lot; the rest of the subject's own lot is one of them. */
  #groups(others: readonly number[]): Group[] {
    const lots = new Map<number, number[]>();
    for (const part of others) {
      const { lot } = this.#choice.parts[part]!;
      lots.set(lot, [...(lots.get(lot) ?? []), part]);
    }
    return [...lots].map(([lot, parts]) => ({ lot, parts }));
  }

  /** Middle lives [d] by part of those that are left, as a plan tells them: none past its safe time. */
  #simulated({ gone = [], ethylene = [], vapour = [] }: LeftOut): ReadonlyMap<number, number> {
    const { problem } = this.#prepared;
    const whole = simulationOf(problem, this.#choice);
    const present = whole.lots.flatMap((_, part) => (gone.includes(part) ? [] : [part]));
    const lots = present.map((part) => ({
      ...whole.lots[part]!,
      withheld: { ethylene: ethylene.includes(part), vapour: vapour.includes(part) },
    }));
    const outcomes = simulate({ ...whole, lots, outcome: "ends" }).lots;
    return new Map(
      present.map((index, at) => {
        const part = this.#choice.parts[index]!;
        const lot = problem.lots[part.lot]!;
        const { endDay, stayStarts } = outcomes[at]!;
        const spread = this.#prepared.spread(part.lot, part.programme);
        const { middle } = lifeLeft(lot, { endDay: Math.min(endDay, longestNamed) }, spread);
        const safe = safeDaysLeft(problem, lot, part.programme, stayStarts);
        return [index, Math.min(middle, Math.max(0, safe))];
      }),
    );
  }
}
