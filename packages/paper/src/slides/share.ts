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

/**
 * Shares pieces out over slides: all on one if they fit at a size that can be read from the back row, else as few as it takes. A piece that is by itself too
 * long for a slide gets one of its own at the smallest size. The first slide's box may be smaller than that of those that follow.
 */
export function shares(pieces: readonly Piece[], first: Box, following: Box): Share[] {
  const whole = largestFor(pieces, first);
  if (whole !== undefined) return [{ pieces, size: whole }];
  const out: Piece[][] = [[]];
  for (const piece of pieces) {
    const last = out.at(-1)!;
    const box = out.length === 1 ? first : following;
    if (last.length > 0 && stackHeight([...last, piece], box.w, sharedSize) > box.h) out.push([piece]);
    else last.push(piece);
  }
  // A heading at the foot of a slide goes with what it stands above.
  for (const [index, share] of out.entries()) {
    const next = out[index + 1];
    if (next && share.length > 1 && share.at(-1)!.piece === "heading") next.unshift(share.pop()!);
  }
  return out.map((share, index) => {
    const box = index === 0 ? first : following;
    return { pieces: share, size: Math.min(24, largestFor(share, box) ?? sizes.body.at(-1)!) };
  });
}
