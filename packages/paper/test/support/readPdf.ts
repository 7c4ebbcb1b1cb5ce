import { getDocument, OPS, type PDFPageProxy } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A PDF as a reader that has nothing to do with how it was written finds it. */
export interface ReadPdf {
  readonly pages: number;
  readonly title: string | undefined;
  readonly language: string | undefined;
  readonly marked: boolean;
  /** Width and height of the first page [pt]. */
  readonly size: readonly [number, number];
  /** All text in the order of the tags, as a screen reader says it; what is no content is left out. */
  readonly spoken: string;
  /** Headings with their level, in that order. */
  readonly headings: readonly string[];
  /** All text as it is drawn, repeated headings too. */
  readonly drawn: string;
  /** Heights of letters as set [pt], of every run of text that is drawn. */
  readonly textSizes: readonly number[];
  /** Colours that are set for filling and drawing, as #rrggbb. */
  readonly colours: readonly string[];
  /** Farthest that text reaches to the right on any page, as a share of its width. */
  readonly farthest: number;
}

interface Node {
  readonly role?: string;
  readonly children?: readonly Node[];
  readonly type?: string;
  readonly id?: string;
}
interface Item {
  readonly type?: string;
  readonly id?: string;
  readonly str?: string;
  readonly hasEOL?: boolean;
  readonly transform?: readonly number[];
  readonly width?: number;
}

const leaves = (node: Node): string[] =>
  node.type === "content" ? [node.id ?? ""] : (node.children ?? []).flatMap(leaves);

const below = (node: Node, wanted: RegExp): Node[] =>
  wanted.test(node.role ?? "") ? [node] : (node.children ?? []).flatMap((child) => below(child, wanted));

/** The text of each piece of marked content of a page. */
function textByContent(items: readonly Item[]): Map<string, string> {
  const open: (string | undefined)[] = [];
  const texts = new Map<string, string>();
  for (const item of items) {
    const begins = item.type === "beginMarkedContentProps" || item.type === "beginMarkedContent";
    // A piece within another that bears no number of its own belongs to the outer one.
    if (begins) open.push(item.id ?? open.at(-1));
    else if (item.type === "endMarkedContent") open.pop();
    else {
      const id = open.at(-1);
      if (id !== undefined) texts.set(id, `${texts.get(id) ?? ""}${item.str ?? ""}${item.hasEOL ? " " : ""}`);
    }
  }
  return texts;
}

const tidy = (text: string): string => text.replace(/\s+/g, " ").trim();

const colourSetting: readonly number[] = [OPS.setFillRGBColor, OPS.setStrokeRGBColor];

async function coloursOf(page: PDFPageProxy): Promise<string[]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  return fnArray.flatMap((operator, index) =>
    colourSetting.includes(operator) ? [String(argsArray[index]?.[0])] : [],
  );
}

async function readPage(page: PDFPageProxy) {
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  const all = items as readonly Item[];
  const texts = textByContent(all);
  const tree = ((await page.getStructTree()) ?? { children: [] }) as Node;
  const textOf = (node: Node): string =>
    tidy(
      leaves(node)
        .map((id) => texts.get(id) ?? "")
        .join(" "),
    );
  const drawn = all.filter(({ str }) => str !== undefined && str.trim() !== "");
  const [, , width = 1] = page.view;
  return {
    spoken: textOf(tree),
    headings: below(tree, /^H\d$/).map((node) => `${node.role} ${textOf(node)}`),
    drawn: drawn.map(({ str }) => str).join(" "),
    textSizes: drawn.map(({ transform }) => Math.abs(transform?.[3] ?? 0)),
    farthest: Math.max(
      ...drawn.map(({ transform, width: own = 0 }) => ((transform?.[4] ?? 0) + own) / width),
    ),
    colours: await coloursOf(page),
    size: [page.view[2] ?? 0, page.view[3] ?? 0] as const,
  };
}

/** Reads a PDF with a reader of its own. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const { info } = (await document.getMetadata()) as { info: { Title?: string; Language?: string } };
  const pages = [];
  for (let number = 1; number <= document.numPages; number++) {
    pages.push(await readPage(await document.getPage(number)));
  }
  const marked = ((await document.getMarkInfo()) as { Marked?: boolean } | null)?.Marked === true;
  await document.destroy();
  return {
    pages: pages.length,
    title: info.Title,
    language: info.Language,
    marked,
    size: pages[0]!.size,
    spoken: tidy(pages.map(({ spoken }) => spoken).join(" ")),
    headings: pages.flatMap(({ headings }) => headings),
    drawn: tidy(pages.map(({ drawn }) => drawn).join(" ")),
    textSizes: pages.flatMap(({ textSizes }) => textSizes),
    colours: pages.flatMap(({ colours }) => colours),
    farthest: Math.max(...pages.map(({ farthest }) => farthest)),
  };
}
