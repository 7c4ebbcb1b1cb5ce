import { browserTypesetter, type Typesetter } from "@keepwright/paper/browser";
import document from "@keepwright/paper/typst/document.typ?raw";
import drawings from "@keepwright/paper/typst/drawings.typ?raw";
import labels from "@keepwright/paper/typst/labels.typ?raw";
import sheet from "@keepwright/paper/typst/sheet.typ?raw";
import type { PaperQuestion } from "./paperMessages.js";

/** A file could not be had: there is no network, or the server does not have it. */
export class UnreachableError extends Error {}

/** A packed file, unpacked as it comes. */
async function unpacked(address: string, type: string): Promise<Response> {
  const answer = await fetch(address).catch((error: unknown) => {
    throw new UnreachableError(String(error));
  });
  if (!answer.ok || !answer.body) throw new UnreachableError(`${answer.status}`);
  return new Response(answer.body.pipeThrough(new DecompressionStream("gzip")), {
    headers: { "Content-Type": type },
  });
}

const bytesOf = async (address: string) =>
  new Uint8Array(await (await unpacked(address, "font/ttf")).arrayBuffer());

/** The typesetter with its fonts. Throws UnreachableError where they cannot be had. */
export async function beginTypesetter(files: PaperQuestion["files"]): Promise<Typesetter> {
  const [program, regular, bold] = await Promise.all([
    unpacked(files.program, "application/wasm"),
    bytesOf(files["Andika-Regular.ttf"]),
    bytesOf(files["Andika-Bold.ttf"]),
  ]);
  return browserTypesetter({
    program,
    fonts: { "Andika-Regular.ttf": regular, "Andika-Bold.ttf": bold },
    templates: {
      "sheet.typ": sheet,
      "document.typ": document,
      "labels.typ": labels,
      "drawings.typ": drawings,
    },
  });
}
