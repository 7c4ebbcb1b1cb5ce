import { execFileSync } from "node:child_process";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { TestProject } from "vitest/node";
// @ts-expect-error: a plain script without types
import { serveFolder } from "../../../../scripts/lib/serveFolder.mjs";

declare module "vitest" {
  export interface ProvidedContext {
    address: string;
  }
}

const web = fileURLToPath(new URL("../..", import.meta.url));

/** Builds the page once as it is shipped, and serves it the way `npm start` does. */
export default async function setup(project: TestProject) {
  const vite = join(dirname(createRequire(import.meta.url).resolve("vite/package.json")), "bin", "vite.js");
  // Within tests NODE_ENV is "test", with which the page would be built for development.
  const env = { ...process.env, NODE_ENV: "production" };
  execFileSync(process.execPath, [vite, "build", "--logLevel", "error"], { cwd: web, env, stdio: "inherit" });
  const { address, close } = await serveFolder(join(web, "dist"), { firstPort: 0 });
  project.provide("address", address);
  return close;
}
