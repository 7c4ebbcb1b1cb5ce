import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build, type Plugin } from "vite";
import { packed } from "./paperFiles.js";

const worker = fileURLToPath(new URL("../src/offline/serviceWorker.ts", import.meta.url));
const name = "serviceWorker.js";

/** Every file of the built page, with a revision for those whose names do not change with what is in them. */
export function filesOf(folder: string): { url: string; revision: string | null }[] {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll("\\", "/"),
    )
    .filter((url) => url !== name && !url.endsWith(packed))
    .sort()
    .map((url) => {
      const hashed = url.startsWith("assets/");
      const revision = () =>
        createHash("sha256")
          .update(readFileSync(join(folder, url)))
          .digest("hex")
          .slice(0, 16);
      return { url, revision: hashed ? null : revision() };
    });
}

/** What pages are printed with: kept apart from the rest, since it is four times as large and not everybody prints. */
const paperFilesOf = (folder: string): string[] =>
  readdirSync(join(folder, "assets"))
    .filter((file) => file.endsWith(packed))
    .sort()
    .map((file) => `assets/${file}`);

/** Builds the service worker after everything else, with the list of all files of the page written into it. */
export function offlineFiles(): Plugin {
  let folder = "";
  return {
    name: "offline-files",
    apply: "build",
    configResolved(config) {
      folder = config.build.outDir.startsWith("/")
        ? config.build.outDir
        : join(config.root, config.build.outDir);
    },
    async closeBundle() {
      await build({
        configFile: false,
        logLevel: "error",
        define: {
          pageFiles: JSON.stringify(filesOf(folder)),
          paperFiles: JSON.stringify(paperFilesOf(folder)),
          "process.env.NODE_ENV": '"production"',
        },
        build: {
          outDir: folder,
          emptyOutDir: false,
          copyPublicDir: false,
          target: "es2022",
          lib: { entry: worker, formats: ["iife"], name: "keepwright", fileName: () => name },
        },
      });
    },
  };
}
