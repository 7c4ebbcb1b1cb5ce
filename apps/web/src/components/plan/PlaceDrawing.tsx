import { useCarried } from "../../behaviour/useCarrying.js";
import type { Box } from "../../drawing/kitchenScale.js";
import { letterWidth, packBlocks, widthFor } from "../../drawing/packBlocks.js";
import { whyAddress } from "../../state/route.js";
import { patternFor } from "../Swatch.js";

export interface DrawnLot {
  readonly lot: string;
  readonly index: number;
  readonly letter: string;
  readonly name: string;
  readonly litres: number;
}

interface PlaceDrawingProps {
  readonly box: Box;
  readonly perLitre: number;
  readonly lots: readonly DrawnLot[];
  readonly words: string;
}

/** Room for the rim of the box [drawing units]. */
const rim = 2;
/** The name where it fits in the block, otherwise only the letter; nothing where that would run into its neighbours: the list beside has it. */
function label({ letter, name }: DrawnLot, width: number): string {
  if (width > (name.length + 3) * letterWidth) return `${letter} ${name}`;
  return width >= letter.length * letterWidth ? letter : "";
}

/** A place as a box whose area is its room, with its lots lying in it, all to the page's one scale. */
export function PlaceDrawing({ box, perLitre, lots, words }: PlaceDrawingProps) {
  const blocks = packBlocks(
    lots.map(({ litres }) => litres),
    box,
    perLitre,
    lots.map(({ letter }) => widthFor(letter)),
  );
  const width = box.width + 2 * rim;
  const height = box.height + 2 * rim;
  return (
    <svg
      className="drawing"
      viewBox={`${-rim} ${-rim} ${width} ${height}`}
      style={{ width: `calc(${width} * var(--unit))` }}
      role="img"
      aria-label={words}
    >
      <rect width={box.width} height={box.height} className="inside" />
      {lots.map((lot, index) => {
        const block = blocks[index];
        return block && <LotBlock key={lot.lot} lot={lot} block={block} pattern={patternFor(lot.index)} />;
      })}
      <rect width={box.width} height={box.height} className="rim" />
    </svg>
  );
}

interface LotBlockProps {
  readonly lot: DrawnLot;
  readonly block: ReturnType<typeof packBlocks>[number];
  readonly pattern: string;
}

/** By pointer it drags its lot, and opens why it lies there when touched; the list beside the drawing does the same for everybody. */
function LotBlock({ lot, block, pattern }: LotBlockProps) {
  const carrying = useCarried();
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a shortcut for pointers; link and button stand in the list beside it
    <g
      className="lot-block"
      {...carrying?.handle(lot.lot, false)}
      onClick={() => {
        location.hash = whyAddress(lot.lot);
      }}
    >
      <rect {...block} fill={pattern} className="block" />
      <text
        x={block.x + block.width / 2}
        y={block.y + block.height / 2}
        textAnchor="middle"
        dominantBaseline="central"
        className="lettering"
      >
        {label(lot, block.width)}
      </text>
    </g>
  );
}
