/**
 * Widths of characters [1/1000 of the type size]: regular, bold. The metrics Adobe published for Helvetica and Helvetica-Bold, two of the fonts every PDF reader has (ISO 32000-1, 9.6.2.2, from memory);
 * read in the metrics files that the package @pdf-lib/standard-fonts 1.0.0 carries.
 */
const widths: readonly (readonly [characters: string, regular: number, bold: number])[] = [
  ["'", 191, 238],
  ["ijl‘’‚", 222, 278],
  ["|¦", 260, 280],
  [" ,./I\\ ·ÌÍÎÏìíîï", 278, 278],
  ["!:;[]ft", 278, 333],
  ["()-`¡¨­¯²³´¸¹ˆ˜‹›", 333, 333],
  ["r", 333, 389],
  ["“”„", 333, 500],
  ["{}", 334, 389],
  ["•", 350, 350],
  ['"', 355, 474],
  ["º", 365, 365],
  ["ª", 370, 370],
  ["*", 389, 389],
  ["°", 400, 400],
  ["^", 469, 584],
  ["JcksvxyçýÿšŸ", 500, 556],
  ["zž", 500, 500],
  ["¶", 537, 556],
  ["#$0123456789_ae¢£¤¥§«»àáâãäåèéêëƒ–†‡€", 556, 556],
  ["?Lbdghnopquµðñòóôõöùúûüþ", 556, 611],
  ["+<=>~¬±×÷", 584, 584],
  ["FTZ¿ßøŽ", 611, 611],
  ["&ABKÀÁÂÃÄÅ", 667, 722],
  ["EPSVXYÈÉÊËÝÞŠ", 667, 667],
  ["CDHNRUÇÐÑÙÚÛÜ", 722, 722],
  ["w", 722, 778],
  ["©®", 737, 737],
  ["GOQÒÓÔÕÖØ", 778, 778],
  ["M", 833, 833],
  ["m", 833, 889],
  ["¼½¾", 834, 834],
  ["%æ", 889, 889],
  ["Wœ", 944, 944],
  ["ÆŒ—…‰™", 1000, 1000],
  ["@", 1015, 975],
];

type Weights = readonly [regular: number, bold: number];
const byCharacter: ReadonlyMap<string, Weights> = new Map(
  widths.flatMap(([characters, regular, bold]) =>
    [...characters].map((character): [string, Weights] => [character, [regular, bold]]),
  ),
);

/** Of what is not in the table: as wide as a full-width sign, so that it is never taken for narrower than it is. */
const unknown: Weights = [1000, 1000];

/** Whether the width of every character is known. */
export const isMeasured = (text: string): boolean =>
  [...text].every((character) => byCharacter.has(character));

/** Width of a line of text, in the unit of its size. */
export type Measure = (text: string, size: number, bold: boolean) => number;

/** Width in Helvetica, which stands in for whatever a browser prints with. */
export function textWidth(text: string, size: number, bold: boolean): number {
  const thousandths = [...text].reduce(
    (sum, character) => sum + (byCharacter.get(character) ?? unknown)[bold ? 1 : 0],
    0,
  );
  return (thousandths / 1000) * size;
}
