/** A page that cannot be set as it should be: a character that no font here has, or a fault of the template. */
export class PaperError extends Error {
  /** Characters that cannot be printed; empty where it is something else. */
  readonly characters: readonly string[];
  constructor(message: string, characters: readonly string[] = []) {
    super(message);
    this.name = "PaperError";
    this.characters = characters;
  }
}
