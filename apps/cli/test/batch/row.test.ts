import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkRow } from "../../src/batch/row.js";

const problems = (text: string): string => {
  const check = checkRow(text, 7);
  return check.ok
    ? ""
    : check.problems.map((each) => `${each.thing}: ${each.value}. ${each.remedy}`).join("\n");
};

describe("a row of a batch", () => {
  it("needs its haul only, and is named by its line where it has no id", () => {
    expect(checkRow('{"id":"box-4","haul":5}', 4)).toMatchObject({ ok: false, id: "box-4" });
    expect(checkRow('{"id":"../box","haul":5}', 4)).not.toHaveProperty("id");
    expect(checkRow('{"haul":"2 apples"}', 7)).toEqual({ ok: true, id: "row-7", row: { haul: "2 apples" } });
    expect(checkRow('{"id":"caja-ñ.2","haul":"2 apples"}', 1)).toMatchObject({ ok: true, id: "caja-ñ.2" });
  });

  it.each([
    ["{oops", /not valid JSON.*Write one object a line/],
    ["7", /row/],
    ["{}", /haul/],
    ['{"haul":""}', /haul/],
    ['{"haul":"2 apples","people":0}', /people/],
    ['{"haul":"2 apples","peple":2}', /peple/],
    ['{"haul":"2 apples","from":"2026-13-01"}', /from/],
    ['{"haul":"2 apples","away":["tomorrow"]}', /away/],
    ['{"haul":"2 apples","language":"fr"}', /language/],
  ])("%s is refused by name, with a remedy", (text, words) => {
    expect(problems(text)).toMatch(words);
    expect(problems(text)).toMatch(/\. \S/);
  });

  it.each(["../up", "a/b", "a\\\\b", ".hidden", "", "a:b", "con trol", "x".repeat(81), "end."])(
    "an id that could not name a file everywhere is refused: %j",
    (id) => {
      expect(problems(JSON.stringify({ id, haul: "2 apples" }))).toMatch(/id/);
    },
  );

  it("never throws, and no id it lets through leads out of the folder", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc.string().map((id) => JSON.stringify({ id, haul: "x" })),
        ),
        (text) => {
          const check = checkRow(text, 1);
          if (check.ok) expect(check.id).not.toMatch(/[/\\:\s]|^\.|\.\./u);
          else expect(check.problems.length).toBeGreaterThan(0);
        },
      ),
    );
  });
});
