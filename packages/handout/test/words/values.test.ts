import { fileURLToPath } from "node:url";
import ts from "typescript";
import { expect, it } from "vitest";

const folder = fileURLToPath(new URL("../../src/words/", import.meta.url));

/** One line each: whether it has to compile, and the values given for a message. */
const lines: readonly (readonly [compiles: boolean, code: string])[] = [
  [true, 'say("nothing");'],
  [false, 'say("nothing", { name: "kale" });'],
  [true, 'say("plain", { name: "kale", mass: 3 });'],
  [false, 'say("plain", { name: "kale" });'],
  [false, 'say("plain");'],
  [true, 'say("plural", { name: "kale", count: 3 });'],
  [false, 'say("plural", { name: "kale" });'],
  [false, 'say("plural", { count: 3 });'],
  [false, 'say("plural", { name: "kale", count: "three" });'],
  [false, 'say("plural", { name: "kale", count: 3, more: 1 });'],
  [false, 'say("no such key");'],
];

const text = `import type { Values } from "./message.js";
const messages = {
  nothing: "No hole.",
  plain: "{name}: {mass}.",
  plural: "For {name}: {count, plural, one {# day} other {{name} for # days}}.",
} as const;
declare function say<Key extends keyof typeof messages>(key: Key, ...values: Values<(typeof messages)[Key]>): void;
`;

it("a message said without one of its values, with one too many or with words for a number does not compile", () => {
  const path = `${folder}said.ts`;
  const source = text + lines.map(([, code]) => code).join("\n");
  const host = ts.createCompilerHost({});
  const { getSourceFile, fileExists, readFile } = host;
  host.getSourceFile = (name, options) =>
    name === path ? ts.createSourceFile(name, source, options) : getSourceFile(name, options);
  host.fileExists = (name) => name === path || fileExists(name);
  host.readFile = (name) => (name === path ? source : readFile(name));
  const program = ts.createProgram(
    [path],
    { strict: true, noEmit: true, module: ts.ModuleKind.NodeNext, target: ts.ScriptTarget.ES2023, types: [] },
    host,
  );
  const first = text.split("\n").length - 1;
  const wrong = ts.getPreEmitDiagnostics(program).map(({ file, start }) => {
    expect(file?.fileName).toBe(path);
    return (file?.getLineAndCharacterOfPosition(start ?? 0).line ?? -1) - first;
  });
  expect([...new Set(wrong)].sort((a, b) => a - b)).toEqual(
    lines.flatMap(([compiles], index) => (compiles ? [] : [index])),
  );
});
