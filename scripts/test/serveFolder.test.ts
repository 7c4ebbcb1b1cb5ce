import { mkdtempSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { brotliDecompressSync, gunzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveFolder } from "../lib/serveFolder.mjs";

const text = `<!doctype html><title>t</title>${"leaf ".repeat(500)}`;
const folder = mkdtempSync(join(tmpdir(), "served-"));
let served: Awaited<ReturnType<typeof serveFolder>>;

interface Answer {
  readonly status: number | undefined;
  readonly coding: string | undefined;
  readonly policy: string;
  readonly body: Buffer;
}

const ask = (path: string, accepted: string): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const sent = request(served.address + path, { headers: { "accept-encoding": accepted } }, (response) => {
      const parts: Buffer[] = [];
      response.on("data", (part: Buffer) => parts.push(part));
      response.on("end", () =>
        resolve({
          status: response.statusCode,
          coding: response.headers["content-encoding"],
          policy: String(response.headers["content-security-policy"]),
          body: Buffer.concat(parts),
        }),
      );
    });
    sent.on("error", reject);
    sent.end();
  });

beforeAll(async () => {
  writeFileSync(join(folder, "index.html"), text);
  writeFileSync(join(folder, "worker.js"), "postMessage(1);");
  writeFileSync(join(folder, "dot.png"), Buffer.from([1, 2, 3]));
  served = await serveFolder(folder, { firstPort: 0 });
});
afterAll(() => served.close());

describe("a served folder", () => {
  it("is compressed as the browser takes it, and comes out as it was", async () => {
    const brotli = await ask("", "gzip, br");
    expect([brotli.coding, brotliDecompressSync(brotli.body).toString()]).toEqual(["br", text]);
    expect(brotli.body.length).toBeLessThan(text.length / 10);
    const gzip = await ask("index.html", "gzip");
    expect([gzip.coding, gunzipSync(gzip.body).toString()]).toEqual(["gzip", text]);
    const plain = await ask("", "identity");
    expect([plain.coding, plain.body.toString()]).toEqual([undefined, text]);
  });
  it("lets a worker's script run WebAssembly, and nothing else run what is not a script of its own", async () => {
    const allowed = async (path: string) => /script-src ([^;]*)/.exec((await ask(path, "br")).policy)?.[1];
    expect(await allowed("worker.js")).toBe("'self' 'wasm-unsafe-eval'");
    for (const path of ["", "index.html", "dot.png", "missing.html"])
      expect(await allowed(path)).toBe("'self'");
  });
  it("sends pictures as they are, and nothing from outside the folder", async () => {
    expect(await ask("dot.png", "br")).toMatchObject({
      status: 200,
      coding: undefined,
      body: Buffer.from([1, 2, 3]),
    });
    for (const path of ["../package.json", "%2e%2e/package.json", "missing.html"])
      expect((await ask(path, "br")).status).toBe(404);
  });
});
