/** A line that cannot be read, with why. */
export class Unreadable extends Error {
  readonly remedy: string;
  constructor(value: string, remedy: string) {
    super(value);
    this.remedy = remedy;
  }
}
