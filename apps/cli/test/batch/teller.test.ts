import { catalogue } from "@keepwright/catalogue";
import { handoutContext } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { batchTeller } from "../../src/batch/teller.js";
import { fakeDoor } from "../support/fakeDoor.js";

const made = (line: number, questions: string[] = []) =>
  ({ line, id: `box-${line}`, outcome: "made", pages: 1, lots: 3, questions }) as const;
const failed = (line: number) =>
  ({
    line,
    id: `box-${line}`,
    outcome: "failed",
    problems: [{ thing: "haul", value: "it is empty", remedy: "Write it" }],
  }) as const;

interface Told {
  readonly terminal: boolean;
  readonly json?: boolean;
  readonly counted?: boolean;
}

function told({ terminal, json = false, counted = true }: Told) {
  const door = { ...fakeDoor(), errIsTerminal: terminal };
  let now = 0;
  const clock = () => now;
  const teller = batchTeller(door, {
    context: handoutContext(catalogue()),
    all: counted ? 10 : undefined,
    json,
    clock,
  });
  return { door, teller, wait: (milliseconds: number) => (now += milliseconds) };
}

describe("telling how far a batch is", () => {
  it("draws a bar on a terminal with the time left, once enough rows are done", () => {
    const { door, teller, wait } = told({ terminal: true });
    for (let line = 1; line <= 5; line++) {
      wait(10_000);
      teller.tell(made(line));
    }
    expect(door.printed.err).toContain("[==......................] 1 of 10 rows done\r");
    expect(door.printed.err).toMatch(/\[={12}\.{12}\] 5 of 10 rows done, about 50 s left$/);
  });

  it("draws no bar into a file, and names rows that failed or were not wholly understood", () => {
    const { door, teller } = told({ terminal: false });
    teller.tell(made(1, ["“zorb” is not known."]));
    teller.tell(failed(2));
    teller.tell({ line: 3, id: "box-3", outcome: "kept", partly: true });
    const counts = teller.end("here");
    expect(counts).toEqual({ made: 1, kept: 1, failed: 1, partly: 2 });
    const lines = door.printed.err.split("\n");
    expect(lines[0]).toBe("line 1 (box-1): “zorb” is not known.");
    expect(lines[1]).toBe("line 2 (box-2): haul: it is empty. Write it");
    expect(door.printed.err).not.toContain("\r");
    expect(door.printed.err).toMatch(/A page was made for 1 row\.[\s\S]*1 row failed[\s\S]*folder here\.\n$/);
    expect(door.printed.out).toBe("");
  });

  it("says rows alone where their number is not known", () => {
    const { door, teller } = told({ terminal: true, counted: false });
    teller.tell(made(1));
    expect(door.printed.err).toMatch(/1 row done$/);
  });

  it("prints one object a row as JSON where asked", () => {
    const { door, teller } = told({ terminal: false, json: true });
    teller.tell(made(1));
    teller.tell(failed(2));
    const rows = door.printed.out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line) as { outcome: string });
    expect(rows.map(({ outcome }) => outcome)).toEqual(["made", "failed"]);
  });
});
