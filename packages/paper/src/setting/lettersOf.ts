import { type OpenType, openType } from "./openType.js";
import type { Letters } from "./typesetter.js";

/** Characters that are never drawn: they need no glyph. */
const unseen = /[\p{Default_Ignorable_Code_Point}\s]/u;

const codePoint = (character: string): number => character.codePointAt(0) ?? 0;

/** A character is printed by its own glyph, or by those of the letter and marks that it is composed of. */
const canPrint = (font: OpenType, character: string): boolean =>
  unseen.test(character) ||
  font.glyph(codePoint(character)) !== 0 ||
  (character.normalize("NFD") !== character &&
    [...character.normalize("NFD")].every((part) => font.glyph(codePoint(part)) !== 0));

/** The letters of the two fonts of the pages, regular and bold, from their bytes. Throws RangeError for what is no font. */
export function lettersOf(regularBytes: Uint8Array, boldBytes: Uint8Array): Letters {
  const regular = openType(regularBytes);
  const bold = openType(boldBytes);
  const printed = new Map<string, boolean>();
  const can = (character: string): boolean => {
    const known = printed.get(character) ?? [regular, bold].every((font) => canPrint(font, character));
    printed.set(character, known);
    return known;
  };
  const width = (font: OpenType, text: string): number =>
    [...text].reduce((sum, character) => sum + font.advance(font.glyph(codePoint(character))), 0);
  return {
    missingFrom: (text) => [...new Set(text)].filter((character) => !can(character)),
    width: (text, size, heavy) => width(heavy ? bold : regular, text) * size,
  };
}
