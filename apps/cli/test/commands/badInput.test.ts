import { jsonText } from "@keepwright/handout";
import { ordinaryKitchens } from "@keepwright/planner";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { run } from "../../src/run.js";
import { controlCharacters, type FakeMachine, fakeDoor } from "../support/fakeDoor.js";

function tried(words: readonly string[], machine: FakeMachine = {}) {
  const door = fakeDoor(machine);
  return { code: run(words, door), ...door.printed };
}

const kitchenFile = (change: object) => ({
  "k.json": JSON.stringify({ ...ordinaryKitchens.ordinary, ...change }),
});

describe("input nothing can be made of ends with 2 and says what would work", () => {
  it.each<[string, string[], FakeMachine, RegExp]>([
    ["an empty list", ["buy", ""], {}, /The list is empty\. Write what you would like to buy, for example/],
    ["an empty list in Spanish", ["buy", " ", "-l", "es"], {}, /La lista está vacía\. .*te gustaría comprar/],
    ["a list not understood", ["buy", "zorb blib"], {}, /Nothing in the list was understood.*like to buy/],
    ["an empty haul", ["plan", ""], {}, /The haul is empty\. Write what came home, for example/],
    [
      "an empty file",
      ["plan", "h.txt"],
      { files: { "h.txt": " \n" } },
      /The haul is empty\. Write what came home, for example/,
    ],
    ...["plan", "improve", "buy"].map((command): [string, string[], FakeMachine, RegExp] => [
      `a plan in place of a haul: ${command}`,
      [command, "p.json"],
      { files: { "p.json": JSON.stringify({ version: 1, lots: [{ commodity: "apple" }] }) } },
      /JSON data, not words.*carry-on/,
    ]),
    ["an unknown kind", ["plan", "3 zorbulons"], {}, /zorbulons/],
    [
      "a lot that is not there",
      ["plan", "2 kg apples", "--why-lot", "kale"],
      {},
      /“kale”: there is no such lot in the haul.*2 kg apples/,
    ],
    ["a missing file", ["plan", "gone.txt"], {}, /no such file/],
    ["a folder", ["plan", "here"], { folders: ["here"] }, /folder/],
    ["no text", ["plan", "-"], { input: new Uint8Array([1, 0, 2]) }, /not a text file/],
    ["no people", ["plan", "2 kg apples", "--people", "0"], {}, /--people.*1 to 500/],
    ["no draws", ["plan", "2 kg apples", "--draws", "0"], {}, /--draws/],
    ["draws that are no number", ["plan", "2 kg apples", "--draws", "many"], {}, /--draws/],
    ["too many days", ["plan", "2 kg apples", "--days", "1000"], {}, /--days/],
    ["a day that is none", ["plan", "2 kg apples", "--from", "2026-02-30"], {}, /--from.*2026-02-30/],
    ["units that are none", ["plan", "2 kg apples", "--units", "imperial"], {}, /metric, us/],
    [
      "a kitchen without places",
      ["plan", "2 kg apples", "-k", "k.json"],
      { files: kitchenFile({ places: [] }) },
      /places/,
    ],
    [
      "a kitchen that is no object",
      ["plan", "2 kg apples", "-k", "k.json"],
      { files: { "k.json": "[]" } },
      /kitchen/,
    ],
    ["an empty list to buy from", ["buy", ""], {}, /is empty\. Write what/],
    ["an unknown kind to buy", ["buy", "3 zorbulons"], {}, /zorbulons/],
    ["no people to buy for", ["buy", "2 kg apples", "--people", "0"], {}, /--people.*1 to 500/],
    ["a missing list", ["buy", "gone.txt"], {}, /no such file/],
    [
      "a kitchen without places to buy for",
      ["buy", "2 kg apples", "-k", "k.json"],
      { files: kitchenFile({ places: [] }) },
      /places/,
    ],
    [
      "an empty haul to improve",
      ["improve", ""],
      {},
      /The haul is empty\. Write what came home, for example/,
    ],
    ["an unknown kind to improve", ["improve", "3 zorbulons"], {}, /zorbulons/],
    ["no people to improve for", ["improve", "2 kg apples", "--people", "0"], {}, /--people.*1 to 500/],
    [
      "a kitchen without places to improve",
      ["improve", "2 kg apples", "-k", "k.json"],
      { files: kitchenFile({ places: [] }) },
      /places/,
    ],
    ["a kitchen nobody knows", ["kitchen", "palace"], {}, /ordinary, small/],
    ["an option nobody knows", ["plan", "2 kg apples", "--zorb"], {}, /--zorb/],
    ["a command nobody knows", ["cook"], {}, /cook/],
    ["no command", [], {}, /Usage/],
    ["no name", ["item"], {}, /name/],
    ["a name nobody knows", ["item", "zorbulon"], {}, /zorbulon/],
    ["a temperature too high", ["item", "carrot", "--at", "99"], {}, /--at.*45/],
    ["no arrangement", ["judge", "2 kg apples"], {}, /--arrangement/],
    [
      "an arrangement that is missing",
      ["judge", "2 kg apples", "--arrangement", "a.json"],
      {},
      /arrangement file “a\.json”: there is no such file/,
    ],
    [
      "an arrangement that is no JSON",
      ["judge", "2 kg apples", "--arrangement", "a.json"],
      { files: { "a.json": "apples on the counter" } },
      /not valid JSON.*this is one that works: \{"version": 1/,
    ],
    [
      "an arrangement in a place that is not there",
      ["judge", "2 kg apples", "--arrangement", "a.json"],
      { files: { "a.json": `{"version": 1, "lots": [{"lot": "apples", "place": "loft"}]}` } },
      /"apples": place "loft" is not in the kitchen\. Name one of: shelf/,
    ],
    ["a name and a check", ["kitchen", "small", "--check", "x"], {}, /Give one of them/],
  ])("%s", (_, words, machine, message) => {
    const { code, err, out } = tried(words, machine);
    expect(err).toMatch(message);
    expect(code).toBe(2);
    expect(out).toBe("");
  });

  it.each([["0 apples"], ["-3 apples"], ["1000000000 kg apples"]])(
    "the absurd amount “%s” is asked about",
    (haul) => {
      const { code, err } = tried(["plan", haul]);
      expect(code).toBe(2);
      expect(err).toMatch(/How much is it\?/);
    },
  );

  it("is told as JSON where JSON was asked for", () => {
    for (const words of [
      ["plan", "", "--json"],
      ["plan", "--json", "--zorb", "x"],
      ["item", "zorbulon", "--json"],
      ["kitchen", "palace", "--json"],
    ]) {
      const { code, out } = tried(words);
      const { error } = JSON.parse(out) as { error: { exitCode: number; problems: unknown[] } };
      expect(code).toBe(2);
      expect(error.exitCode).toBe(2);
      expect(error.problems.length).toBeGreaterThan(0);
    }
  });

  it("offers near names", () => {
    expect(tried(["item", "lettuce"]).err).toMatch(/it may be more than one kind\. Give one of: .*romaine/);
  });
});

describe("nothing typed reaches the terminal raw", () => {
  it("neither control characters nor escape sequences, in plans or errors", () => {
    const nasty = "\u001b[2J\u0007\u202e";
    for (const words of [
      ["plan", `2 kg apples, 1 ${nasty}zorb`],
      ["plan", `${nasty}.txt`],
      ["item", nasty],
      ["kitchen", nasty],
      ["plan", "2 kg apples", "--from", nasty],
      ["plan", "2 kg apples", `--${nasty}`],
      [nasty],
    ]) {
      const { out, err } = tried(words);
      expect(out).not.toMatch(controlCharacters);
      expect(err).not.toMatch(controlCharacters);
    }
  });

  it("mark-up in a name stays the characters it is", () => {
    const { out, code } = tried(["plan", "2 kg apples, 3 <script>alert(1)</script>"]);
    expect(code).toBe(3);
    expect(out).toMatch(/<script>|script/);
  });

  it("any command line ends with 0, 2 or 3, never a fault", () => {
    const word = fc.oneof(
      fc.constantFrom(
        "item",
        "kitchen",
        "--json",
        "--at",
        "--rh",
        "--check",
        "--units",
        "us",
        "-",
        "--",
        "--help",
        "-V",
        "carrot",
        "small",
        "4",
      ),
      fc.string({ unit: "binary", maxLength: 12 }),
    );
    const words = fc.array(word, { maxLength: 5 });
    fc.assert(
      fc.property(words, (list) => {
        const { code, out, err } = tried(list);
        expect([0, 2, 3]).toContain(code);
        expect(out + err).not.toMatch(controlCharacters);
      }),
      { numRuns: 150 },
    );
  });
});

describe("long input", () => {
  it("of ten thousand lines: one plan, nothing lost", () => {
    const input = Array.from({ length: 10_000 }, (_, line) => `${(line % 9) + 1} apples`).join("\n");
    const { code, out } = tried(["plan", "-", "--json", "--days", "1"], { input });
    const { reading } = JSON.parse(out) as {
      reading: { items: { typed: string; to: number; kind: string }[] };
    };
    expect(code).toBe(3);
    expect(reading.items.at(-1)?.kind).toBe("question");
    expect(reading.items.at(-1)?.to).toBe(input.length);
    expect(jsonText(reading).length).toBeGreaterThan(input.length);
  });
});
