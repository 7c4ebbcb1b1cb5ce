import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

export const root = fileURLToPath(new URL("../..", import.meta.url));

export interface SourceFile {
  /** Path from the root, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

const skipped = new Set(["node_modules", "dist", "test-artefacts", ".git"]);

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (skipped.has(entry.name)) return [];
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesBelow(path) : [path];
  });
}

/** Every file below the given folders whose name ends as asked; generated files are left out. */
export function sourceFiles(folders: readonly string[], ending: RegExp): SourceFile[] {
  return folders
    .flatMap((folder) => filesBelow(join(root, folder)))
    .filter((path) => ending.test(path) && !path.includes(".generated."))
    .map((path) => ({ path: relative(root, path).replaceAll("\\", "/"), text: readFileSync(path, "utf8") }));
}

export const parse = (file: SourceFile): ts.SourceFile =>
  ts.createSourceFile(
    file.path,
    file.text,
    ts.ScriptTarget.ES2023,
    true,
    file.path.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );

/** Every module a file imports or re-exports, types and dynamic imports too. */
export function importsOf(file: SourceFile): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const specifier =
      ts.isImportDeclaration(node) || ts.isExportDeclaration(node)
        ? node.moduleSpecifier
        : ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)
          ? node.argument.literal
          : ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword
            ? node.arguments[0]
            : undefined;
    if (specifier && ts.isStringLiteral(specifier)) found.push(specifier.text);
    ts.forEachChild(node, visit);
  };
  visit(parse(file));
  return found;
}
