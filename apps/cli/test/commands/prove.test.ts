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

describe("keepwright carry-on --prove", () => {
  const carried = (more: readonly string[]) => {
    const plan = printed(["--json", "--from", "2026-06-13"]);
    const door = { ...fakeDoor({ files: { "plan.json": plan } }), solver };
    const asked = ["carry-on", "plan.json", "--on", "2026-06-14", "--happened", "ate nothing", ...more];
    expect(run(asked, door)).toBe(exitCodes.done);
    return door.printed.out;
  };

  it("prints value, bound and gap of the new plan as the schema says, and in words", () => {
    const told = JSON.parse(carried(["--prove", "--json"]));
    const schema = JSON.parse(readFileSync(`${root}schemas/carry-on.schema.json`, "utf8"));
    const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema);
    expect(validate(told), JSON.stringify(validate.errors)).toBe(true);
    const { proof, objective } = told.plan;
    expect(proof.value).toBe(objective.total);
    expect(proof.bound).toBeGreaterThan(0);
    expect(proof.bound).toBeLessThanOrEqual(proof.value);
    expect(carried(["--prove"])).toMatch(/HOW MUCH BETTER IT COULD BE\n {2}Waste, quality, life and effort/);
  });

  it("tells the same of what changes as without", () => {
    const { plan, ...rest } = JSON.parse(carried(["--prove", "--json"]));
    const { proof: _, ...bare } = plan;
    expect({ plan: bare, ...rest }).toEqual(JSON.parse(carried(["--json"])));
  });
});
