import { type ClassTopic, classParts, classTopics, heldParts } from "@keepwright/handout";
import { describe, expect, it } from "vitest";
import { runningSheet } from "../../src/class/running/runningSheet.js";
import { contextOf, spanish } from "./support.js";

const topicSets: readonly (readonly ClassTopic[])[] = [
  [...classTopics],
  ...classTopics.map((topic) => [topic]),
  ["places", "myths"],
  ["buying", "signs", "lasting"],
];
const everyLength = Array.from({ length: 231 }, (_, index) => 10 + index);

describe("the parts of a class", () => {
  it.each(topicSets.map((topics) => [topics.join(", "), topics] as const))(
    "%s: fit any length",
    (_, topics) => {
      let before: readonly string[] = [];
      for (const minutes of everyLength) {
        const { held, dropped } = heldParts(minutes, topics);
        expect(held.reduce((sum, part) => sum + part.minutes, 0)).toBe(minutes);
        for (const part of held) {
          expect(Number.isInteger(part.minutes)).toBe(true);
          expect(part.minutes).toBeGreaterThanOrEqual(part.least);
        }
        const names = held.map(({ name }) => name);
        expect(names).toEqual(expect.arrayContaining(["safety", "welcome", "close", ...before]));
        const leastKept = Math.max(...held.map(({ priority }) => priority));
        for (const part of dropped) expect(part.priority).toBeGreaterThan(leastKept);
        before = names;
      }
    },
  );

  it("drop the least important first, and only for want of time", () => {
    const priorities = heldParts(20, classTopics).dropped.map(({ priority }) => priority);
    expect(priorities).toEqual([...priorities].sort((one, other) => other - one));
    expect(priorities.length).toBeGreaterThan(3);
    expect(heldParts(60, classTopics).dropped).toEqual([]);
    expect(new Set(classParts.map(({ priority }) => priority)).size).toBe(classParts.length);
  });

  it.each([
    ["English", {}, "Ask about allergies before"],
    ["Spanish", { audience: spanish }, "pregunta por alergias"],
  ] as const)("in %s ask about allergies above the parts and in the welcome", (_, changes, asked) => {
    const { blocks } = runningSheet(contextOf(["apple", "kale"], { ...changes, minutes: 10 }), []);
    const table = blocks.findIndex(({ block }) => block === "table");
    expect(JSON.stringify(blocks.slice(0, table))).toContain(asked);
    const [welcome] = (blocks[table] as { readonly rows: readonly (readonly string[])[] }).rows;
    expect(welcome?.join(" ")).toContain(asked);
  });

  it("the sheet names what was dropped, and its rows run from the first minute to the last", () => {
    const { blocks } = runningSheet(contextOf(["apple", "kale"], { minutes: 25 }), []);
    const table = blocks.find((block) => block.block === "table");
    const rows = table?.block === "table" ? table.rows : [];
    const spans = rows.map(([when]) => when!.split(" to ").map(Number) as [number, number]);
    expect(spans[0]![0]).toBe(0);
    expect(spans.at(-1)![1]).toBe(25);
    for (const [index, [from]] of spans.slice(1).entries()) expect(from).toBe(spans[index]![1]);
    expect(JSON.stringify(blocks)).toMatch(/Left out this time/);
  });
});
