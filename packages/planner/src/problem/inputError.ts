import type { ToldFinding } from "./findingCode.js";

/** One thing wrong with what was given: where, what stands there, and what to do about it. */
export interface Finding {
  /** The thing concerned, as the person would name it: `place "left drawer"`, `lot "a"`. */
  readonly thing: string;
  /** What stands there, with its unit. */
  readonly value: string;
  /** What would work. */
  readonly remedy: string;
  /** The same as data, to be told in any language; absent of what nobody who enters something can bring about. */
  readonly told?: ToldFinding;
}

export const sentence = (finding: Finding): string => `${finding.thing}: ${finding.value}. ${finding.remedy}`;

/** Input that no plan can be made from. The message holds every finding, one a line; `findings` holds them as data. */
export class InputError extends Error {
  readonly findings: readonly Finding[];
  constructor(findings: readonly Finding[]) {
    super(findings.map(sentence).join("\n"));
    this.name = new.target.name;
    this.findings = findings;
  }
}

/** The description of the kitchen is unreadable or contradicts itself. */
export class KitchenError extends InputError {}
/** The haul is empty, unreadable, or names what the catalogue does not know. */
export class HaulError extends InputError {}
/** The description of how things lie now is unreadable, or names what is not there. */
export class ArrangementError extends InputError {}
/** What happened since a plan was made is unreadable, or cannot have happened. */
export class HappenedError extends InputError {}
/** The plan that is to be carried on is unreadable, or not one for its haul and kitchen. */
export class PlanError extends InputError {}
/** The household's numbers are unreadable. */
export class HouseholdError extends InputError {}
