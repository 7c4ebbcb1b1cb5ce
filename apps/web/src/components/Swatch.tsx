/** Patterns that tell lots apart without colour. Each is drawn in a 8 × 8 tile with the current colour. */
const tiles: readonly string[] = [
  "M0 0H8V8H0Z",
  "M0 2H8M0 6H8",
  "M2 2H4V4H2Z M6 6H8V8H6Z",
  "M0 8L8 0",
  "M2 0V8M6 0V8",
  "M0 0L8 8M8 0L0 8",
  "M0 4Q2 0 4 4T8 4",
  "M1 1H7V7H1Z",
];
export const swatchCount = tiles.length;

/** The patterns once, for every drawing on the page to point at. */
export function SwatchPatterns() {
  return (
    <svg width="0" height="0" aria-hidden="true" className="pattern-store">
      <defs>
        {tiles.map((path, index) => (
          <pattern key={path} id={`lot-pattern-${index}`} width="8" height="8" patternUnits="userSpaceOnUse">
            <rect width="8" height="8" className="pattern-ground" />
            <path d={path} className={index === 0 || index === 2 ? "pattern-fill" : "pattern-line"} />
          </pattern>
        ))}
      </defs>
    </svg>
  );
}

/** A small sample of a pattern, beside the words it stands for. */
export function Swatch({ pattern }: { readonly pattern: number }) {
  return (
    <svg className="swatch" width="20" height="20" aria-hidden="true">
      <rect x="1" y="1" width="18" height="18" fill={`url(#lot-pattern-${pattern})`} className="block" />
    </svg>
  );
}
