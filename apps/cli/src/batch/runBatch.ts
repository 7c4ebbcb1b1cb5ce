import { accessSync, constants, mkdirSync } from "node:fs";
import type { HandoutContext } from "@keepwright/handout";
import type { Door } from "../door/door.js";
import { type ExitCode, exitCodes } from "../exitCodes.js";
import { quoted, userError } from "../userError.js";
import { version } from "../version.js";
import type { RowTask } from "./batchWorker.js";
import { crew } from "./crew.js";
import { haveFiles } from "./files.js";
import { fingerprint, type Journal, openJournal } from "./journal.js";
import { countLines, linesOf, type NumberedLine } from "./lines.js";
import type { RowOutcome } from "./outcome.js";
import { checkRow } from "./row.js";
import type { BatchSettings } from "./settings.js";
import { batchTeller, type Teller } from "./teller.js";

export interface BatchRun {
  /** The file of rows, or "-" for standard input. */
  readonly path: string;
  readonly folder: string;
  readonly workers: number;
  readonly settings: BatchSettings;
  readonly json: boolean;
  readonly context: HandoutContext;
}

/** Names of files that differ by case or composition alone are one name on some disks. */
const sameName = (id: string): string => id.normalize("NFC").toLocaleLowerCase("en");

const doubled = (id: string, first: number) => ({
  thing: `row id “${id}”`,
  value: `line ${first} has it too`,
  remedy: "Give each row an id of its own",
});

/** Everything one run knows of its rows. */
interface Rows {
  readonly settings: BatchSettings;
  readonly folder: string;
  readonly journal: Journal;
  /** Line of each id so far. */
  readonly seen: Map<string, number>;
}

/** What is to be done with a line: a task; or its outcome at once, where it is wrong or its files are there already. */
function sorted({ line, text }: NumberedLine, rows: Rows): RowTask | RowOutcome {
  const check = checkRow(text, line);
  if (!check.ok) return { line, id: check.id ?? `row-${line}`, outcome: "failed", problems: check.problems };
  const { id, row } = check;
  const first = rows.seen.get(sameName(id));
  if (first !== undefined) return { line, id, outcome: "failed", problems: [doubled(id, first)] };
  rows.seen.set(sameName(id), line);
  const entry = rows.journal.found(id);
  const made = madeFrom(row, rows.settings);
  if (entry?.made === made && haveFiles(rows.folder, id))
    return { line, id, outcome: "kept", partly: entry.partly };
  return { line, id, row };
}

const madeFrom = (row: RowTask["row"], settings: BatchSettings): string =>
  fingerprint(version(), settings, row);

const isTask = (each: RowTask | RowOutcome): each is RowTask => !("outcome" in each);

async function deal(run: BatchRun, rows: Rows, teller: Teller): Promise<void> {
  const { workers, settings, folder } = run;
  const hands = crew(workers, settings, folder, (outcome, { row }) => {
    if (outcome.outcome === "made") {
      rows.journal.add({
        id: outcome.id,
        made: madeFrom(row, settings),
        partly: outcome.questions.length > 0,
      });
    }
    teller.tell(outcome);
  });
  for await (const numbered of linesOf(run.path)) {
    const next = sorted(numbered, rows);
    if (isTask(next)) await hands.give(next);
    else teller.tell(next);
  }
  await hands.finish();
}

function usable(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true });
    accessSync(folder, constants.W_OK);
  } catch (error) {
    const { code = "unknown fault" } = error as NodeJS.ErrnoException;
    throw userError(
      `--sheets ${quoted(folder)}`,
      `it cannot be written to (${code})`,
      "Check the folder, and that you may write there.",
    );
  }
}

/** Makes a page and a plan of every row of a file, on several workers. Throws UserError where the folder cannot be used. */
export async function runBatch(door: Door, run: BatchRun): Promise<ExitCode> {
  usable(run.folder);
  const all = await countLines(run.path);
  const clock = () => performance.now();
  const teller = batchTeller(door, { context: run.context, all, json: run.json, clock });
  const rows: Rows = {
    settings: run.settings,
    folder: run.folder,
    journal: openJournal(run.folder),
    seen: new Map(),
  };
  await deal(run, rows, teller);
  const { failed, partly } = teller.end(run.folder);
  return failed + partly > 0 ? exitCodes.partlyUnderstood : exitCodes.done;
}
