import type { DeckSlide, SlidePart } from "@keepwright/handout";
import { boxes, sizes } from "./looks.js";
import { piecesOf } from "./pieces.js";
import { type Share, shares } from "./share.js";
import { type TableShare, tableShares } from "./table.js";

/** A slide of a deck shared out over slides of the file. */
export interface Laid {
  readonly stacks: readonly Share[];
  readonly tables: readonly TableShare[];
  /** Slides it takes. */
  readonly count: number;
  /** The chart has a slide to itself. */
  readonly chartAlone: boolean;
}

/** What of a slide stands on which, at a size that can be read; the chart stands on the first. */
export function laid({ sort, chart, parts, subtitle }: DeckSlide): Laid {
  const pieces = piecesOf([
    ...(subtitle === undefined ? [] : [{ part: "text", text: subtitle } satisfies SlidePart]),
    ...parts,
  ]);
  if (sort !== "plain")
    return {
      stacks: shares(pieces, boxes.openingBody, boxes.openingBody),
      tables: [],
      count: 1,
      chartAlone: false,
    };
  const stacks =
    pieces.length === 0 ? [] : shares(pieces, chart ? boxes.besideChart : boxes.body, boxes.body);
  const tables = parts.flatMap((part) =>
    part.part === "table" ? tableShares(part, boxes.body, sizes.table) : [],
  );
  const chartAlone = chart !== undefined && stacks.length === 0;
  const count = Math.max(1, stacks.length + tables.length + (chartAlone ? 1 : 0));
  return { stacks, tables, count, chartAlone };
}

/** How many slides in the file one slide of a deck takes: more where there is no room for all of it at a size that can be read. */
export const slidesTaken = (given: DeckSlide): number => laid(given).count;
