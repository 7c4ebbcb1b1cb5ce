import type { Box } from "./looks.js";
import { sizes } from "./looks.js";
import { type Piece, stackHeight } from "./pieces.js";

/** Pieces that stand on one slide, and the size they are set in [pt]. */
export interface Share {
  readonly pieces: readonly Piece[];
  readonly size: number;
}

const largestFor = (pieces: readonly Piece[], { w, h }: Box): number | undefined =>
  sizes.body.find((size) => stackHeight(pieces, w, size) <= h);

/** Size at which pieces are shared out over several slides [pt]: not the smallest, since there is room once there are several. A declared preference, no source. */
const sharedSize = 20;

/** What a slide that goes on begins with: a heading at the foot of the one before goes with what it stands above, and one whose part goes on is said again. */
function begun(before: Piece[], piece: Piece, heading: Piece | undefined): Piece[] {
  if (piece === heading) return [piece];
  if (before.length > 1 && before.at(-1) === heading) before.pop();
  return heading ? [heading, piece] : [piece];
}

/**
 * Shares pieces out over slides: all on one if they fit at a size that can be read from the back row, else as few as it takes. A piece that is by itself too
 * long for a slide gets one of its own at the smallest size. The first slide's box may be smaller than that of those that follow.
 */
export function shares(pieces: readonly Piece[], first: Box, following: Box): Share[] {
  const whole = largestFor(pieces, first);
  if (whole !== undefined) return [{ pieces, size: whole }];
  const out: Piece[][] = [[]];
  let heading: Piece | undefined;
  for (const piece of pieces) {
    if (piece.piece === "heading") heading = piece;
    const last = out.at(-1)!;
    const box = out.length === 1 ? first : following;
    if (last.length > 0 && stackHeight([...last, piece], box.w, sharedSize) > box.h)
      out.push(begun(last, piece, heading));
    else last.push(piece);
  }
  return out.map((share, index) => {
    const box = index === 0 ? first : following;
    return { pieces: share, size: Math.min(24, largestFor(share, box) ?? sizes.body.at(-1)!) };
  });
}
