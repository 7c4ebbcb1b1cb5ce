import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";
import { offlineFiles } from "./build/offlineFiles.js";
import { paperFiles } from "./build/paperFiles.js";

const file = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const rooms = ["quantities", "catalogue", "physics", "planner", "handout"];

/** Makes `worked-example` a module: the texts of one of the examples, by language, which stay in one copy where the examples are. */
function workedExample(): Plugin {
  const name = "virtual:worked-example";
  const folder = "../../examples/market-saturday";
  const hauls = { en: file(`${folder}/haul.txt`), es: file(`${folder}/haul.es.txt`) };
  return {
    name: "worked-example",
    resolveId: (id) => (id === name ? `\0${name}` : undefined),
    load(id) {
      if (id !== `\0${name}`) return undefined;
      const texts = Object.entries(hauls).map(([language, haul]) => {
        this.addWatchFile(haul);
        return [language, readFileSync(haul, "utf8")];
      });
      return `export default ${JSON.stringify(Object.fromEntries(texts))};`;
    },
  };
}

/** Leaves the schema library out of the page; the worker, which checks what it is asked, keeps it. */
function noSchemas(): Plugin {
  const standIn = file("./src/standIns/zod.ts");
  return { name: "no-schemas", enforce: "pre", resolveId: (id) => (id === "zod" ? standIn : undefined) };
}

export default defineConfig({
  // Relative addresses, so that the built folder works from any path.
  base: "./",
  plugins: [react(), workedExample(), noSchemas(), paperFiles(), offlineFiles()],
  resolve: {
    alias: {
      ...Object.fromEntries(
        rooms.map((room) => [`@keepwright/${room}`, file(`../../packages/${room}/src/index.ts`)]),
      ),
      "@keepwright/paper/browser": file("../../packages/paper/src/browser/index.ts"),
      "@keepwright/paper/typst": file("../../packages/paper/typst"),
    },
  },
  worker: { format: "es" },
  build: {
    target: "es2022",
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 700,
  },
});
