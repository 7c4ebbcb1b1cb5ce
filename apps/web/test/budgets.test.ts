import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";

const dist = fileURLToPath(new URL("../dist", import.meta.url));
const built = statSync(join(dist, "index.html"), { throwIfNoEntry: false }) !== undefined;
const page = built ? readFileSync(join(dist, "index.html"), "utf8") : "";
const files = built
  ? (readdirSync(dist, { recursive: true }) as string[]).map((file) => file.replaceAll("\\", "/"))
  : [];
const text = (file: string) => readFileSync(join(dist, file), "utf8");

/** Kilobytes [1000 bytes] of some files as gzip makes them. */
const kilobytes = (...some: readonly string[]): number =>
  some.reduce((sum, file) => sum + gzipSync(readFileSync(join(dist, file))).length, 0) / 1000;

const named = (start: string) => files.filter((file) => file.startsWith(`assets/${start}`));
const inPage = (pattern: RegExp) => [...page.matchAll(pattern)].map(([, file]) => file!.replace(/^\.\//, ""));

/** Scripts that a script cannot begin without, itself among them. */
function withImports(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const [, other] of text(file).matchAll(
    /(?:^|[;}\s])import(?:[^"'();]*?from)?\s*["']\.\/([^"']+)["']/g,
  ))
    withImports(`assets/${other}`, seen);
  return seen;
}
const firstScripts = [
  ...new Set(
    inPage(/<(?:script|link)[^>]*?(?:src|href)="([^"]+\.js)"/g).flatMap((file) => [...withImports(file)]),
  ),
];

const packed = () => named("").filter((file) => file.endsWith(".packed"));

/** Declared preferences, no source, but for the first: it is the page's agreed limit. In kilobytes as gzip makes them. */
const budgets: readonly (readonly [string, () => readonly string[], number])[] = [
  ["the first screen's script", () => firstScripts, 170],
  ["its styles", () => named("index-").filter((file) => file.endsWith(".css")), 12],
  ["the figures of the kinds", () => named("figures.generated"), 50],
  ["the worker that plans and answers", () => named("planWorker"), 200],
  ["the screen to ask on", () => named("AskPage"), 12],
  ["what is told in one language", () => [...named("guidance.generated"), ...named("guidanceEnglish")], 110],
  ["the sources of the figures", () => named("bundled"), 150],
  ["the solver", () => named("highs"), 1300],
  ["what is printed and taken along, when it is opened", () => named("TakeAlong"), 20],
  ["the worker that sets pages", () => named("paperWorker"), 70],
  ["what it sets them with, packed", () => packed(), 12_000],
  [
    "everything else, kept for use without a network",
    () => files.filter((file) => statSync(join(dist, file)).isFile() && !packed().includes(file)),
    2770,
  ],
];

describe("the built page keeps to its budgets", () => {
  it("has been built", () => {
    expect(built, "apps/web/dist is not there. Run: node scripts/build.mjs").toBe(true);
  });

  it.each(budgets)("%s", (name, some, most) => {
    const found = some();
    expect(found.length, `no file found for ${name}`).toBeGreaterThan(0);
    const size = kilobytes(...found);
    console.log(`${name}: ${size.toFixed(1)} kB of ${most}`);
    expect(
      size,
      `${name}: ${size.toFixed(1)} kB as gzip makes it. Load what is not needed at once by import().`,
    ).toBeLessThan(most);
  });

  it("neither the page nor its first script begins with the solver, the worker or what is told", () => {
    const later = /highs|planWorker|paperWorker|TakeAlongDialog|guidance|bundled|AskPage/;
    expect(firstScripts.filter((file) => later.test(file))).toEqual([]);
    expect(page).not.toMatch(later);
  });

  it("the worker begins without the solver, which it fetches when it proves", () => {
    const [worker] = named("planWorker").filter((file) => file.endsWith(".js"));
    expect([...withImports(worker!)].filter((file) => /highs/.test(file))).toEqual([]);
    expect(text(worker!)).toMatch(/highs-[\w-]+\.js/);
  });

  it("words of another language are there once, for the page alone", () => {
    expect(named("spanish-")).toHaveLength(1);
  });

  it("what pages are set with is fetched by no script before it is asked for", () => {
    expect(packed()).toHaveLength(3);
    expect(firstScripts.filter((file) => /\.packed/.test(text(file)))).toEqual([]);
    expect(page).not.toMatch(/\.packed/);
  });

  it("every file is on the list that is kept on the device, but the list's own", () => {
    const list = text("serviceWorker.js");
    const missing = files
      .filter((file) => statSync(join(dist, file)).isFile() && file !== "serviceWorker.js")
      .filter((file) => !list.includes(file));
    expect(missing).toEqual([]);
  });
});
