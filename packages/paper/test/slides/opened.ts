import { DOMParser, type Document, type Element } from "@xmldom/xmldom";
import JSZip from "jszip";

/** A file of slides opened by another reader than the one that wrote it. */
export interface Opened {
  readonly names: readonly string[];
  readonly texts: ReadonlyMap<string, string>;
  readonly zip: JSZip;
}

export async function opened(bytes: Uint8Array): Promise<Opened> {
  const zip = await JSZip.loadAsync(bytes, { checkCRC32: true });
  const names = Object.keys(zip.files);
  const texts = new Map<string, string>();
  for (const name of names.filter((each) => /\.(xml|rels)$/u.test(each)))
    texts.set(name, await zip.file(name)!.async("string"));
  return { names, texts, zip };
}

/** Parses XML; whatever is not well formed throws. */
export const parsed = (xml: string): Document =>
  new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  }).parseFromString(xml, "text/xml");

export const all = (within: Document | Element, tag: string): Element[] => [
  ...within.getElementsByTagName(tag),
];

/** Slides in their order. */
export const slidesOf = ({ texts }: Opened): Document[] => numbered(texts, /^ppt\/slides\/slide(\d+)\.xml$/u);
export const notesOf = ({ texts }: Opened): Document[] =>
  numbered(texts, /^ppt\/notesSlides\/notesSlide(\d+)\.xml$/u);
export const chartsOf = ({ texts }: Opened): Document[] => numbered(texts, /^ppt\/charts\/chart(\d+)\.xml$/u);

const numbered = (texts: Opened["texts"], pattern: RegExp): Document[] =>
  [...texts]
    .flatMap(([name, xml]) => {
      const found = pattern.exec(name);
      return found ? [{ number: Number(found[1]), xml }] : [];
    })
    .sort((one, other) => one.number - other.number)
    .map(({ xml }) => parsed(xml));

/** A box with text on a slide: lengths in inches, size of type in points. */
export interface TextBox {
  readonly title: boolean;
  readonly lines: readonly string[];
  readonly size: number | undefined;
  readonly bold: boolean;
  readonly box:
    | { readonly x: number; readonly y: number; readonly w: number; readonly h: number }
    | undefined;
}

const emu = 914_400;

export function textBoxes(slide: Document): TextBox[] {
  return all(slide, "p:sp").map((shape) => {
    const offset = all(shape, "a:off")[0];
    const extent = all(shape, "a:ext").find((one) => one.hasAttribute("cx"));
    const run = all(shape, "a:rPr")[0];
    const inches = (element: Element, name: string): number => Number(element.getAttribute(name)) / emu;
    return {
      title: all(shape, "p:ph").some((each) => each.getAttribute("type") === "title"),
      lines: all(shape, "a:p").map((line) =>
        all(line, "a:t")
          .map((text) => text.textContent ?? "")
          .join(""),
      ),
      size: run?.hasAttribute("sz") ? Number(run.getAttribute("sz")) / 100 : undefined,
      bold: run?.getAttribute("b") === "1",
      box: offset &&
        extent && {
          x: inches(offset, "x"),
          y: inches(offset, "y"),
          w: inches(extent, "cx"),
          h: inches(extent, "cy"),
        },
    };
  });
}
