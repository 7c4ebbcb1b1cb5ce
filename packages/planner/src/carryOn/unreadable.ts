import type { FindingCode, FindingValues } from "../problem/findingCode.js";

/** A line that cannot be read, with why. */
export class Unreadable extends Error {
  readonly remedy: string;
  readonly code: FindingCode;
  readonly values: FindingValues;
  constructor(code: FindingCode, value: string, remedy: string, values: FindingValues = {}) {
    super(value);
    this.code = code;
    this.remedy = remedy;
    this.values = values;
  }
}
