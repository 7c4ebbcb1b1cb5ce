const letters = 26;

/** A, B … Z, AA, AB …: the nth lot's mark in the drawing and beside its words. */
export function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % letters));
  return index < letters ? last : letterOf(Math.floor(index / letters) - 1) + last;
}
