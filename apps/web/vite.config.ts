import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

const room = (name: string) => fileURLToPath(new URL(`../../packages/${name}/src/index.ts`, import.meta.url));

export default defineConfig({
  // Relative addresses, so that the built folder works from any path.
  base: "./",
  plugins: [react()],
  resolve: {
    alias: Object.fromEntries(
      ["quantities", "catalogue", "physics", "planner", "handout"].map((name) => [
        `@keepwright/${name}`,
        room(name),
      ]),
    ),
  },
  worker: { format: "es" },
  build: { target: "es2022", modulePreload: { polyfill: false } },
});
