/**
 * Slips between two words: letters left out, put in, changed, or two neighbours swapped, each counted once
 * (optimal string alignment, a restricted Damerau–Levenshtein distance; Damerau 1964, Communications of the ACM 7:171).
 * Stops early and returns `most + 1` when there are more than `most` slips.
 * Texts of up to 129 letters; longer ones are beyond any number of slips.
 */
export function slips(first: string, second: string, most: number): number {
  if (first === second) return 0;
  if (Math.max(first.length, second.length) >= rows[0].length) return most + 1;
  if (most < 1 || Math.abs(first.length - second.length) > most) return most + 1;
  let [beforeLast, last, current] = rows;
  for (let column = 0; column <= second.length; column++) last[column] = column;
  for (let row = 1; row <= first.length; row++) {
    if (fillRow(first, second, row, beforeLast, last, current) > most) return most + 1;
    [beforeLast, last, current] = [last, current, beforeLast];
  }
  return Math.min(last[second.length]!, most + 1);
}

/** Working rows, kept between calls: names are short, and this is called for every name of the catalogue. */
const rows: [Uint16Array, Uint16Array, Uint16Array] = [
  new Uint16Array(130),
  new Uint16Array(130),
  new Uint16Array(130),
];

/** Fills one row of the table of distances and returns its least entry. */
function fillRow(
  first: string,
  second: string,
  row: number,
  beforeLast: Uint16Array,
  last: Uint16Array,
  current: Uint16Array,
): number {
  const letter = first.charCodeAt(row - 1);
  const letterBefore = row > 1 ? first.charCodeAt(row - 2) : -1;
  let leastOfRow = row;
  current[0] = row;
  for (let column = 1; column <= second.length; column++) {
    const other = second.charCodeAt(column - 1);
    let least = Math.min(
      last[column]! + 1,
      current[column - 1]! + 1,
      last[column - 1]! + (letter === other ? 0 : 1),
    );
    if (column > 1 && letter === second.charCodeAt(column - 2) && letterBefore === other) {
      least = Math.min(least, beforeLast[column - 2]! + 1);
    }
    current[column] = least;
    if (least < leastOfRow) leastOfRow = least;
  }
  return leastOfRow;
}

/** Slips forgiven in a word of this many letters: none in short words, where another word is always near. */
export const slipsForgiven = (letters: number): number =>
  letters < 4 ? 0 : letters < 6 ? 1 : letters < 10 ? 2 : 3;
