import type { Door } from "../../src/door/door.js";

/** A door onto a machine that exists only in the test: files by name, folders, and what was printed. */
export interface FakeDoor extends Door {
  readonly printed: { out: string; err: string };
  /** Files that were written, by name. */
  readonly written: Record<string, Uint8Array>;
}

export interface FakeMachine {
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
  readonly folders?: readonly string[];
  readonly input?: string | Uint8Array;
  readonly today?: string;
}

const bytes = (content: string | Uint8Array) =>
  typeof content === "string" ? new TextEncoder().encode(content) : content;

export function fakeDoor({
  files = {},
  folders = [],
  input = "",
  today = "2026-06-13",
}: FakeMachine = {}): FakeDoor {
  const printed = { out: "", err: "" };
  const written: Record<string, Uint8Array> = {};
  return {
    printed,
    written,
    writeFile: (path, content) => {
      written[path] = content;
    },
    makeFolder: () => undefined,
    removeFile: (path) => {
      delete written[path];
    },
    out: (text) => {
      printed.out += text;
    },
    err: (text) => {
      printed.err += text;
    },
    outIsTerminal: false,
    errIsTerminal: false,
    look: (path) => (Object.hasOwn(files, path) ? "file" : folders.includes(path) ? "folder" : "nothing"),
    readFile: (path) => bytes(files[path] ?? ""),
    readStandardInput: () => bytes(input),
    today: () => today,
    now: () => `${today}T08:00:00Z`,
    showProgress: () => () => undefined,
  };
}

export const controlCharacters = /(?!\n)\p{Cc}|[\u200e\u200f\u202a-\u202e\u2066-\u2069]/u;
