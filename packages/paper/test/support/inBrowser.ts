import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { browserTypesetter, type Typesetter } from "../../src/browser/index.js";

const file = (path: string): Buffer => readFileSync(new URL(`../../${path}`, import.meta.url));

let begun: Promise<Typesetter> | undefined;

/** The browser's typesetter, begun in Node from the very files that the page is given. */
export function inBrowser(): Promise<Typesetter> {
  begun ??= browserTypesetter({
    program: readFileSync(
      createRequire(import.meta.url).resolve("@myriaddreamin/typst-ts-web-compiler/wasm"),
    ),
    fonts: {
      "Andika-Regular.ttf": file("fonts/Andika-Regular.ttf"),
      "Andika-Bold.ttf": file("fonts/Andika-Bold.ttf"),
    },
    templates: {
      "sheet.typ": file("typst/sheet.typ").toString(),
      "document.typ": file("typst/document.typ").toString(),
      "labels.typ": file("typst/labels.typ").toString(),
      "drawings.typ": file("typst/drawings.typ").toString(),
    },
  });
  return begun;
}
