import { sourcesOf } from "../answer/sourcesOf.js";
import type { MarkedLine } from "../words/markedLine.js";
import { commodityIn, type HandoutContext } from "./context.js";
import { figureSourceLines } from "./sourceLines.js";

/**
 * Where the figures of a kind come from, one line a source, with a word where a figure is from memory, inferred or common practice. Nothing
 * where the kind is not known. The context's catalogue must be one with provenance.
 */
export function kindSourceLines(context: HandoutContext, id: string): MarkedLine[] {
  const commodity = commodityIn(context, id);
  return commodity ? figureSourceLines(context, sourcesOf(commodity, context.catalogue.sources)) : [];
}
