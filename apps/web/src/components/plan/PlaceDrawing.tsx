import type { Box } from "../../drawing/kitchenScale.js";
import { packBlocks } from "../../drawing/packBlocks.js";
import { patternFor } from "../Swatch.js";

export interface DrawnLot {
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
/** Width of a letter in the drawing's lettering, on the generous side [drawing units]. */
const letterWidth = 8.2;

/** The name where it fits in the block, otherwise only the letter. */
const label = ({ letter, name }: DrawnLot, width: number): string =>
  width > (name.length + 3) * letterWidth ? `${letter} ${name}` : letter;

/** A place as a box whose area is its room, with its lots lying in it, all to the page's one scale. */
export function PlaceDrawing({ box, perLitre, lots, words }: PlaceDrawingProps) {
  const blocks = packBlocks(
    lots.map(({ litres }) => litres),
    box,
    perLitre,
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
        return block && <LotBlock key={lot.letter} lot={lot} block={block} pattern={patternFor(index)} />;
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

function LotBlock({ lot, block, pattern }: LotBlockProps) {
  return (
    <g>
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
