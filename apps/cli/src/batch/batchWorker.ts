import { parentPort, workerData } from "node:worker_threads";
import { filesOf, writeWhole } from "./files.js";
import { makeSheet } from "./makeSheet.js";
import { problemsOf, type RowOutcome } from "./outcome.js";
import type { BatchRow } from "./row.js";
import type { BatchSettings } from "./settings.js";

export interface RowTask {
  readonly line: number;
  readonly id: string;
  readonly row: BatchRow;
}

const { settings, folder } = workerData as { settings: BatchSettings; folder: string };

function done({ line, id, row }: RowTask): RowOutcome {
  try {
    const { pdf, plan, pages, lots, questions } = makeSheet(row, settings);
    const files = filesOf(folder, id);
    writeWhole(files.plan, plan);
    writeWhole(files.pdf, pdf);
    return { line, id, outcome: "made", pages, lots, questions };
  } catch (error) {
    return { line, id, outcome: "failed", problems: problemsOf(error) };
  }
}

parentPort?.on("message", (task: RowTask) => parentPort?.postMessage(done(task)));
