import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { isNodeNewEnough, neededNode } from "../lib/nodeVersion.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const json = (path: string) => JSON.parse(readFileSync(root + path, "utf8"));

describe("the Node that is needed", () => {
  it.each([
    ["18.20.4", false],
    ["20.10.0", false],
    ["20.18.3", false],
    ["20.19.0", true],
    ["20.20.2", true],
    ["21.7.3", false],
    ["22.11.0", false],
    ["22.12.0", true],
    ["24.0.0", true],
  ])("%s is new enough: %s", (version, enough) => {
    expect(isNodeNewEnough(version)).toBe(enough);
  });

  it("is what the build tools ask for, and what package.json, its lock and README say", () => {
    const { engines } = json("package.json");
    expect(engines.node).toBe("^20.19.0 || >=22.12.0");
    expect(json("node_modules/vite/package.json").engines.node).toBe(engines.node);
    expect(json("package-lock.json").packages[""].engines).toEqual(engines);
    expect(readFileSync(`${root}README.md`, "utf8")).toContain(neededNode);
  });

  it("is told, with what to install, where Node is older", () => {
    const url = new URL("../lib/nodeVersion.mjs", import.meta.url);
    const code = `const { requireNode } = await import(${JSON.stringify(url.href)}); requireNode("20.10.0");`;
    const { status, stderr } = spawnSync(process.execPath, ["--input-type=module", "-e", code], {
      encoding: "utf8",
    });
    expect(status).toBe(1);
    expect(stderr).toContain(`Keepwright needs ${neededNode}; this is Node 20.10.0.`);
  });
});
