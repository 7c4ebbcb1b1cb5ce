import type { Solver } from "@keepwright/planner";

/** The only way in and out: everything a command reads from the machine and prints to it. Tests bring their own. */
export interface Door {
  /** Print to standard output and standard error. */
  out(text: string): void;
  err(text: string): void;
  readonly outIsTerminal: boolean;
  readonly errIsTerminal: boolean;
  /** Whether the path names something, and whether that is a folder. */
  look(path: string): "file" | "folder" | "nothing";
  readFile(path: string): Uint8Array;
  readStandardInput(): Uint8Array;
  /** Writes a file anew, over one of that name. */
  writeFile(path: string, bytes: Uint8Array): void;
  /** Makes a folder, and those it lies in; nothing where it is there. */
  makeFolder(path: string): void;
  /** Takes a file away; nothing where there is none. */
  removeFile(path: string): void;
  /** Today on this machine's calendar, year-month-day. */
  today(): string;
  /** Solves linear programmes; there only where the words ask for a proof, since loading it takes its time and cannot be done at once. */
  readonly solver?: Solver | undefined;
  /** This moment, UTC to the second, as in ISO 8601: 2026-06-13T08:00:00Z. */
  now(): string;
  /** Shows a line while something long is worked out; the function returned takes it away again. */
  showProgress(line: string): () => void;
}
