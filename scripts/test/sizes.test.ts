import ts from "typescript";
import { describe, expect, it } from "vitest";
import { parse, type SourceFile, sourceFiles } from "./sourceFiles.js";

const fileCeiling = 300;
const functionCeiling = 60;
const files = sourceFiles(["packages", "apps", "scripts", "bench", "examples"], /\.(ts|tsx|mjs)$/);

const isFunction = (node: ts.Node): boolean =>
  ts.isFunctionDeclaration(node) ||
  ts.isFunctionExpression(node) ||
  ts.isArrowFunction(node) ||
  ts.isMethodDeclaration(node);

/** Functions that are longer than the ceiling. Test suites (the callbacks of describe) are lists of tests, not functions. */
function longFunctions(file: SourceFile): string[] {
  const source = parse(file);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (isFunction(node)) {
      const first = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      const lines = source.getLineAndCharacterOfPosition(node.end).line + 2 - first;
      const suite = ts.isCallExpression(node.parent) && /^describe/.test(node.parent.expression.getText());
      if (lines > functionCeiling && !suite) found.push(`${file.path}:${first} is ${lines} lines`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

describe("short files, short functions", () => {
  it(`no file is over ${fileCeiling} lines`, () => {
    const over = files
      .map((file) => [file.path, file.text.split("\n").length] as const)
      .filter(([, lines]) => lines > fileCeiling);
    expect(over).toEqual([]);
  });
  it(`no function is over ${functionCeiling} lines`, () => {
    expect(files.flatMap(longFunctions)).toEqual([]);
  });
});
