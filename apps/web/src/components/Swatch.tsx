interface Tile {
  readonly path: string;
  readonly filled?: boolean;
}

/** Patterns that tell lots apart without colour, each drawn in a tile of 8 × 8. */
const tiles: readonly Tile[] = [
  { path: "M0 0L8 8M-2 6L2 10M6 -2L10 2" },
  { path: "M2 2H4V4H2Z M6 6H8V8H6Z", filled: true },
  { path: "M0 2H8M0 6H8" },
  { path: "M0 0L8 8M8 0L0 8" },
  { path: "M2 0V8M6 0V8" },
  { path: "M0 4Q2 1 4 4T8 4" },
  { path: "M0 8L8 0M-2 2L2 -2M6 10L10 6" },
  { path: "M1 1H6V6H1Z" },
];

/** The pattern of the nth lot in a place, as a fill. Letters tell lots apart when there are more lots than patterns. */
export const patternFor = (index: number): string => `url(#lot-pattern-${index % tiles.length})`;

/** The patterns once, for every drawing on the page to point at. */
export function SwatchPatterns() {
  return (
    <svg width="0" height="0" aria-hidden="true" className="pattern-store">
      <defs>
        {tiles.map(({ path, filled }, index) => (
          <pattern key={path} id={`lot-pattern-${index}`} width="8" height="8" patternUnits="userSpaceOnUse">
            <rect width="8" height="8" className="pattern-ground" />
            <path d={path} className={filled ? "pattern-fill" : "pattern-line"} />
          </pattern>
        ))}
      </defs>
    </svg>
  );
}

/** A small sample of a lot's pattern with its letter, beside the words it stands for. */
export function Swatch({ index, letter }: { readonly index: number; readonly letter: string }) {
  return (
    <svg className="swatch" viewBox="0 0 30 26" aria-hidden="true">
      <rect x="1" y="1" width="28" height="24" fill={patternFor(index)} className="block" />
      <text x="15" y="13.5" textAnchor="middle" dominantBaseline="central" className="lettering">
        {letter}
      </text>
    </svg>
  );
}
