import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import type { NodeCompiler, NodeError } from "@myriaddreamin/typst-ts-node-compiler";
import { lettersOf } from "../setting/lettersOf.js";
import { PaperError } from "../setting/paperError.js";
import {
  fontFiles,
  type PaperInputs,
  type Template,
  type Typeset,
  type Typesetter,
} from "../setting/typesetter.js";

/** Both folders lie beside src and dist, so that the same path leads there from either. */
const folder = (name: string): string => fileURLToPath(new URL(`../../${name}/`, import.meta.url));

const fonts = () => fontFiles.map((name) => readFileSync(folder("fonts") + name));

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
    fontArgs: [{ fontBlobs: fonts() }],
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

function exported(document: NonNullable<ReturnType<NodeCompiler["compile"]>["result"]>): Uint8Array {
  try {
    return new Uint8Array(compiler().pdf(document, { pdfStandard: "ua-1" }));
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    throw new PaperError(`The page cannot be written as PDF/UA-1: ${message}`);
  }
}

/** Sets a file by its path from this package. Throws PaperError for any error and any warning. */
export function typeset(file: string, inputs: PaperInputs): Typeset {
  compiler().evictCache(rememberedFor);
  const compiled = compiler().compile({
    mainFilePath: folder(".") + file,
    inputs: { ...inputs },
    resetRead: true,
  });
  const fault = compiled.takeError() ?? compiled.takeWarnings();
  if (fault) throw new PaperError(`The page cannot be set: ${told(fault)}`);
  const document = compiled.result;
  if (!document) throw new PaperError("The page cannot be set: nothing came of it.");
  return { pages: document.numOfPages, pdf: () => exported(document) };
}

const letters = () => {
  const [regular, bold] = fonts();
  return lettersOf(regular!, bold!);
};

let made: Typesetter | undefined;

/** The typesetter for Node: native, one for the whole run. */
export function nodeTypesetter(): Typesetter {
  made ??= {
    letters: letters(),
    set: (template: Template, inputs: PaperInputs) => typeset(`typst/${template}`, inputs),
  };
  return made;
}
