import { readFileSync } from "node:fs";
import { loadSolver, type Solver } from "@keepwright/planner";
import { Ajv2020 } from "ajv/dist/2020.js";
import { beforeAll, describe, expect, it } from "vitest";
import { exitCodes } from "../../src/exitCodes.js";
import { run } from "../../src/run.js";
import { root } from "../support/built.js";
import { fakeDoor } from "../support/fakeDoor.js";

const haul = "plan 1 kg spinach, 6 apples, 4 bananas --days 5".split(" ");
const words = [haul[0]!, haul.slice(1, -2).join(" "), ...haul.slice(-2)];

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

function printed(more: readonly string[]): string {
  const door = { ...fakeDoor(), solver };
  expect(run([...words, ...more], door)).toBe(exitCodes.done);
  return door.printed.out;
}

describe("keepwright plan --prove", () => {
  it("prints value, bound and gap as the schema says", () => {
    const plan = JSON.parse(printed(["--prove", "--json"]));
    const schema = JSON.parse(readFileSync(`${root}schemas/plan.schema.json`, "utf8"));
    const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema);
    expect(validate(plan), JSON.stringify(validate.errors)).toBe(true);
    const { value, bound, gap } = plan.proof;
    expect(value).toBe(plan.objective.total);
    expect(bound).toBeGreaterThan(0);
    expect(bound).toBeLessThanOrEqual(value);
    expect(gap).toBeCloseTo(1 - bound / value, 12);
  });

  it("says it in words, and the plan is the same as without", () => {
    const text = printed(["--prove"]);
    expect(text).toMatch(/HOW MUCH BETTER IT COULD BE\n {2}Waste, quality, life and effort/);
    const proofLeftOut = text.replace(/HOW MUCH BETTER IT COULD BE\n(.*\S.*\n)*\n/, "");
    expect(proofLeftOut).toBe(printed([]));
  });
});
