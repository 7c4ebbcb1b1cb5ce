import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import type { NodeCompiler, NodeError } from "@myriaddreamin/typst-ts-node-compiler";
import { PaperError } from "./paperError.js";

/** Both folders lie beside src and dist, so that the same path leads there from either. */
const folder = (name: string): string => fileURLToPath(new URL(`../${name}/`, import.meta.url));

const fontFiles = ["Andika-Regular.ttf", "Andika-Bold.ttf"];

const typesetter = "@myriaddreamin/typst-ts-node-compiler";

/** Loaded only when a page is set: it is native and large, and whoever prints nothing has no need of it. */
function loaded(): typeof import("@myriaddreamin/typst-ts-node-compiler") {
  try {
    return createRequire(import.meta.url)(typesetter);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new PaperError(`The typesetter ${typesetter} cannot be loaded on this machine: ${why}`);
  }
}

let ready: NodeCompiler | undefined;

/** One compiler for the whole run. Fonts given as bytes go before those of the machine. */
function compiler(): NodeCompiler {
  ready ??= loaded().NodeCompiler.create({
    workspace: folder("."),
    fontArgs: [{ fontBlobs: fontFiles.map((name) => readFileSync(folder("fonts") + name)) }],
  });
  return ready;
}

/**
 * Settings for which the typesetter remembers what it worked out: enough for one page tried in several sizes. Its own suggestion (documentation of `evictCache`).
 * Without an end it would remember every page of a batch.
 */
const rememberedFor = 10;

const told = (error: NodeError): string =>
  error.shortDiagnostics.map((one: { message?: string }) => one.message ?? String(one)).join("; ");

/** What a page is set from: data only. Nothing in it is ever read as markup. */
export type PaperInputs = Readonly<Record<string, string>>;

export interface Typeset {
  readonly pages: number;
  /** The bytes of the PDF, in PDF/UA-1; the same for the same inputs. Throws PaperError for a character without a glyph. */
  pdf(): Uint8Array;
}

/** Characters that the export refused, by its message: it has no kinder way to say which. */
const refused = (message: string): string[] => [
  ...new Set(
    [...message.matchAll(/the text `\\?"(.+?)\\?"` could not be displayed/gu)].map(([, text]) => text!),
  ),
];

function exported(document: NonNullable<ReturnType<NodeCompiler["compile"]>["result"]>): Uint8Array {
  try {
    return new Uint8Array(compiler().pdf(document, { pdfStandard: "ua-1" }));
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    throw new PaperError(`The page cannot be written as PDF/UA-1: ${message}`, refused(message));
  }
}

/** Sets a template by its path in this package. Throws PaperError for any error and any warning, such as a font that is not there. */
export function typeset(template: string, inputs: PaperInputs): Typeset {
  compiler().evictCache(rememberedFor);
  const compiled = compiler().compile({
    mainFilePath: folder(".") + template,
    inputs: { ...inputs },
    resetRead: true,
  });
  const fault = compiled.takeError() ?? compiled.takeWarnings();
  if (fault) throw new PaperError(`The page cannot be set: ${told(fault)}`);
  const document = compiled.result;
  if (!document) throw new PaperError("The page cannot be set: nothing came of it.");
  return { pages: document.numOfPages, pdf: () => exported(document) };
}
