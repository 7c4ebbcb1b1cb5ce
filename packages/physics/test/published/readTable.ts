import { readFileSync } from "node:fs";

/** Rows of a comma-separated table beside the tests, by column name. Lines that begin with # are its citation. A cell may be quoted to hold commas. */
export function readTable(name: string): Record<string, string>[] {
  const text = readFileSync(new URL(`./${name}.csv`, import.meta.url), "utf8");
  const lines = text.split("\n").filter((line) => line.trim() !== "" && !line.startsWith("#"));
  const cells = (line: string) =>
    [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map((match) => (match[1] ?? match[2] ?? "").trim());
  const [head = "", ...body] = lines;
  const names = cells(head);
  return body.map((line) =>
    Object.fromEntries(cells(line).map((cell, column) => [names[column] ?? "", cell])),
  );
}
