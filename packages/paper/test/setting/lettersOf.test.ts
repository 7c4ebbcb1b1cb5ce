import { describe, expect, it } from "vitest";
import { nodeTypesetter } from "../../src/node/nodeTypesetter.js";
import { openType } from "../../src/setting/openType.js";
import { everyBlock } from "../fixtures/document.js";

const node = nodeTypesetter();

/** Whether the typesetter itself, asked for PDF/UA-1, refuses a text for want of letters. */
function refused(text: string): boolean {
  const blocks = [{ block: "text", text: `x${text}x` }];
  const document = { ...everyBlock, blocks, sources: [], brief: [] };
  const inputs = {
    language: "en",
    heading: "h",
    kit: "k",
    paper: "a4",
    size: "12",
    large: "false",
    feet: "[]",
  };
  const set = node.set("document.typ", { ...inputs, document: JSON.stringify(document) });
  try {
    set.pdf();
    return false;
  } catch (error) {
    if (!/could not be displayed/.test(String(error))) throw error;
    return true;
  }
}

/** A few of every sort of letter that somebody may name a place or a kitchen by. */
const characters = [
  ...`aZ09 !"#$%&'()*+,-./:;<=>?@[\\]^_\`{|}~`,
  ..."áéíñüÅøßœŁžğıșț¿¡«»“”‘’–—…•·°ºª½¾×÷€£¥§©®™",
  ..."ҐєїЖшяЇ αβγΩ ə ɓ ŋ Ḥ ễ ợ ạ 冰箱 あア 한 א ע ش د ไ हि १ ა Ա",
  ..."🍎✓☐→←°℃⅓№\u00a0\u202f\u200b\u00ad\u2011\u0301\u0327",
  "e\u0301",
  "n\u0303",
];

describe("the letters there are to print with", () => {
  it.each([...new Set(characters)].filter((character) => character.trim() !== ""))(
    "“%s” is told as the typesetter itself does",
    (character) => {
      expect(node.letters.missingFrom(character).length > 0).toBe(refused(character));
    },
  );

  it("are told each once, in the order in which they are missed", () => {
    expect(node.letters.missingFrom("冰箱 and 冰")).toEqual(["冰", "箱"]);
  });

  it("have the widths of the fonts: bold is wider, twice the size is twice as wide", () => {
    const { width } = node.letters;
    expect(width("mmm", 1, false)).toBeCloseTo(3 * width("m", 1, false), 9);
    expect(width("mmm", 2, true)).toBeCloseTo(2 * width("mmm", 1, true), 9);
    expect(width("mmm", 1, true)).toBeGreaterThan(width("mmm", 1, false));
  });

  it("come from a font and nothing else", () => {
    expect(() => openType(new Uint8Array(64))).toThrow(RangeError);
  });
});
