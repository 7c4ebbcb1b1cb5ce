import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { constants, gzipSync } from "node:zlib";
import type { Plugin } from "vite";

/** How the names of packed files end. None that a server would unpack or pack by itself: the page unpacks them, so that they take as little room on the device as on the way. */
export const packed = ".packed";

const name = "virtual:paper-files";
const require = createRequire(import.meta.url);
const fonts = fileURLToPath(new URL("../../../packages/paper/fonts/", import.meta.url));
const cache = fileURLToPath(new URL("../../../node_modules/.cache/keepwright-paper/", import.meta.url));

/** Files by the names that the page has for them. */
const sources = (): Readonly<Record<string, string>> => ({
  program: require.resolve("@myriaddreamin/typst-ts-web-compiler/wasm"),
  "Andika-Regular.ttf": join(fonts, "Andika-Regular.ttf"),
  "Andika-Bold.ttf": join(fonts, "Andika-Bold.ttf"),
});

interface PackedFile {
  readonly key: string;
  readonly fileName: string;
  readonly bytes: Buffer;
}

/** A file packed as small as gzip makes it, which takes seconds: once for every content. */
function packedFile(key: string, path: string): PackedFile {
  const content = readFileSync(path);
  const hash = createHash("sha256").update(content).digest("hex").slice(0, 12);
  const kept = join(cache, `${key}-${hash}`);
  if (!existsSync(kept)) {
    mkdirSync(cache, { recursive: true });
    writeFileSync(kept, gzipSync(content, { level: constants.Z_BEST_COMPRESSION }));
  }
  return { key, fileName: `assets/${key.replace(".ttf", "")}-${hash}${packed}`, bytes: readFileSync(kept) };
}

/** Makes `virtual:paper-files` a module, and puts what it names beside the page: the typesetter and its fonts, packed. */
export function paperFiles(): Plugin {
  const all = () => Object.entries(sources()).map(([key, path]) => packedFile(key, path));
  return {
    name: "paper-files",
    resolveId: (id) => (id === name ? `\0${name}` : undefined),
    load(id) {
      if (id !== `\0${name}`) return undefined;
      const files = all();
      const addresses = Object.fromEntries(files.map(({ key, fileName }) => [key, fileName]));
      const bytes = files.reduce((sum, file) => sum + file.bytes.length, 0);
      return `export const paperFiles = ${JSON.stringify(addresses)};\nexport const paperBytes = ${bytes};`;
    },
    generateBundle() {
      for (const { fileName, bytes } of all()) this.emitFile({ type: "asset", fileName, source: bytes });
    },
    configureServer({ middlewares }) {
      middlewares.use((request, response, next) => {
        const file = request.url?.includes(packed)
          ? all().find(({ fileName }) => request.url?.endsWith(fileName))
          : undefined;
        if (file) response.end(file.bytes);
        else next();
      });
    },
  };
}
