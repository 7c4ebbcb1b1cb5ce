import { readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { basename, dirname, extname, join, normalize, sep } from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
};

/**
 * Nothing but the page's own files may be loaded, and nothing may be sent anywhere. A worker goes by what its own script came with, and one of
 * them runs a solver that is WebAssembly: scripts come with leave for that, the page does not.
 */
const headersFor = (type) => ({
  "Content-Security-Policy":
    `default-src 'none'; script-src 'self'${type === types[".js"] ? " 'wasm-unsafe-eval'" : ""}; style-src 'self'; img-src 'self' data:; font-src 'self'; ` +
    "connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
});

/** Files whose names change with what is in them may be kept for good; the rest is asked for anew, so that a newer version is found. */
const keepFor = (file) =>
  basename(dirname(file)) === "assets" ? "public, max-age=31536000, immutable" : "no-cache";

function fileFor(folder, url) {
  let path;
  try {
    path = normalize(join(folder, decodeURIComponent(new URL(url, "http://localhost").pathname)));
  } catch {
    return undefined;
  }
  if (path !== folder && !path.startsWith(folder + sep)) return undefined;
  const found = [path, join(path, "index.html")].find((each) =>
    statSync(each, { throwIfNoEntry: false })?.isFile(),
  );
  return found;
}

/** Brotli at a middling quality: at its highest it takes seconds for files that travel within one machine. */
const brotli = (body) => brotliCompressSync(body, { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } });
const codings = { br: brotli, gzip: gzipSync };
/** Compressed files by name, time of change and coding: each is compressed once. */
const known = new Map();

/** A file as the browser takes it: text compressed by brotli or gzip, pictures as they are. */
function encoded(file, type, accepted) {
  const encoding = /^text|javascript|json|svg/.test(type)
    ? Object.keys(codings).find((each) => new RegExp(`\\b${each}\\b`).test(accepted))
    : undefined;
  if (!encoding) return { body: readFileSync(file) };
  const key = `${file}|${statSync(file).mtimeMs}|${encoding}`;
  if (!known.has(key)) known.set(key, codings[encoding](readFileSync(file)));
  return { body: known.get(key), encoding };
}

function answer(folder, request, response) {
  const file = fileFor(folder, request.url ?? "/");
  if (!file || !["GET", "HEAD"].includes(request.method ?? "")) {
    const type = "text/plain; charset=utf-8";
    response.writeHead(file ? 405 : 404, { ...headersFor(type), "Content-Type": type });
    response.end(file ? "Only reading is possible here.\n" : "There is nothing at this address.\n");
    return;
  }
  const type = types[extname(file)] ?? "application/octet-stream";
  const { body, encoding } = encoded(file, type, request.headers["accept-encoding"] ?? "");
  response.writeHead(200, {
    ...headersFor(type),
    "Content-Type": type,
    "Cache-Control": keepFor(file),
    Vary: "Accept-Encoding",
    ...(encoding && { "Content-Encoding": encoding }),
  });
  response.end(request.method === "HEAD" ? undefined : body);
}

function listen(server, port, lastPort) {
  return new Promise((resolve, reject) => {
    server.once("error", (error) => {
      if (error.code === "EADDRINUSE" && port < lastPort) resolve(listen(server, port + 1, lastPort));
      else reject(error);
    });
    server.listen(port, "127.0.0.1", () => resolve(server.address().port));
  });
}

/** Serves a folder on this machine only; takes the next port while one is in use. Port 0 asks for any free one. */
export async function serveFolder(folder, { firstPort = 4780 } = {}) {
  const base = normalize(folder).replace(/[\\/]$/, "");
  const server = createServer((request, response) => answer(base, request, response));
  const port = await listen(server, firstPort, firstPort === 0 ? 0 : firstPort + 50);
  return { address: `http://127.0.0.1:${port}/`, close: () => server.close(), server };
}
