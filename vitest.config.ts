import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const room = (name: string) => fileURLToPath(new URL(`./packages/${name}/src/index.ts`, import.meta.url));

export default defineConfig({
  resolve: {
    alias: Object.fromEntries(
      ["quantities", "catalogue", "physics", "planner", "handout", "paper"].map((name) => [
        `@keepwright/${name}`,
        room(name),
      ]),
    ),
  },
  test: {
    include: [
      "packages/*/test/**/*.test.ts",
      "apps/*/test/**/*.test.ts",
      "scripts/test/**/*.test.ts",
      "examples/**/*.test.ts",
    ],
    // All processors: by default one is kept free, which on two is half of them.
    maxWorkers: "100%",
    // Files share what a processor has loaded: reading the catalogue anew for each took longer than most of the tests.
    // Whatever is under test is pure, or takes what it keeps as an argument.
    isolate: false,
    testTimeout: 120_000,
    // What a whole file needs first is often a plan.
    hookTimeout: 120_000,
  },
});
