import { lineRuns, markedLine } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { foreign } from "../../src/words/markedLine.js";

describe("words in another language than their line", () => {
  const line = markedLine(
    `Fuente: ${foreign("es-419", "en", "A book")} (${foreign("es-419", "en", "page 3")}).`,
  );

  it("are told beside the line, which holds no mark", () => {
    expect(line.text).toBe("Fuente: A book (page 3).");
    expect(line.passages).toEqual([
      { text: "A book", language: "en" },
      { text: "page 3", language: "en" },
    ]);
  });
  it("are cut out of it in order, and put together make the line", () => {
    const runs = lineRuns(line);
    expect(runs.map(({ language }) => language)).toEqual([undefined, "en", undefined, "en", undefined]);
    expect(runs.map(({ text }) => text).join("")).toBe(line.text);
  });
  it("are not marked in a line of their own language, whatever its region", () => {
    expect(markedLine(foreign("en-GB", "en", "A book"))).toEqual({ text: "A book" });
    expect(markedLine(foreign("en-US", "es", "Un libro")).passages).toEqual([
      { text: "Un libro", language: "es" },
    ]);
  });
});
