/** The line of the person's list that a lot of a plan was read from. */
export interface LotLine {
  /** Id of the line. */
  readonly line: string;
  /** Tells lots of one line apart that lay apart when the plan was carried on; empty for the first. */
  readonly more: string;
}

/** By the ids of lots. A lot that is not in it has its line's id. */
export type LotLines = Readonly<Record<string, LotLine>>;

export const lineOfLot = (lines: LotLines | undefined, lot: string): LotLine =>
  lines && Object.hasOwn(lines, lot) ? lines[lot]! : { line: lot, more: "" };
