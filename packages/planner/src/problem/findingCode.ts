import { fileFindingCodes } from "./fileFindingCodes.js";

/** What can be wrong with what a household says, by name, so that it is told in any language: words for each stand in `handout`. */
export const findingCodes = [
  "account line not understood",
  "account words not understood",
  "account kind not known",
  "account which kind",
  "account kind not in plan",
  "account cut kind not in plan",
  "account without age",
  "came home without age",
  "account without amount",
  "account of a day to come",
  "account of a part",
  "account day not clear",
  "account without a known place",
  "account without hours",
  "account without since",
  "account of what is not so",
  "account of both",
  "account of its look",
  "no such lot",
  "lot of several kinds",
  "day not between",
  "day not of the calendar",
  "does not ripen",
  "came cut",
  "cut on which day",
  "hours of what is whole",
  "warm since when",
  "no such wrap",
  "no such place",
  "pieces not counted",
  "more eaten than there was",
  "more thrown out than there was",
  "more given away than there was",
  "more frozen than there was",
  "more left than there was",
  "more cut left than there was",
  "eaten by the plan",
  "today not of the calendar",
  "today before the plan",
  "today long after the plan",
  "plan over",
  "days to plan for",
  "nothing left",
  "wanted on no day",
  "wanted before the first day",
  "wanted too far ahead",
  ...fileFindingCodes,
] as const;
export type FindingCode = (typeof findingCodes)[number];

/** A name with the id by which it is written in files. */
export interface NamedId {
  readonly id: string;
  readonly name: string;
}

/** What a finding speaks of, by the names of the placeholders in its words; what the person wrote is quoted. `kinds`: ids of the catalogue; `places`: of the kitchen. */
export interface FindingValues {
  readonly [name: string]: string | number | undefined | readonly string[] | readonly NamedId[];
  readonly kinds?: readonly string[];
  readonly places?: readonly NamedId[];
  readonly lots?: readonly string[];
}

export interface ToldFinding {
  readonly code: FindingCode;
  readonly values: FindingValues;
}

/** The code and values of a finding, to be spread into it. */
export const told = (code: FindingCode, values: FindingValues = {}): { readonly told: ToldFinding } => ({
  told: { code, values },
});
