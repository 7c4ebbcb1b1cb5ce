import type { Improvements, Judgement, LotReason, Plan, Reading, WorthBuying } from "@keepwright/planner";

/** A plan as it is written out: the plan itself and, beside it, what was understood of the haul it is for and, where asked, why things lie where they do. */
export interface WrittenPlan extends Plan {
  readonly reading: Reading;
  readonly why?: readonly LotReason[];
}

export const writtenPlan = (plan: Plan, reading: Reading, why?: readonly LotReason[]): WrittenPlan => ({
  ...plan,
  reading,
  ...(why && { why }),
});

/** A judgement as it is written out, with what was understood of the haul it is for. */
export interface WrittenJudgement extends Judgement {
  readonly reading: Reading;
}

export const writtenJudgement = (judgement: Judgement, reading: Reading): WrittenJudgement => ({
  ...judgement,
  reading,
});

/** What changes would save and, beside it, what was understood of the haul they are for. */
export interface WrittenImprovements extends Improvements {
  readonly reading: Reading;
}

export const writtenImprovements = (improvements: Improvements, reading: Reading): WrittenImprovements => ({
  ...improvements,
  reading,
});

/** What is worth buying of a list and, beside it, what was understood of the list. */
export interface WrittenWorthBuying extends WorthBuying {
  readonly reading: Reading;
}

export const writtenWorthBuying = (told: WorthBuying, reading: Reading): WrittenWorthBuying => ({
  ...told,
  reading,
});

/** Characters that could steer a terminal, escaped. */
const escaped = (json: string): string =>
  json.replace(
    /[\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

/** JSON text, two spaces deep, ending with a line break. Characters that could steer a terminal are escaped. */
export const jsonText = (value: unknown): string => `${escaped(JSON.stringify(value, null, 2))}\n`;

/** JSON text on one line, for one object a line; escaped likewise. */
export const jsonLine = (value: unknown): string => `${escaped(JSON.stringify(value))}\n`;
