import { createHash } from "node:crypto";
import { appendFileSync, existsSync, readFileSync, truncateSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";

/** One finished row: which words and settings its files were made from. */
const entrySchema = z.object({ id: z.string(), made: z.string(), partly: z.boolean() });
export type JournalEntry = z.infer<typeof entrySchema>;

/** The list of finished rows beside the files, by which a run that was killed goes on. */
export interface Journal {
  /** The last entry of an id, if its files were ever finished. */
  readonly found: (id: string) => JournalEntry | undefined;
  readonly add: (entry: JournalEntry) => void;
}

export const journalName = "finished.ndjson";

/** A fingerprint of all that the files of a row are made from: another row, setting or version gives another. */
export const fingerprint = (...parts: readonly unknown[]): string =>
  createHash("sha256").update(JSON.stringify(parts)).digest("hex").slice(0, 32);

function entryOf(line: string): JournalEntry | undefined {
  try {
    return entrySchema.safeParse(JSON.parse(line)).data;
  } catch {
    return undefined;
  }
}

/** Bytes up to the end of the last whole line: what comes after was cut off when a run was killed. */
const wholeLines = (bytes: Buffer): number => bytes.lastIndexOf("\n") + 1;

/** Opens the list in a folder. A last line that was cut off is taken away; a line that cannot be read counts as not there. */
export function openJournal(folder: string): Journal {
  const path = join(folder, journalName);
  const entries = new Map<string, JournalEntry>();
  if (existsSync(path)) {
    const bytes = readFileSync(path);
    const whole = wholeLines(bytes);
    if (whole < bytes.length) truncateSync(path, whole);
    for (const line of bytes.subarray(0, whole).toString("utf8").split("\n")) {
      const entry = entryOf(line);
      if (entry) entries.set(entry.id, entry);
    }
  }
  return {
    found: (id) => entries.get(id),
    add(entry) {
      entries.set(entry.id, entry);
      appendFileSync(path, `${JSON.stringify(entry)}\n`);
    },
  };
}
