import { type Deck, type DeckSlide, lineRuns } from "@keepwright/handout";
import type Maker from "pptxgenjs";
import { addChart } from "./chart.js";
import { laid } from "./laid.js";
import { type Box, boxes, colours, fonts, pointsPerInch, sizes, sourceSizes } from "./looks.js";
import { heightIn, sizeFor } from "./measure.js";
import { gap, heightOf, nameEms, nameSize, type Piece, textWidthOf } from "./pieces.js";
import type { Share } from "./share.js";
import { addTable } from "./table.js";

type Slide = Maker.default.Slide;
type Text = Maker.default.TextPropsOptions;

/** Names of the two kinds of slide, in the file's own list of layouts. */
export const layouts = { opening: "Keepwright opening", plain: "Keepwright plain" } as const;

const plainText = {
  fontFace: fonts.body,
  color: colours.ink,
  margin: 0,
  valign: "top",
  align: "left",
  wrap: true,
} as const;

/** Defines the slides' ground, rules, titles and numbers. */
export function defineLooks(pptx: Maker.default): void {
  const rule = ({ x, y, w, h }: Box): Maker.default.SlideMasterProps["objects"] =>
    [y, y + h].map((at) => ({ line: { x, y: at, w, h: 0, line: { color: colours.line, width: 1 } } }));
  const title = (box: Box, size: number) => ({
    placeholder: {
      options: {
        name: "title",
        type: "title" as const,
        ...box,
        fontFace: fonts.heading,
        fontSize: size,
        bold: true,
        color: colours.ink,
        align: "left" as const,
        valign: "bottom" as const,
        margin: 0,
      },
      text: "",
    },
  });
  const background = { color: colours.paper };
  const slideNumber = {
    ...boxes.number,
    fontFace: fonts.body,
    fontSize: 12,
    color: colours.soft,
    align: "right" as const,
  };
  pptx.defineSlideMaster({
    title: layouts.opening,
    background,
    objects: [...rule(boxes.openingRules)!, title(boxes.opening, 44)],
  });
  pptx.defineSlideMaster({
    title: layouts.plain,
    background,
    slideNumber,
    objects: [...rule(boxes.rules)!, title(boxes.title, 32)],
  });
}

function addPiece(slide: Slide, piece: Piece, box: Box, y: number, size: number, lang: string): void {
  const h = heightOf(piece, box.w, size);
  const w = textWidthOf(piece, box.w, size);
  const at = { ...plainText, y, h, lang, fontSize: size };
  const indented: Text = { ...at, x: box.x + box.w - w, w };
  switch (piece.piece) {
    case "pair":
      slide.addText(piece.name, {
        ...at,
        x: box.x,
        w: (nameEms * size) / pointsPerInch - 0.1,
        fontSize: nameSize(size),
        color: colours.soft,
      });
      slide.addText(piece.text, { ...indented, fontFace: fonts.body });
      return;
    case "item":
      slide.addText(piece.mark, { ...at, x: box.x, w: box.w - w, color: colours.accent, bold: true });
      slide.addText(piece.text, indented);
      return;
    case "heading":
      slide.addText(piece.text, { ...at, x: box.x, w, fontFace: fonts.heading, bold: true });
      return;
    case "caution":
      slide.addText(piece.text, {
        ...at,
        x: box.x,
        w: box.w,
        margin: 8,
        fill: { color: colours.pale },
        line: { color: colours.accent, width: 2 },
      });
      return;
    case "text":
      slide.addText(piece.text, { ...at, x: box.x, w });
  }
}

function addStack(slide: Slide, { pieces, size }: Share, box: Box, lang: string): void {
  let { y } = box;
  for (const piece of pieces) {
    addPiece(slide, piece, box, y, size, lang);
    y += heightOf(piece, box.w, size) + gap(size);
  }
}

/** As many sources as there is room for below the slide, and that there are more in the notes. */
function sourceText({ words }: Deck, { remarks = [], sources }: DeckSlide) {
  if (sources.length + remarks.length === 0) return undefined;
  const { w, h } = boxes.sources;
  for (let count = sources.length; count >= 0; count--) {
    const shown = [...sources.slice(0, count), ...(count < sources.length ? [words.moreSources] : [])];
    const from = sources.length === 0 ? [] : [`${words.sources}: ${shown.join(" · ")}`];
    const text = [...remarks, ...from].join("\n");
    const size = sourceSizes.find((each) => heightIn(text, w, { size: each }) <= h);
    if (size !== undefined) return { text, size };
  }
  return undefined;
}

function addSources(slide: Slide, deck: Deck, given: DeckSlide): void {
  const found = sourceText(deck, given);
  if (!found) return;
  const options = { ...plainText, ...boxes.sources, valign: "bottom", color: colours.soft } as const;
  const passages = given.sources.flatMap((line) => deck.passages?.get(line) ?? []);
  const runs = lineRuns({ text: found.text, passages }).map(({ text, language }) => ({
    text,
    options: { lang: language ?? deck.language },
  }));
  slide.addText(runs, { ...options, fontSize: found.size, lang: deck.language });
}

const notesOf = ({ words }: Deck, { notes, remarks = [], sources }: DeckSlide): string =>
  [...notes, ...remarks, ...(sources.length > 0 ? [`${words.sources}:`, ...sources] : [])].join("\n");

function addTitle(slide: Slide, text: string, { w, h }: Box, tried: readonly number[], lang: string): void {
  const fontSize = sizeFor(text, w, h, tried, { bold: true, heading: true });
  slide.addText(text, {
    placeholder: "title",
    fontSize,
    lang,
    fontFace: fonts.heading,
    bold: true,
    color: colours.ink,
  });
}

function drawOpening(pptx: Maker.default, deck: Deck, given: DeckSlide, share: Share | undefined): void {
  const slide = pptx.addSlide({ masterName: layouts.opening });
  addTitle(slide, given.title, boxes.opening, [48, 44, 40, 36, 32, 28], deck.language);
  if (share) addStack(slide, share, boxes.openingBody, deck.language);
  addSources(slide, deck, given);
  slide.addNotes(notesOf(deck, given));
}

/** Draws one slide, or as many as it takes. Says how many. */
export function drawSlide(pptx: Maker.default, deck: Deck, given: DeckSlide): number {
  const { stacks, tables, count, chartAlone } = laid(given);
  if (given.sort !== "plain") {
    drawOpening(pptx, deck, given, stacks[0]);
    return count;
  }
  const { chart } = given;
  for (let at = 0; at < count; at++) {
    const slide = pptx.addSlide({ masterName: layouts.plain });
    const title = count === 1 ? given.title : deck.words.goesOn(given.title, at + 1, count);
    addTitle(slide, title, boxes.title, sizes.title, deck.language);
    const before = chartAlone ? 1 : 0;
    const stack = stacks[at - before];
    if (stack) addStack(slide, stack, at === 0 && chart ? boxes.besideChart : boxes.body, deck.language);
    if (chart && at === 0) addChart(slide, chart, chartAlone ? boxes.body : boxes.chart);
    const table = tables[at - before - stacks.length];
    if (table) addTable(slide, table, boxes.body, deck.language);
    addSources(slide, deck, given);
    slide.addNotes(notesOf(deck, given));
  }
  return count;
}
