import { createRequire } from "node:module";
import type { Deck } from "@keepwright/handout";
import type Maker from "pptxgenjs";
import { PaperError } from "../setting/paperError.js";
import { defineLooks, drawSlide } from "./draw.js";
import { fonts } from "./looks.js";
import { repacked } from "./repack.js";

const maker = "pptxgenjs";

/** Loaded only when slides are made, and anew each time: it numbers charts on from one file to the next, and the same deck is to have the same bytes. */
function loaded(): typeof Maker.default {
  try {
    const require = createRequire(import.meta.url);
    delete require.cache[require.resolve(maker)];
    return require(maker);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new PaperError(`The maker of slides ${maker} cannot be loaded on this machine: ${why}`);
  }
}

export interface SlidesPptx {
  /** Office Open XML (ECMA-376), the same for the same deck always. */
  readonly bytes: Uint8Array;
  /** Slides in the file: those of the deck, and what they go on to where one has not room enough. */
  readonly slides: number;
}

/** Slides as a PPTX file. Throws PaperError where the maker of slides cannot be loaded. */
export async function slidesPptx(deck: Deck): Promise<SlidesPptx> {
  const pptx = new (loaded())();
  pptx.layout = "LAYOUT_WIDE";
  pptx.title = deck.title;
  pptx.author = "Keepwright";
  pptx.company = "Keepwright";
  pptx.subject = deck.title;
  pptx.theme = { headFontFace: fonts.heading, bodyFontFace: fonts.body };
  defineLooks(pptx);
  const slides = deck.slides.reduce((sum, slide) => sum + drawSlide(pptx, deck, slide), 0);
  const made = (await pptx.write({ outputType: "uint8array", compression: true })) as Uint8Array;
  return { bytes: await repacked(made, deck.language), slides };
}
