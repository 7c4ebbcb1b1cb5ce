/** What is read here of a font in OpenType's format (ISO/IEC 14496-22): which glyph stands for a character, and how far it reaches. */
export interface OpenType {
  /** Glyph of a character by its code point; 0, the empty box, where there is none. */
  glyph(codePoint: number): number;
  /** Distance to the next glyph, as a share of the size. */
  advance(glyph: number): number;
}

const textAt = (view: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((step) => view.getUint8(at + step)));

/** Where a table begins, by its tag. Throws RangeError where the font has none of that name. */
function tableOf(view: DataView, tag: string): number {
  const count = view.getUint16(4);
  for (let index = 0; index < count; index++) {
    const entry = 12 + index * 16;
    if (textAt(view, entry) === tag) return view.getUint32(entry + 8);
  }
  throw new RangeError(`The font has no table “${tag}”.`);
}

interface Group {
  readonly first: number;
  readonly last: number;
  readonly glyph: number;
}

/** Subtables of segmented coverage (format 12) are for the whole of Unicode: platform 3, encoding 10. */
const unicode = { platform: 3, encoding: 10, format: 12 };

function groupsOf(view: DataView): Group[] {
  const table = tableOf(view, "cmap");
  const subtables = Array.from({ length: view.getUint16(table + 2) }, (_, index) => table + 4 + index * 8);
  const entry = subtables.find(
    (at) => view.getUint16(at) === unicode.platform && view.getUint16(at + 2) === unicode.encoding,
  );
  const subtable = table + (entry === undefined ? Number.NaN : view.getUint32(entry + 4));
  if (entry === undefined || view.getUint16(subtable) !== unicode.format)
    throw new RangeError("The font does not say which glyphs stand for all of Unicode.");
  return Array.from({ length: view.getUint32(subtable + 12) }, (_, index) => {
    const at = subtable + 16 + index * 12;
    return { first: view.getUint32(at), last: view.getUint32(at + 4), glyph: view.getUint32(at + 8) };
  });
}

/** Reads a font. Throws RangeError where it is not as it should be. */
export function openType(bytes: Uint8Array): OpenType {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const groups = groupsOf(view);
  const unitsPerSize = view.getUint16(tableOf(view, "head") + 18);
  const measured = view.getUint16(tableOf(view, "hhea") + 34);
  const advances = tableOf(view, "hmtx");
  return {
    glyph(codePoint) {
      const group = groups.find(({ first, last }) => first <= codePoint && codePoint <= last);
      return group ? group.glyph + codePoint - group.first : 0;
    },
    // Glyphs after the last that has an advance of its own share that one.
    advance: (glyph) => view.getUint16(advances + Math.min(glyph, measured - 1) * 4) / unitsPerSize,
  };
}
