interface Block {
  readonly litres: number;
  readonly pattern: number;
}

interface PlaceDrawingProps {
  readonly litres: number;
  readonly largest: number;
  readonly blocks: readonly Block[];
  readonly words: string;
}

const width = 76;
/** Height of the largest place [px]; every other place is drawn on the same scale. */
const tallest = 260;
/** Least height at which a block can still be seen [px]. */
const leastBlock = 3;

/** A place as a box whose height is its litres, filled from the bottom by its lots, in the order of the list from the top. */
export function PlaceDrawing({ litres, largest, blocks, words }: PlaceDrawingProps) {
  const scale = tallest / largest;
  const height = Math.max(16, litres * scale);
  const heights = blocks.map((block) => Math.max(leastBlock, block.litres * scale));
  const filled = heights.reduce((sum, each) => sum + each, 0);
  const fit = Math.min(1, height / Math.max(filled, 1));
  let top = height - filled * fit;
  return (
    <svg className="drawing" width={width + 4} height={height + 4} role="img" aria-label={words}>
      <rect x="2" y="2" width={width} height={height} className="room" />
      {blocks.map((block, index) => {
        const y = top;
        const tall = (heights[index] ?? 0) * fit;
        top += tall;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: blocks have no identity but their place in the pile
          <rect
            key={index}
            x="2"
            y={y + 2}
            width={width}
            height={tall}
            fill={`url(#lot-pattern-${block.pattern})`}
            className="block"
          />
        );
      })}
      <rect x="2" y="2" width={width} height={height} className="rim" />
    </svg>
  );
}
