/**
 * Slips between two words: letters left out, put in, changed, or two neighbours swapped, each counted once
 * (optimal string alignment, a restricted Damerau–Levenshtein distance; Damerau 1964, Communications of the ACM 7:171).
 * Stops early and returns `most + 1` when there are more than `most` slips.
 */
export function slips(first: string, second: string, most: number): number {
  if (Math.abs(first.length - second.length) > most) return most + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: second.length + 1 }, (_, column) => column);
  for (let row = 1; row <= first.length; row++) {
    const current = [row];
    for (let column = 1; column <= second.length; column++) {
      const same = first[row - 1] === second[column - 1];
      let least = Math.min(last[column]! + 1, current[column - 1]! + 1, last[column - 1]! + (same ? 0 : 1));
      if (
        row > 1 &&
        column > 1 &&
        first[row - 1] === second[column - 2] &&
        first[row - 2] === second[column - 1]
      ) {
        least = Math.min(least, beforeLast[column - 2]! + 1);
      }
      current.push(least);
    }
    if (Math.min(...current) > most) return most + 1;
    beforeLast = last;
    last = current;
  }
  return last[second.length]!;
}

/** Slips forgiven in a word of this many letters: none in short words, where another word is always near. */
export const slipsForgiven = (letters: number): number =>
  letters < 4 ? 0 : letters < 6 ? 1 : letters < 10 ? 2 : 3;
