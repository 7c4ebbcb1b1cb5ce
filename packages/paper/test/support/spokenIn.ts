import { inflateSync } from "node:zlib";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** Every stream of a PDF that inflates to text. */
function streamsOf(bytes: Uint8Array): string[] {
  const whole = Buffer.from(bytes);
  const found: string[] = [];
  for (let at = whole.indexOf("stream\n"); at >= 0; at = whole.indexOf("stream\n", at + 1)) {
    try {
      found.push(inflateSync(whole.subarray(at + "stream\n".length)).toString("latin1"));
    } catch {
      // Not deflated, or the end of one: no content of a page.
    }
  }
  return found;
}

/** Numbers of the marked pieces of a page of one page that carry a language of their own (ISO 32000-1, 14.9.2). */
const numbersIn = (streams: readonly string[], language: string): number[] =>
  streams.flatMap((stream) =>
    [...stream.matchAll(/\/Span\s*<<([^>]*)>>\s*BDC/g)]
      .map(([, properties = ""]) => properties)
      .filter((properties) => new RegExp(`/Lang\\s*\\(${language}\\)`).test(properties))
      .map((properties) => Number(properties.match(/\/MCID\s+(\d+)/)?.[1])),
  );

/** The pieces of text of a PDF of one page that are to be spoken in a language other than the document's, by a reader that has nothing to do with how it was written. */
export async function spokenIn(bytes: Uint8Array, language: string): Promise<string[]> {
  const numbers = numbersIn(streamsOf(bytes), language);
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const page = await document.getPage(1);
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  const texts = new Map<number, string>();
  let open: number | undefined;
  for (const item of items as readonly { type?: string; id?: string; str?: string; hasEOL?: boolean }[]) {
    if (item.type === "beginMarkedContentProps") open = Number(item.id?.match(/mc(\d+)$/)?.[1]);
    else if (item.type === undefined && open !== undefined)
      texts.set(open, `${texts.get(open) ?? ""}${item.str ?? ""}${item.hasEOL ? " " : ""}`);
  }
  await document.destroy();
  return numbers.map((number) => (texts.get(number) ?? "").replace(/\s+/g, " ").trim());
}
