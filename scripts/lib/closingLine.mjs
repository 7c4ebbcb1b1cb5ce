import { existsSync, readFileSync } from "node:fs";
import { root } from "./run.mjs";

/** One plain line that adds up the reports of the test runs: "N passed, N failed, N skipped". */
export function closingLine(reports) {
  const found = reports.filter((path) => existsSync(`${root}/${path}`));
  const sums = found.map((path) => JSON.parse(readFileSync(`${root}/${path}`, "utf8")));
  const add = (key) => sums.reduce((sum, report) => sum + (report[key] ?? 0), 0);
  return `${add("numPassedTests")} passed, ${add("numFailedTests")} failed, ${add("numPendingTests") + add("numTodoTests")} skipped`;
}
