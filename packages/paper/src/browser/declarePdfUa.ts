import { PaperError } from "../setting/paperError.js";

/** Bytes as so many characters, so that text can be found among them and none of them changes. */
function characters(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let at = 0; at < bytes.length; at += 0x8000)
    pieces.push(String.fromCharCode(...bytes.subarray(at, at + 0x8000)));
  return pieces.join("");
}

const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (character) => character.charCodeAt(0));

const unlike = () =>
  new PaperError("The page cannot be written as PDF/UA-1: the file is not as the typesetter writes it.");

function found(pattern: RegExp, text: string): number {
  const [, number] = pattern.exec(text) ?? [];
  if (number === undefined) throw unlike();
  return Number(number);
}

/** Puts something in after a text that stands there once. */
function inserted(text: string, after: string, what: string): string {
  const [head, tail, ...more] = text.split(after);
  if (tail === undefined || more.length > 0) throw unlike();
  return `${head}${after}${what}${tail}`;
}

/** The metadata with the declaration in it, and their length. */
function declared(metadata: string): string {
  const named = inserted(
    metadata,
    ' xmlns:pdf="http://ns.adobe.com/pdf/1.3/" ',
    ' xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/" ',
  );
  const whole = inserted(named, "</rdf:Bag></dc:language>", "<pdfuaid:part>1</pdfuaid:part>");
  const length = found(/\/Length (\d+)\n/, metadata);
  return whole.replace(`/Length ${length}\n`, `/Length ${length + whole.length - metadata.length}\n`);
}

const titleShown = (catalog: string): string =>
  inserted(catalog, "  /ViewerPreferences <<\n", "    /DisplayDocTitle true\n");

const place = (offset: number): string => String(offset).padStart(10, "0");

/** A table among the tags. With the standard asked for, the typesetter adds the box that it fills on the page (BBox, ISO 32000-1, 14.8.5.4.3), and here it does not. */
const table = /\/S \/Table\b/;

/**
 * Says in a PDF that it is PDF/UA-1, as the typesetter itself does where it is asked to: in the metadata, and by showing the title in the
 * window's frame. In the browser it writes the same tags, but has no option for the standard. Of a page that keeps to the standard in Node
 * the bytes are then those made there; tests compare them.
 *
 * A page with a table lacks something of the standard (see `table`): it is given its title, and not declared.
 *
 * Only the last two objects of the file change, metadata and catalog: all others stay where its table has them.
 *
 * @throws PaperError where the file is built in another way than this typesetter builds it
 */
export function declarePdfUa(bytes: Uint8Array): Uint8Array {
  const text = characters(bytes);
  const tableAt = found(/\nstartxref\n(\d+)\n%%EOF\s*$/, text.slice(-100));
  const places = text.slice(tableAt);
  const root = found(/\/Root (\d+) 0 R/, places);
  const offsets = [...places.matchAll(/^(\d{10}) \d{5} [fn]/gm)].map(([, offset]) => Number(offset));
  const catalogAt = offsets[root] ?? Number.NaN;
  const catalog = text.slice(catalogAt, tableAt);
  const metadataAt = offsets[found(/\/Metadata (\d+) 0 R/, catalog)] ?? Number.NaN;
  const last = [...offsets].sort((one, other) => other - one).slice(0, 2);
  if (last[0] !== catalogAt || last[1] !== metadataAt) throw unlike();
  const before = text.slice(metadataAt, catalogAt);
  const metadata = table.test(text) ? before : declared(before);
  const newCatalogAt = metadataAt + metadata.length;
  const objects = `${text.slice(0, metadataAt)}${metadata}${titleShown(catalog)}`;
  const newPlaces = places
    .replace(`${place(catalogAt)} 00000 n`, `${place(newCatalogAt)} 00000 n`)
    .replace(`startxref\n${tableAt}\n`, `startxref\n${objects.length}\n`);
  return bytesOf(objects + newPlaces);
}
